package hankbook.allot;

import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** What is to be known about the skeins that were chosen, in words. */
record AllotmentWarnings(YarnColour yarn, Demand demand, Allotment allotment, List<Skein> skeins) {
  List<Warning> all() {
    List<Warning> warnings = new ArrayList<>();
    IntStream.range(0, demand.kinds().size()).mapToObj(this::winding).flatMap(Optional::stream).map(text -> warning(Warning.Code.WINDING, text)).forEach(warnings::add);
    mixedLots("warp", share -> share.ends() > 0).ifPresent(text -> warnings.add(warning(Warning.Code.MIXED_LOTS, text)));
    mixedLots("weft", share -> share.weft().isPositive())
        .ifPresent(text -> warnings.add(warning(Warning.Code.MIXED_LOTS, text + " Weave them in turn, two picks of each, or change between pieces.")));
    if (!allotment.proven()) {
      String text = "there are too many ways to choose to try them all; these skeins serve well, but others may serve better" + (mayYetCover() ? ", and some may yet cover it." : ".");
      warnings.add(warning(Warning.Code.UNPROVEN, text));
    }
    return warnings;
  }

  /** Where a skein gives more ends than there are passes, it would have to be in one pass twice. */
  private Optional<String> winding(int kind) {
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
    String wants = "winding " + held + " threads together takes " + passes + " passes, so no package may give more than " + passes + " of the " + ends.ends() + " ends of " + metres(ends.each());
    return Optional.of(wants + "; " + lacks(ends.ends() - possible, passes, ends) + ".");
  }

  private static String lacks(long ends, int passes, EndKind kind) {
    if (ends <= 0) {
      return "the packages would do for these ends alone, but not beside all else that is wanted of them";
    }
    return "the packages on the shelf come to " + ends + " too few, which " + Math.ceilDiv(ends, passes) + " more of " + metres(kind.each().times(Math.min(passes, ends))) + " would give";
  }

  private boolean mayYetCover() {
    Length free = skeins.stream().map(Skein::holds).reduce(Length.ZERO, Length::plus);
    return !allotment.complete() && free.compareTo(demand.length()) >= 0;
  }

  /** Skeins of unknown lot are lots of their own. */
  private Optional<String> mixedLots(String role, Predicate<Share> serves) {
    List<String> lots =
        skeins.stream()
            .filter(skein -> allotment.shares().stream().anyMatch(share -> share.code().equals(skein.code()) && serves.test(share)))
            .map(skein -> skein.lot().isEmpty() ? "unknown (skein " + skein.code() + ")" : skein.lot())
            .distinct()
            .sorted()
            .toList();
    return lots.size() > 1 ? Optional.of("the " + role + " takes more than one dye lot: " + String.join(", ", lots) + ".") : Optional.empty();
  }

  private Warning warning(Warning.Code code, String text) {
    return new Warning(code, yarn, yarn + ": " + text);
  }

  private static String metres(Length length) {
    return length.print(LengthUnit.METRE, 2);
  }
}
