package hankbook.desktop;

import hankbook.studio.ShelfSkein;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;

/**
 * The yarns and colours the shelf knows, and what the colours look like.
 *
 * @param looks each yarn colour's sRGB; empty where the shelf does not tell
 */
record YarnPalette(Map<YarnColour, String> looks) {
  private static final String UNKNOWN = "yarn-unknown";

  static YarnPalette of(List<ShelfSkein> skeins) {
    Map<YarnColour, String> looks = new HashMap<>();
    for (ShelfSkein held : skeins) {
      Skein skein = held.skein();
      looks.merge(skein.yarn(), skein.hex(), (one, other) -> one.isEmpty() ? other : one);
    }
    return new YarnPalette(Map.copyOf(looks));
  }

  List<String> yarns() {
    return looks.keySet().stream().map(YarnColour::yarn).distinct().sorted().toList();
  }

  /** The colours of a yarn; of every yarn where the shelf does not know it. */
  List<String> colours(String yarn) {
    List<String> own = looks.keySet().stream().filter(known -> known.yarn().equals(yarn.strip())).map(YarnColour::colour).sorted().toList();
    return own.isEmpty() ? looks.keySet().stream().map(YarnColour::colour).distinct().sorted().toList() : own;
  }

  /** The colour of a yarn; empty where the shelf does not tell. */
  Optional<Color> colour(YarnColour yarn) {
    String hex = looks.getOrDefault(yarn, "");
    return hex.isEmpty() ? Optional.empty() : Optional.of(Color.web(hex));
  }

  /** Gives a region the colour of a yarn, or hatches it where the shelf does not tell. */
  void paint(Region region, YarnColour yarn) {
    String hex = looks.getOrDefault(yarn, "");
    if (hex.isEmpty()) {
      region.getStyleClass().add(UNKNOWN);
    } else {
      region.setStyle("-fx-background-color: " + hex + ";");
    }
  }

  /** A small square of a yarn's colour. */
  Region swatch(YarnColour yarn) {
    Region swatch = new Region();
    swatch.getStyleClass().add("plan-swatch");
    paint(swatch, yarn);
    return swatch;
  }
}
