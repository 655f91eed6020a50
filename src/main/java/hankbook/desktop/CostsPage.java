package hankbook.desktop;

import javafx.scene.layout.VBox;

/** One of the pages of the costs. */
abstract class CostsPage extends VBox {
  private final String key;
  private final String name;

  /**
   * @param key by which it is found, in every language
   * @param name as it is said
   */
  CostsPage(String key, String name) {
    this.key = key;
    this.name = name;
    getStyleClass().add("costs-page");
    managedProperty().bind(visibleProperty());
    setVisible(false);
  }

  /** By which it is found. */
  final String key() {
    return key;
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
