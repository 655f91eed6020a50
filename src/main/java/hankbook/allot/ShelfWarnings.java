package hankbook.allot;

import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.yarn.Kept;
import hankbook.yarn.Measurement;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

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
        warnings.add(new Warning(Warning.Code.UNMEASURED, yarn, yarn + ": skein " + skein.code() + " " + unmeasured(skein)));
      }
      if (skein.turnsDisagree()) {
        warnings.add(new Warning(Warning.Code.TURNS_DISAGREE, yarn, yarn + ": skein " + skein.code() + " " + turns(skein)));
      }
      if (skein.weightDisagrees()) {
        String label = skein.label().orElseThrow().toString();
        String text = yarn + ": skein " + skein.code() + " is " + skein.measurement().length().orElseThrow() + " by weight but " + label + " by its label; the weight is used.";
        warnings.add(new Warning(Warning.Code.WEIGHT_DISAGREES, yarn, text));
      }
    }
    gristDisagrees(yarn, skeins).ifPresent(warnings::add);
    return warnings;
  }

  private static String unmeasured(Skein skein) {
    return skein.weighing().isPresent()
        ? "was weighed when no grist of it was known; it counts as nothing. Where its grist is known by now, weigh it again and recount it, else measure it."
        : "has no length, nor a weight with a grist; it counts as nothing. Weigh or measure it.";
  }

  private static String turns(Skein skein) {
    String used = skein.measurement().length().orElseThrow().toString();
    return skein.measurement() instanceof Measurement.ByWeight
        ? "is " + used + " by weight but " + skein.measures().turns().orElseThrow().length() + " by its turns; the weight is used."
        : "is " + used + " by its turns but " + skein.measures().label().orElseThrow() + " by its label; the turns are used.";
  }

  /** What a better grist makes of a skein is not what the ledger has; only a recount changes that. */
  private static Optional<Warning> gristDisagrees(YarnColour yarn, List<Skein> skeins) {
    List<Skein> doubtful = skeins.stream().filter(Skein::gristDisagrees).toList();
    if (doubtful.isEmpty()) {
      return Optional.empty();
    }
    Length counted = sum(doubtful, skein -> skein.kept().flatMap(Kept::counted));
    Length weighed = sum(doubtful, skein -> skein.measurement().length());
    String codes = doubtful.stream().map(Skein::code).sorted().collect(Collectors.joining(", "));
    String text = ": by the grist you weighed, " + codes + " came to " + metres(weighed) + ", but the ledger took " + metres(counted) + "; weigh again and recount.";
    return Optional.of(new Warning(Warning.Code.GRIST_DISAGREES, yarn, yarn + text));
  }

  private static Length sum(List<Skein> skeins, Function<Skein, Optional<Length>> length) {
    return skeins.stream().flatMap(skein -> length.apply(skein).stream()).reduce(Length.ZERO, Length::plus);
  }

  private static String metres(Length length) {
    return length.print(LengthUnit.METRE, 1);
  }
}
