package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.yarn.Measurement;

/** How the length of a skein is known, as a word and a mark. */
enum KnownBy {
  SAMPLED,
  WEIGHED,
  COUNTED,
  LABEL,
  UNMEASURED;

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
    return switch (this) {
      case SAMPLED -> Say.text("own grist");
      case WEIGHED -> Say.text("weighed");
      case COUNTED -> Say.text("turns counted");
      case LABEL -> Say.text("label");
      case UNMEASURED -> Say.text("unmeasured");
    };
  }
}
