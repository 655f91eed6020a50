package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;

/** The fields of one row, side by side as far as there is room. */
final class PlanFieldRow extends FlowPane {
  private static final Set<String> NAMES = Set.of("yarn", "name");
  private static final Set<String> COUNTS = Set.of("count", "share", "strands", "repeats", "units");

  PlanFieldRow(PlanPart part, int row, List<String> keys, Function<PlanField, PlanFieldBox> maker) {
    getStyleClass().add("plan-row");
    setRowValignment(VPos.TOP);
    keys.forEach(key -> getChildren().add(maker.apply(new PlanField(part, row, key))));
  }

  static double width(PlanField field) {
    if (NAMES.contains(field.key())) {
      return 112;
    }
    if (COUNTS.contains(field.key()) || (field.key().equals("ends") && field.part() == PlanPart.ORDER)) {
      return 48;
    }
    return switch (field.part()) {
      case WARP, SELVEDGE, ALLOWANCES, WINDING -> 104;
      case ORDER, WEFT -> field.key().equals("colour") ? 98 : field.key().equals("length") ? 108 : 84;
      case PLAN, PIECES, SECTIONS -> 84;
    };
  }

  /** Puts a button at the end that takes the row away. */
  void removable(PlanPart part, int row, PlanEditor editor) {
    Button remove = new Button("×");
    remove.getStyleClass().addAll(Styles.FLAT, Styles.SMALL, "plan-remove");
    String words = "Remove " + PlanWords.place(new PlanField(part, row, ""));
    remove.setAccessibleText(words);
    remove.setTooltip(new Tooltip(words));
    remove.setId("remove-" + part.path() + "-" + row);
    remove.setOnAction(_ -> editor.removeRow(part, row));
    getChildren().add(remove);
  }

  /** Says where a row was taken away, with a button that puts it back. */
  static HBox putBack(PlanPart part, int row, PlanEditor editor) {
    Label words = new Label(PlanWords.place(new PlanField(part, row, "")) + " was taken away.");
    words.getStyleClass().add(Styles.TEXT_MUTED);
    Button back = new Button("Put back");
    back.getStyleClass().addAll(Styles.SMALL, Styles.BUTTON_OUTLINED);
    back.setId("put-back-row");
    back.setAccessibleHelp(words.getText());
    back.setOnAction(_ -> editor.putBackRow());
    HBox line = new HBox(words, back);
    line.getStyleClass().add("remedy-row");
    return line;
  }

  /** The button that adds a row to a list. */
  static Button more(PlanPart part, String words, Runnable add) {
    Button more = new Button(words);
    more.getStyleClass().addAll(Styles.SMALL, Styles.BUTTON_OUTLINED);
    more.setId("add-" + part.path());
    more.setAlignment(Pos.CENTER_LEFT);
    more.setOnAction(_ -> add.run());
    return more;
  }
}
