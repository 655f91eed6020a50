package hankbook.desktop;

import hankbook.desktop.say.Say;

/** How a skein is measured again. */
enum RecountWay {
  LENGTH,
  WEIGHT,
  TURNS;

  /** What it does for how surely the skein is known. */
  String words() {
    return switch (this) {
      case LENGTH -> Say.text("A length alone leaves it as sure as it was: weigh it, or count its turns, to know it surer.");
      case WEIGHT -> Say.text("Weighed, it is as sure as the balance and the grist of its yarn. A weighed sample of the yarn makes that surer.");
      case TURNS -> Say.text("Counted, it is as sure as turns on a reel are.");
    };
  }

  @Override
  public String toString() {
    return switch (this) {
      case LENGTH -> Say.text("Length");
      case WEIGHT -> Say.text("Weight");
      case TURNS -> Say.text("Turns");
    };
  }
}
