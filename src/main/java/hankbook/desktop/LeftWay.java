package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.DraftRow;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** How it is known what is left of a skein. */
enum LeftWay {
  USED_UP("usedUp"),
  LENGTH("left"),
  WEIGHT("gross", "tare", "regain"),
  TURNS("turns", "reel");

  @SuppressWarnings("ImmutableEnumChecker") // A copy that nobody changes.
  private final List<String> keys;

  LeftWay(String... keys) {
    this.keys = List.of(keys);
  }

  /** The keys of an actuals file in which it is said. */
  List<String> keys() {
    return keys;
  }

  /** By which something is said in a row; empty where nothing is. */
  static Optional<LeftWay> of(DraftRow row) {
    return Arrays.stream(values()).filter(way -> way.keys().stream().anyMatch(key -> !row.text(key).isBlank())).findFirst();
  }

  @Override
  public String toString() {
    return switch (this) {
      case USED_UP -> Say.text("Used up");
      case LENGTH -> Say.text("Length");
      case WEIGHT -> Say.text("Weight");
      case TURNS -> Say.text("Turns");
    };
  }
}
