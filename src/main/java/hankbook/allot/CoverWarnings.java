package hankbook.allot;

import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.plan.Need;
import hankbook.yarn.Skein;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What the verdict on one yarn means, in words. */
record CoverWarnings(Cover cover, List<Need> needs, int threads, List<Skein> skeins, Length usefulRemnant) {
  List<Warning> all() {
    List<Warning> warnings = new ArrayList<>();
    if (cover.margin().isNegative()) {
      warnings.add(warning(Warning.Code.SHORT, "short by " + metres(cover.margin().negated()) + ": needs " + metres(cover.need()) + ", free " + metres(cover.free()) + "."));
    } else if (!cover.wholeEnds()) {
      String text = "the metres suffice but whole ends do not: no end may be pieced from two skeins, and remnants of " + usefulRemnant + " or less are not woven.";
      warnings.add(warning(Warning.Code.BROKEN_ENDS, text));
    } else if (cover.verdict() == Verdict.TIGHT) {
      warnings.add(warning(Warning.Code.TIGHT, "only " + metres(cover.margin()) + " to spare; the risk of running short is " + cover.chance().words() + "."));
    }
    needs.stream().filter(need -> need.role() == Need.Role.WARP && threads > 1).forEach(need -> winding(need, warnings));
    return warnings;
  }

  /** Each of the threads held together comes from a package of its own, long enough for its passes. */
  private void winding(Need need, List<Warning> warnings) {
    int held = (int) Math.min(threads, need.threads());
    if (held == 0) {
      return;
    }
    List<Long> ends =
        skeins.stream().map(skein -> skein.holds().holds(need.perThread())).sorted(Comparator.reverseOrder()).limit(held).toList();
    long passes = Math.ceilDiv(need.threads(), (long) held);
    long full = need.threads() - (passes - 1) * held;
    for (int i = 0; i < held; i++) {
      long wanted = i < full ? passes : passes - 1;
      if (i >= ends.size() || ends.get(i) < wanted) {
        String text = "winding " + held + " threads together wants " + held + " packages of " + passes + " ends of " + need.perThread() + " each.";
        warnings.add(warning(Warning.Code.WINDING, text));
        return;
      }
    }
  }

  private Warning warning(Warning.Code code, String text) {
    return new Warning(code, cover.yarn(), cover.yarn() + ": " + text);
  }

  private static String metres(Length length) {
    return length.print(LengthUnit.METRE, 1);
  }
}
