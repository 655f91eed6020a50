package hankbook.desktop;

import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import org.jspecify.annotations.Nullable;

/** A skein to choose: its colour, its code, and what is known of it. */
final class SkeinToPayCell extends ListCell<SkeinToPay> {
  private final Swatch swatch = new Swatch(20, 14);
  private final Label code = new Label();
  private final Label words = new Label();
  private final HBox content = new HBox(swatch, code, words);

  SkeinToPayCell() {
    getStyleClass().add("skein-to-pay");
    code.getStyleClass().add("share-code");
    code.setMinWidth(USE_PREF_SIZE);
    words.getStyleClass().add("quiet");
    content.getStyleClass().add("beside");
    setPrefWidth(0);
  }

  @Override
  protected void updateItem(@Nullable SkeinToPay skein, boolean empty) {
    super.updateItem(skein, empty);
    setGraphic(skein == null || empty ? null : content);
    if (skein != null && !empty) {
      swatch.show(skein.hex(), "");
      code.setText(skein.code());
      words.setText(skein.words());
      setAccessibleText(skein.code() + ", " + skein.words());
    }
  }
}
