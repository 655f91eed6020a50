package hankbook.allot;

import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import java.util.ArrayList;
import java.util.List;

/** What the verdict on one yarn means, in words. */
record CoverWarnings(Cover cover) {
  List<Warning> all() {
    List<Warning> warnings = new ArrayList<>();
    if (cover.margin().isNegative()) {
      warnings.add(warning(Warning.Code.SHORT, "short by " + metres(cover.margin().negated()) + ": needs " + metres(cover.need()) + ", free " + metres(cover.free()) + "."));
    } else if (!cover.wholeEnds()) {
      String text = "the metres suffice but whole ends do not: no end may be pieced from two skeins, and remnants of 5 m or less are not woven.";
      warnings.add(warning(Warning.Code.BROKEN_ENDS, text));
    } else if (cover.verdict() == Verdict.TIGHT) {
      long oneIn = Math.max(2, Math.round(1 / cover.risk()));
      warnings.add(warning(Warning.Code.TIGHT, "only " + metres(cover.margin()) + " to spare; the risk of running short is about 1 in " + oneIn + "."));
    }
    return warnings;
  }

  private Warning warning(Warning.Code code, String text) {
    return new Warning(code, cover.yarn(), cover.yarn() + ": " + text);
  }

  private static String metres(Length length) {
    return length.print(LengthUnit.METRE, 1);
  }
}
