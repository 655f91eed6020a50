package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.desktop.say.Say;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;

/** The fields of one row, side by side as far as there is room. */
final class PlanFieldRow extends FlowPane {
  private static final Set<String> NAMES = Set.of("loom", "reed", "weave");
  private static final Set<String> COUNTS = Set.of("count", "share", "strands", "repeats", "units");

  private final HBox acts = new HBox();

  PlanFieldRow(List<PlanField> fields, Function<PlanField, PlanFieldBox> maker) {
    getStyleClass().add("plan-row");
    setRowValignment(VPos.TOP);
    fields.forEach(field -> getChildren().add(maker.apply(field)));
  }

  /** Makes room for the buttons of a row, before so many of its last fields. */
  void withActs(int behind) {
    acts.getStyleClass().add("plan-row-acts");
    getChildren().add(getChildren().size() - behind, acts);
  }

  static double width(PlanField field) {
    if (field.key().equals("yarn")) {
      return 128;
    }
    if (NAMES.contains(field.key())) {
      return 112;
    }
    if (COUNTS.contains(field.key()) || (field.key().equals("ends") && field.part() == PlanPart.ORDER)) {
      return 52;
    }
    return switch (field.part()) {
      case WARP, SELVEDGE, ALLOWANCES, WINDING -> 104;
      case ORDER, WEFT -> field.key().equals("length") ? 104 : field.key().equals("colour") ? 98 : 84;
      case PLAN, PIECES, SECTIONS -> field.key().equals("name") ? 112 : 84;
    };
  }

  /** Puts a button at the end that takes the row away. */
  void removable(PlanPart part, int row, PlanEditor editor) {
    Button remove = button("×", Say.text("Remove {0}", PlanWords.place(new PlanField(part, row, ""))), "remove-" + part.path() + "-" + row);
    remove.setOnAction(_ -> editor.removeRow(part, row));
    acts.getChildren().add(remove);
  }

  /**
   * Lets the row be moved up and down, by button and by keyboard.
   *
   * @param moved is told the field or button that the keyboard was in, as it is now called
   */
  void movable(PlanPart part, int row, int last, PlanEditor editor, Consumer<String> moved) {
    if (last < 2) {
      return;
    }
    String place = PlanWords.place(new PlanField(part, row, ""));
    Button up = button("↑", Say.text("Move {0} up (Ctrl+Up)", place), upId(part, row));
    up.setDisable(row == 1);
    up.setOnAction(_ -> move(part, row, row - 1, editor, () -> moved.accept(row == 2 ? first(part, 1) : upId(part, row - 1))));
    Button down = button("↓", Say.text("Move {0} down (Ctrl+Down)", place), downId(part, row));
    down.setDisable(row == last);
    down.setOnAction(_ -> move(part, row, row + 1, editor, () -> moved.accept(row + 1 == last ? first(part, last) : downId(part, row + 1))));
    acts.getChildren().addAll(up, down);
    addEventFilter(KeyEvent.KEY_PRESSED, key -> {
      if (key.isControlDown() && (key.getCode() == KeyCode.UP || key.getCode() == KeyCode.DOWN)) {
        key.consume();
        int to = row + (key.getCode() == KeyCode.UP ? -1 : 1);
        String field = typedIn();
        move(part, row, to, editor, () -> moved.accept(new PlanField(part, to, field).toString()));
      }
    });
  }

  private static void move(PlanPart part, int from, int to, PlanEditor editor, Runnable then) {
    if (editor.moveRow(part, from, to)) {
      then.run();
    }
  }

  /** A button at the end of its way can be pressed no more. */
  private static String first(PlanPart part, int row) {
    return new PlanField(part, row, part.keys().getFirst()).toString();
  }

  private static String upId(PlanPart part, int row) {
    return "up-" + part.path() + "-" + row;
  }

  private static String downId(PlanPart part, int row) {
    return "down-" + part.path() + "-" + row;
  }

  /** The key of the field that the keyboard is in; that of the first where it is in a button. */
  private String typedIn() {
    List<PlanFieldBox> boxes = getChildren().stream().filter(PlanFieldBox.class::isInstance).map(PlanFieldBox.class::cast).toList();
    return boxes.stream().filter(Node::isFocusWithin).findFirst().orElse(boxes.getFirst()).field().key();
  }

  private static Button button(String sign, String words, String id) {
    Button button = new Button(sign);
    button.getStyleClass().addAll(Styles.FLAT, Styles.SMALL, "plan-remove");
    button.setAccessibleText(words);
    button.setTooltip(new Tooltip(words));
    button.setId(id);
    return button;
  }

  /** Says where a row was taken away, with a button that puts it back. */
  static HBox putBack(PlanPart part, int row, PlanEditor editor) {
    Label words = new Label(Say.text("{0} was taken away.", PlanWords.place(new PlanField(part, row, ""))));
    words.getStyleClass().add(Styles.TEXT_MUTED);
    Button back = new Button(Say.text("Put back"));
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
