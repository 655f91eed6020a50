package hankbook.desktop;

import javafx.scene.layout.VBox;

/** One of the pages of the costs. */
abstract class CostsPage extends VBox {
  private final String name;

  CostsPage(String name) {
    this.name = name;
    getStyleClass().add("costs-page");
    managedProperty().bind(visibleProperty());
    setVisible(false);
  }

  /** What the page is called where it is chosen. */
  final String name() {
    return name;
  }

  /** Asks the ledger anew. */
  abstract void refresh();

  /** Puts the keyboard where its things are looked for. */
  abstract void search();
}
