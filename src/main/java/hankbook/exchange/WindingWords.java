package hankbook.exchange;

import hankbook.allot.Feed;
import hankbook.allot.Stint;
import hankbook.allot.WindingSheet;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.measure.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is said on a winding sheet, in sentences. */
public final class WindingWords {
  private WindingWords() {}

  /** How much there is to wind. */
  public static Phrase whole(WindingSheet sheet) {
    return Phrase.of("{0} ends of {1} in {2} passes along the warping path, {3} of yarn to wind.",
        sheet.ends(), fine(sheet.check().yardage().warp().total()), sheet.passes(), fine(sheet.length()));
  }

  /**
   * That other threads are held than the plan says, where they are.
   *
   * @param planned the threads that the plan winds together
   */
  public static Optional<Phrase> otherThreads(WindingSheet sheet, int planned) {
    int held = sheet.wish().threads();
    return planned == held
        ? Optional.empty()
        : Optional.of(Phrase.of("The skeins are chosen for {0} threads together, while the plan winds {1}; let the plan say {0} before you reserve.", held, planned));
  }

  /** How much there is of one kind of end. */
  public static Phrase amount(Feed feed) {
    Phrase ends = ends(feed.ends());
    Phrase passes = Phrase.count(feed.passes(), "{0} pass", "{0} passes");
    return feed.threads() == 1
        ? Phrase.of("{0} of {1}, {2} in {3}, one thread at a time", ends, fine(feed.kind().perEnd()), fine(feed.length()), passes)
        : Phrase.of("{0} of {1}, {2} in {3}, up to {4} threads together", ends, fine(feed.kind().perEnd()), fine(feed.length()), passes, feed.threads());
  }

  /** What stands in the way of winding one kind of end as wished, where something does. */
  public static Optional<Phrase> hindrance(WindingSheet sheet, Feed feed) {
    if (feed.unfed() > 0) {
      return Optional.of(unfed(feed));
    }
    return sheet.fewerThanWished(feed)
        ? Optional.of(Phrase.of("{0} together is not possible from the skeins it is allotted: one would have to feed two threads at once.", sheet.wish().threads()))
        : Optional.empty();
  }

  private static Phrase unfed(Feed feed) {
    int fed = feed.ends() - feed.unfed();
    if (fed == 0) {
      return Phrase.count(feed.unfed(), "{0} end has no skein on the shelf, so no skein is assigned yet.", "{0} ends have no skein on the shelf, so no skein is assigned yet.");
    }
    return Phrase.count(feed.unfed(), "{0} end has no skein on the shelf, so no skein is assigned yet; there is yarn for {1}.",
        "{0} ends have no skein on the shelf, so no skein is assigned yet; there is yarn for {1}.", ends(fed));
  }

  private static Phrase ends(int count) {
    return Phrase.count(count, "{0} end", "{0} ends");
  }

  /** Which skein feeds which position, and after which pass another takes its place; what follows at a position is set in. */
  public static List<String> skeins(Feed feed) {
    List<Stint> stints = feed.stints();
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < stints.size(); i++) {
      Stint before = i > 0 && stints.get(i - 1).position() == stints.get(i).position() ? stints.get(i - 1) : null;
      lines.add(before == null ? begins(stints.get(i)) : "    " + changes(before, stints.get(i)));
    }
    return lines;
  }

  private static String begins(Stint stint) {
    String from = stint.firstPass() == 1 ? "" : " from pass " + stint.firstPass();
    return "position " + stint.position() + ": " + stint.skein() + from + ", " + count(stint.ends(), "end", "ends");
  }

  private static String changes(Stint before, Stint next) {
    String from = next.firstPass() == before.lastPass() + 1 ? "" : " for pass " + next.firstPass();
    return "after pass " + before.lastPass() + " position " + next.position() + " changes from " + before.skein() + " to " + next.skein() + from + ", "
        + count(next.ends(), "end", "ends");
  }

  /** How the warp is taken off the pegs. */
  public static Phrase bouts(WindingSheet sheet) {
    return Phrase.count(sheet.bouts().size(), "{0} bout of at most {1} ends; the counting thread crosses every {2} ends:",
        "{0} bouts of at most {1} ends; the counting thread crosses every {2} ends:", sheet.wish().bout(), sheet.wish().group());
  }

  /** The groups of the counting thread, and the ends over. */
  public static Phrase groups(WindingSheet.Counted counted, int group) {
    return counted.over() == 0 ? Phrase.of("{0} of {1}", counted.groups(), group) : Phrase.of("{0} of {1} and {2}", counted.groups(), group, counted.over());
  }

  static String count(int count, String one, String more) {
    return count + " " + (count == 1 ? one : more);
  }

  private static Phrase.As fine(Length length) {
    return Phrase.yarn(length, 2);
  }

  static String metres(Length length) {
    return length.print(LengthUnit.METRE, 2);
  }
}
