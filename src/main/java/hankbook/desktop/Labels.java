package hankbook.desktop;

import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** The few sorts of text there are on the screens. */
final class Labels {
  private static final double LINE = 17;

  private Labels() {}

  /** The name of a screen or a page. */
  static Label title(String text) {
    return styled(text, "page-title");
  }

  /** The name of a part of a page. */
  static Label heading(String text) {
    return styled(text, "part-heading");
  }

  /** What is said quietly. */
  static Label quiet(String text) {
    return styled(text, "quiet");
  }

  /** What is said quietly and follows a value; takes no room while that is empty. */
  static Label quiet(ObservableValue<String> text) {
    return following(text, "quiet");
  }

  /** What is said quietly, follows a value and keeps room for so many lines, so that nothing below it moves. */
  static Label steady(ObservableValue<String> text, int lines) {
    Label label = new Label();
    label.setWrapText(true);
    label.setAlignment(Pos.TOP_LEFT);
    label.getStyleClass().add("quiet");
    label.setMinHeight(lines * LINE);
    label.textProperty().bind(text);
    return label;
  }

  /** What is wrong; takes no room while nothing is. */
  static Label fault(ObservableValue<String> text) {
    return following(text, "fault");
  }

  /** Room that pushes what follows to the far side. */
  static Region gap() {
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    return gap;
  }

  /** Takes no room while it is not to be seen. */
  static void showOnly(Node node, ObservableValue<Boolean> when) {
    node.visibleProperty().bind(when);
    node.managedProperty().bind(node.visibleProperty());
  }

  private static Label following(ObservableValue<String> text, String style) {
    Label label = styled("", style);
    label.textProperty().bind(text);
    showOnly(label, text.map(it -> !it.isEmpty()));
    return label;
  }

  private static Label styled(String text, String style) {
    Label label = new Label(text);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    label.getStyleClass().add(style);
    return label;
  }
}
