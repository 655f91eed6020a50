package hankbook.allot;

import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.List;

/** What is doubtful about the skeins themselves. */
final class ShelfWarnings {
  private ShelfWarnings() {}

  static List<Warning> of(YarnColour yarn, List<Skein> skeins) {
    List<Warning> warnings = new ArrayList<>();
    if (skeins.isEmpty()) {
      warnings.add(new Warning(Warning.Code.UNKNOWN_YARN, yarn, yarn + ": no skein of this yarn and colour is on the shelf."));
    }
    for (Skein skein : skeins) {
      if (!skein.isMeasured()) {
        String text = yarn + ": skein " + skein.code() + " has no length, nor a weight with a grist; it counts as nothing. Weigh or measure it.";
        warnings.add(new Warning(Warning.Code.UNMEASURED, yarn, text));
      }
      if (skein.weightDisagrees()) {
        String label = skein.label().orElseThrow().toString();
        String text = yarn + ": skein " + skein.code() + " is " + skein.measurement().length().orElseThrow() + " by weight but " + label + " by its label; the weight is used.";
        warnings.add(new Warning(Warning.Code.WEIGHT_DISAGREES, yarn, text));
      }
    }
    return warnings;
  }
}
