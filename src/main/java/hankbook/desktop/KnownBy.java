package hankbook.desktop;

import hankbook.yarn.Measurement;

/** How the length of a skein is known, as a word and a mark. */
enum KnownBy {
  SAMPLED("own grist"),
  WEIGHED("weighed"),
  COUNTED("turns counted"),
  LABEL("label"),
  UNMEASURED("unmeasured");

  private final String words;

  KnownBy(String words) {
    this.words = words;
  }

  static KnownBy of(Measurement measurement) {
    return switch (measurement) {
      case Measurement.ByWeight weight -> weight.sample().isPresent() ? SAMPLED : WEIGHED;
      case Measurement.ByTurns _ -> COUNTED;
      case Measurement.ByLabel _ -> LABEL;
      case Measurement.Unmeasured _ -> UNMEASURED;
    };
  }

  @Override
  public String toString() {
    return words;
  }
}
