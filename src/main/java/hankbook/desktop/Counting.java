package hankbook.desktop;

import hankbook.yarn.Measurement;
import java.util.Map;

/** Says what length a skein will count with, and what is missing to know it better. */
final class Counting {
  private Counting() {}

  /**
   * @param measurement as far as it could be read
   * @param texts what was typed, by column
   */
  static String words(Measurement measurement, Map<String, String> texts) {
    return switch (measurement) {
      case Measurement.ByWeight weighed -> "Counts with " + Wording.metres(weighed.length().orElseThrow()) + ", weighed: "
          + weighed.net() + " of yarn at " + weighed.grist() + ".";
      case Measurement.ByTurns counted -> "Counts with " + Wording.metres(counted.turns().length()) + ", by its turns.";
      case Measurement.ByLabel label -> "Counts with " + Wording.metres(label.printed()) + ", by its label.";
      case Measurement.Unmeasured _ -> isBlank(texts, "gross")
          ? "Counts as unmeasured until a length, or a gross weight and a grist, is given."
          : "The weight alone gives no length: give the grist too.";
    };
  }

  private static boolean isBlank(Map<String, String> texts, String column) {
    return texts.getOrDefault(column, "").isBlank();
  }
}
