package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.DraftRow;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** How it is known what is left of a skein. */
enum LeftWay {
  USED_UP("Used up", "usedUp"),
  LENGTH("Length", "left"),
  WEIGHT("Weight", "gross tare regain"),
  TURNS("Turns", "turns reel");

  private final String name;
  private final String keys;

  LeftWay(String name, String keys) {
    this.name = name;
    this.keys = keys;
  }

  /** The keys of an actuals file in which it is said. */
  List<String> keys() {
    return List.of(keys.split(" "));
  }

  /** By which something is said in a row; empty where nothing is. */
  static Optional<LeftWay> of(DraftRow row) {
    return Arrays.stream(values()).filter(way -> way.keys().stream().anyMatch(key -> !row.text(key).isBlank())).findFirst();
  }

  @Override
  public String toString() {
    return Say.known(name);
  }
}
