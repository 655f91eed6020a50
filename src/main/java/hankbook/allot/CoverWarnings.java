package hankbook.allot;

import hankbook.measure.Length;
import hankbook.measure.Phrase;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.List;

/** What the verdict on one yarn means, in words. */
record CoverWarnings(Cover cover, Length usefulRemnant) {
  List<Warning> all() {
    List<Warning> warnings = new ArrayList<>();
    YarnColour yarn = cover.yarn();
    if (cover.margin().isNegative()) {
      warnings.add(warning(
          Warning.Code.SHORT, Phrase.of("{0}: short by {1}: needs {2}, free {3}.", yarn, metres(cover.margin().negated()), metres(cover.need()), metres(cover.free()))));
    } else if (!cover.wholeEnds()) {
      warnings.add(warning(Warning.Code.BROKEN_ENDS, Phrase.of(
          "{0}: the metres suffice but whole ends do not: no end may be pieced from two skeins, and remnants of {1} or less are not woven.", yarn, usefulRemnant)));
    } else if (cover.verdict() == Verdict.TIGHT) {
      warnings.add(warning(Warning.Code.TIGHT, Phrase.of("{0}: only {1} to spare; the risk of running short is {2}.", yarn, metres(cover.margin()), cover.chance().phrase())));
    }
    return warnings;
  }

  private Warning warning(Warning.Code code, Phrase phrase) {
    return new Warning(code, cover.yarn(), phrase);
  }

  private static Phrase.As metres(Length length) {
    return Phrase.yarn(length, 1);
  }
}
