package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.yarn.NearestYarn;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;

/**
 * A yarn that may be taken for a colour of a draft.
 *
 * @param yarn the yarn and its colour
 * @param hex what it looks like, or empty where that is not known
 * @param name as it is shown in a list
 * @param difference how far it looks from the draft's colour, in words and as a number; empty where that is not known
 */
record DraftYarn(YarnColour yarn, String hex, String name, String difference) {
  private static final double NOT_TOLD_APART = 1;
  private static final double VERY_CLOSE = 3;
  private static final double CLOSE = 6;
  private static final double SHADE = 12;

  static DraftYarn of(NearestYarn nearest) {
    String words = words(nearest.difference().deltaE()) + ", " + nearest.difference();
    return new DraftYarn(nearest.yarn(), nearest.hex(), nearest.yarn() + ", " + Wording.yarn(nearest.holds()), words);
  }

  /** One whose colour or the draft's is not known. */
  static DraftYarn unseen(Skein skein) {
    return new DraftYarn(skein.yarn(), skein.hex(), skein.yarn().toString(), "");
  }

  /** None of the shelf; the plan asks for a yarn of no name until the weaver gives it one. */
  static DraftYarn later(String mark) {
    return new DraftYarn(new YarnColour(Say.text("Yarn to choose"), mark), "", Say.text("none of these, choose later"), "");
  }

  /** Where just noticeable differences begin and where two colours pass for one family is common practice. */
  private static String words(double difference) {
    if (difference < NOT_TOLD_APART) {
      return Say.text("looks the same");
    } else if (difference < VERY_CLOSE) {
      return Say.text("very close");
    } else if (difference < CLOSE) {
      return "close";
    }
    return difference < SHADE ? Say.text("another shade") : Say.text("another colour");
  }

  @Override
  public String toString() {
    return name;
  }
}
