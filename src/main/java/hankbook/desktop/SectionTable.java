package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.desktop.say.Say;
import hankbook.exchange.DraftSections;
import hankbook.measure.Length;
import hankbook.plan.SectionSum;
import java.util.List;
import javafx.geometry.HPos;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** The ends of a warp of units added up both ways, section by section and as all units times the ends of each. */
final class SectionTable extends VBox {
  private static List<String> columns() {
    return List.of(Say.text("Section"), Say.text("Units"), Say.text("Ends"), Say.text("Width"), Say.text("Reaches"));
  }


  /** Follows the plan that is open, as far as its units can be read. */
  SectionTable(PlanEditor editor) {
    this();
    managedProperty().bind(visibleProperty());
    editor.draftProperty().subscribe(draft -> {
      getChildren().clear();
      DraftSections.sum(draft).ifPresent(this::show);
      setVisible(!getChildren().isEmpty());
    });
  }

  /** Shows one sum. */
  SectionTable(SectionSum sum) {
    this();
    show(sum);
  }

  private SectionTable() {
    getStyleClass().add("section-table");
  }

  private void show(SectionSum sum) {
    GridPane grid = new GridPane();
    grid.getStyleClass().add("section-grid");
    row(grid, 0, columns(), Styles.TEXT_MUTED);
    int at = 1;
    for (SectionSum.Row row : sum.rows()) {
      String units = row.repeats() == 1 ? Integer.toString(row.units()) : row.repeats() + " × " + row.units();
      row(grid, at++, List.of(row.name(), units, Integer.toString(row.ends()), width(row.width()), width(row.from().plus(row.width()))), Styles.TEXT);
    }
    row(grid, at, List.of(Say.text("All"), Integer.toString(sum.units()), Integer.toString(sum.endsByStretch()), width(sum.width()), ""), Styles.TEXT_BOLD);
    Label arithmetic = new Label(Say.count(sum.ends(), "{1} = {0} end", "{1} = {0} ends", sum.arithmetic()));
    arithmetic.setId("section-arithmetic");
    arithmetic.setWrapText(true);
    getChildren().setAll(grid, arithmetic);
  }

  private static void row(GridPane grid, int row, List<String> cells, String style) {
    for (int column = 0; column < cells.size(); column++) {
      Label cell = new Label(cells.get(column));
      cell.getStyleClass().addAll(Styles.TEXT_SMALL, style);
      GridPane.setHalignment(cell, column == 0 ? HPos.LEFT : HPos.RIGHT);
      grid.add(cell, column, row);
    }
  }

  private static String width(Length length) {
    return Wording.width(length);
  }
}
