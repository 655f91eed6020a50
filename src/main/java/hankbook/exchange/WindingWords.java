package hankbook.exchange;

import hankbook.allot.Feed;
import hankbook.allot.Stint;
import hankbook.allot.WindingSheet;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is said on a winding sheet, in sentences. */
public final class WindingWords {
  private WindingWords() {}

  /** How much there is to wind. */
  public static String whole(WindingSheet sheet) {
    String warp = sheet.ends() + " ends of " + metres(sheet.check().yardage().warp().total());
    return warp + " in " + sheet.passes() + " passes along the warping path, " + metres(sheet.length()) + " of yarn to wind.";
  }

  /**
   * That other threads are held than the plan says, where they are.
   *
   * @param planned the threads that the plan winds together
   */
  public static Optional<String> otherThreads(WindingSheet sheet, int planned) {
    int held = sheet.wish().threads();
    String choice = "The skeins are chosen for " + held + " threads together, while the plan winds " + planned;
    return planned == held ? Optional.empty() : Optional.of(choice + "; let the plan say " + held + " before you reserve.");
  }

  /** How much there is of one kind of end. */
  public static String amount(Feed feed) {
    String together = feed.threads() == 1 ? "one thread at a time" : "up to " + feed.threads() + " threads together";
    return count(feed.ends(), "end", "ends") + " of " + metres(feed.kind().perEnd()) + ", " + metres(feed.length()) + " in " + count(feed.passes(), "pass", "passes") + ", " + together;
  }

  /** What stands in the way of winding one kind of end as wished, where something does. */
  public static Optional<String> hindrance(WindingSheet sheet, Feed feed) {
    if (feed.unfed() > 0) {
      return Optional.of(count(feed.unfed(), "end has", "ends have") + " no skein on the shelf, so no skein is assigned yet" + rest(feed) + ".");
    }
    String why = " together is not possible from the skeins it is allotted: one would have to feed two threads at once.";
    return sheet.fewerThanWished(feed) ? Optional.of(sheet.wish().threads() + why) : Optional.empty();
  }

  private static String rest(Feed feed) {
    int fed = feed.ends() - feed.unfed();
    return fed == 0 ? "" : "; there is yarn for " + count(fed, "end", "ends");
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
  public static String bouts(WindingSheet sheet) {
    int bouts = sheet.bouts().size();
    return count(bouts, "bout", "bouts") + " of at most " + sheet.wish().bout() + " ends; the counting thread crosses every " + sheet.wish().group() + " ends:";
  }

  /** The groups of the counting thread, and the ends over. */
  public static String groups(WindingSheet.Counted counted, int group) {
    return counted.groups() + " of " + group + (counted.over() == 0 ? "" : " and " + counted.over());
  }

  static String count(int count, String one, String more) {
    return count + " " + (count == 1 ? one : more);
  }

  static String metres(Length length) {
    return length.print(LengthUnit.METRE, 2);
  }
}
