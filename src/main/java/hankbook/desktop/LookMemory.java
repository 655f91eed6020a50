package hankbook.desktop;

import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TableView;

/** Lets every table and split pane below a node that has an id be remembered, also where none of it was laid out yet. */
final class LookMemory {
  private final Remembered remembered;

  LookMemory(Remembered remembered) {
    this.remembered = remembered;
  }

  /** Restores what is below a node to how it was left, and notes from now on how it is left. */
  void under(Node node) {
    switch (node) {
      case TableView<?> table -> table(table);
      case SplitPane split -> split(split);
      case ScrollPane scroll when scroll.getContent() != null -> under(scroll.getContent());
      case Parent parent -> parent.getChildrenUnmodifiable().forEach(this::under);
      default -> {}
    }
  }

  private <R> void table(TableView<R> table) {
    if (table.getId() != null) {
      new TableMemory<>(table, remembered).begin();
    }
  }

  private void split(SplitPane split) {
    if (split.getId() != null) {
      new SplitMemory(split, remembered).begin();
    }
    split.getItems().forEach(this::under);
  }
}
