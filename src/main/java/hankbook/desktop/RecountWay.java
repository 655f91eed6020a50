package hankbook.desktop;

/** How a skein is measured again. */
enum RecountWay {
  LENGTH("Length", "A length alone leaves it as sure as it was: weigh it, or count its turns, to know it surer."),
  WEIGHT("Weight", "Weighed, it is as sure as the balance and the grist of its yarn. A weighed sample of the yarn makes that surer."),
  TURNS("Turns", "Counted, it is as sure as turns on a reel are.");

  private final String name;
  private final String words;

  RecountWay(String name, String words) {
    this.name = name;
    this.words = words;
  }

  /** What it does for how surely the skein is known. */
  String words() {
    return words;
  }

  @Override
  public String toString() {
    return name;
  }
}
