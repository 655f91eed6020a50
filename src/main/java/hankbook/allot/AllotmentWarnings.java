package hankbook.allot;

import hankbook.measure.Length;
import hankbook.measure.Phrase;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** What is to be known about the skeins that were chosen, in words. */
record AllotmentWarnings(YarnColour yarn, Demand demand, Allotment allotment, List<Skein> skeins) {
  List<Warning> all() {
    List<Warning> warnings = new ArrayList<>();
    IntStream.range(0, demand.kinds().size()).mapToObj(this::winding).flatMap(Optional::stream).map(text -> warning(Warning.Code.WINDING, text)).forEach(warnings::add);
    mixedLots(share -> share.ends() > 0)
        .ifPresent(lots -> warnings.add(warning(Warning.Code.MIXED_LOTS, Phrase.of("{0}: the warp takes more than one dye lot: {1}.", yarn, lots))));
    mixedLots(share -> share.weft().isPositive()).ifPresent(lots -> warnings.add(warning(Warning.Code.MIXED_LOTS, Phrase.of(
        "{0}: the weft takes more than one dye lot: {1}. Weave them in turn, two picks of each, or change between pieces.", yarn, lots))));
    if (!allotment.proven()) {
      warnings.add(warning(Warning.Code.UNPROVEN, mayYetCover()
          ? Phrase.of("{0}: there are too many ways to choose to try them all; these skeins serve well, but others may serve better, and some may yet cover it.", yarn)
          : Phrase.of("{0}: there are too many ways to choose to try them all; these skeins serve well, but others may serve better.", yarn)));
    }
    return warnings;
  }

  /** Where a skein gives more ends than there are passes, it would have to be in one pass twice. */
  private Optional<Phrase> winding(int kind) {
    EndKind ends = demand.kinds().get(kind);
    int held = Math.min(demand.threads(), ends.ends());
    if (held < 2) {
      return Optional.empty();
    }
    int passes = Math.ceilDiv(ends.ends(), held);
    long possible = skeins.stream().mapToLong(skein -> Math.min(passes, skein.holds().holds(ends.each()))).sum();
    Optional<Share> tooMany = allotment.shares().stream().filter(share -> share.ends(kind) > passes).findFirst();
    if (possible >= ends.ends() && tooMany.isEmpty()) {
      return Optional.empty();
    }
    Phrase wants = Phrase.of("winding {0} threads together takes {1} passes, so no package may give more than {1} of the {2} ends of {3}", held, passes,
        ends.ends(), metres(ends.each()));
    return Optional.of(Phrase.of("{0}: {1}; {2}.", yarn, wants, lacks(ends.ends() - possible, passes, ends)));
  }

  private static Phrase lacks(long ends, int passes, EndKind kind) {
    if (ends <= 0) {
      return Phrase.of("the packages would do for these ends alone, but not beside all else that is wanted of them");
    }
    return Phrase.of(
        "the packages on the shelf come to {0} too few, which {1} more of {2} would give", ends, Math.ceilDiv(ends, passes), metres(kind.each().times(Math.min(passes, ends))));
  }

  private boolean mayYetCover() {
    Length free = skeins.stream().map(Skein::holds).reduce(Length.ZERO, Length::plus);
    return !allotment.complete() && free.compareTo(demand.length()) >= 0;
  }

  /** Skeins of unknown lot are lots of their own. */
  private Optional<Phrase.Listed> mixedLots(Predicate<Share> serves) {
    List<Object> lots =
        skeins.stream()
            .filter(skein -> allotment.shares().stream().anyMatch(share -> share.code().equals(skein.code()) && serves.test(share)))
            .<Object>map(skein -> skein.lot().isEmpty() ? Phrase.of("unknown (skein {0})", skein.code()) : skein.lot())
            .distinct()
            .sorted(Comparator.comparing(Object::toString))
            .toList();
    return lots.size() > 1 ? Optional.of(Phrase.list(lots)) : Optional.empty();
  }

  private Warning warning(Warning.Code code, Phrase phrase) {
    return new Warning(code, yarn, phrase);
  }

  private static Phrase.As metres(Length length) {
    return Phrase.yarn(length, 2);
  }
}
