package hankbook.desktop;

import java.util.Locale;
import javafx.scene.layout.Region;

/** A shape for how a length is known: a full disc weighed, one with an eye weighed by the yarn's own grist, a reel turns, a square label, a ring unmeasured. */
final class KnownByMark extends Region {
  KnownByMark() {
    getStyleClass().add("known-by");
  }

  void show(KnownBy known) {
    getStyleClass().setAll("known-by", "by-" + known.name().toLowerCase(Locale.ROOT));
  }
}
