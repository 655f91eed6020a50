package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.studio.Rewound;
import hankbook.studio.ShelfSkein;
import hankbook.yarn.Doubts;

/** What two skeins hold once yarn was wound off the one onto the other, in words. */
final class RewoundWords {
  private RewoundWords() {}

  /** A line for each. */
  static String of(Rewound after, Doubts doubts) {
    return line(after.off(), doubts) + "\n" + line(after.onto(), doubts);
  }

  private static String line(ShelfSkein skein, Doubts doubts) {
    String code = skein.skein().code();
    return skein.isUsedUp()
        ? Say.text("{0} would be empty.", code)
        : Say.text("{0} would hold {1}.", code, Wording.yarn(skein.skein().holds(), skein.uncertainty(doubts)));
  }
}
