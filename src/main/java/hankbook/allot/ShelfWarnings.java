package hankbook.allot;

import hankbook.measure.Length;
import hankbook.measure.Phrase;
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
      warnings.add(new Warning(Warning.Code.UNKNOWN_YARN, yarn, Phrase.of("{0}: no skein of this yarn and colour is on the shelf.", yarn)));
    }
    for (Skein skein : skeins) {
      if (!skein.isMeasured()) {
        warnings.add(new Warning(Warning.Code.UNMEASURED, yarn, unmeasured(yarn, skein)));
      }
      if (skein.turnsDisagree()) {
        warnings.add(new Warning(Warning.Code.TURNS_DISAGREE, yarn, turns(yarn, skein)));
      }
      if (skein.weightDisagrees()) {
        Phrase text = Phrase.of("{0}: skein {1} is {2} by weight but {3} by its label; the weight is used.", yarn, skein.code(),
            skein.measurement().length().orElseThrow(), skein.label().orElseThrow());
        warnings.add(new Warning(Warning.Code.WEIGHT_DISAGREES, yarn, text));
      }
    }
    gristDisagrees(yarn, skeins).ifPresent(warnings::add);
    return warnings;
  }

  private static Phrase unmeasured(YarnColour yarn, Skein skein) {
    return skein.weighing().isPresent()
        ? Phrase.of("{0}: skein {1} was weighed when no grist of it was known; it counts as nothing. Where its grist is known by now, weigh it again and recount it, "
            + "else measure it.", yarn, skein.code())
        : Phrase.of("{0}: skein {1} has no length, nor a weight with a grist; it counts as nothing. Weigh or measure it.", yarn, skein.code());
  }

  private static Phrase turns(YarnColour yarn, Skein skein) {
    Length used = skein.measurement().length().orElseThrow();
    return skein.measurement() instanceof Measurement.ByWeight
        ? Phrase.of("{0}: skein {1} is {2} by weight but {3} by its turns; the weight is used.", yarn, skein.code(), used, skein.measures().turns().orElseThrow().length())
        : Phrase.of("{0}: skein {1} is {2} by its turns but {3} by its label; the turns are used.", yarn, skein.code(), used, skein.measures().label().orElseThrow());
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
    Phrase text = Phrase.of("{0}: by the grist you weighed, {1} came to {2}, but the ledger took {3}; weigh again and recount.", yarn, codes, metres(weighed), metres(counted));
    return Optional.of(new Warning(Warning.Code.GRIST_DISAGREES, yarn, text));
  }

  private static Length sum(List<Skein> skeins, Function<Skein, Optional<Length>> length) {
    return skeins.stream().flatMap(skein -> length.apply(skein).stream()).reduce(Length.ZERO, Length::plus);
  }

  private static Phrase.As metres(Length length) {
    return Phrase.yarn(length, 1);
  }
}
