package hankbook.desktop;

import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;

/** A column that gives way where its table is narrow, and stays away where the user put it away. */
final class GivingWay {
  private final TableColumn<?, ?> column;
  private boolean fits;
  private boolean wanted = true;

  private GivingWay(TableColumn<?, ?> column) {
    this.column = column;
  }

  /** Lets a column be seen only where its table has that much room across. */
  static void below(double room, TableView<?> table, TableColumn<?, ?> column) {
    GivingWay way = new GivingWay(column);
    column.setUserData(way);
    table.widthProperty().subscribe(width -> {
      way.fits = width.doubleValue() >= room;
      way.show();
    });
  }

  /** Whether the user wants to see a column, should there be room. */
  static boolean isWanted(TableColumn<?, ?> column) {
    return column.getUserData() instanceof GivingWay way ? way.wanted : column.isVisible();
  }

  /** Shows a column, as far as there is room, or puts it away. */
  static void want(TableColumn<?, ?> column, boolean wanted) {
    if (column.getUserData() instanceof GivingWay way) {
      way.wanted = wanted;
      way.show();
    } else {
      column.setVisible(wanted);
    }
  }

  private void show() {
    column.setVisible(fits && wanted);
  }
}
