package hankbook.plan;

import java.util.Map;
import java.util.function.Predicate;

/**
 * A stretch of an order that comes as written and then backwards.
 *
 * @param group what comes first as written
 * @param turn where it turns
 */
public record Mirror(Succession group, Turn turn) implements SuccessionPart {
  /** What becomes of the group on which a stretch turns. */
  public enum Turn {
    /** It comes again backwards like the rest: the thread in the middle is doubled. */
    DOUBLED("mirror"),
    /** The last group comes once, in the middle. */
    ON_THE_LAST("there and back");

    private final String words;

    Turn(String words) {
      this.words = words;
    }

    /** As it is written before the brackets. */
    public String words() {
      return words;
    }
  }

  private long back() {
    return group.threads() - middle();
  }

  private long middle() {
    return turn == Turn.DOUBLED ? 0 : group.last().count();
  }

  @Override
  public long threads() {
    return group.threads() + back();
  }

  @Override
  public String at(long index) {
    return group.at(index < group.threads() ? index : threads() - 1 - index);
  }

  /** The same in both directions. */
  @Override
  public boolean show(boolean backwards, Predicate<Run> more) {
    boolean[] turned = {turn == Turn.DOUBLED};
    Predicate<Run> back =
        run -> {
          boolean seen = turned[0];
          turned[0] = true;
          return !seen || more.test(run);
        };
    return group.show(false, more) && group.show(true, back);
  }

  @Override
  public Run last() {
    return first();
  }

  @Override
  public Run first() {
    return group.parts().getFirst().first();
  }

  @Override
  public void tally(long first, long factor, Map<String, Long> counts) {
    group.tally(Math.min(first, group.threads()), factor, counts);
    if (first > group.threads()) {
      // What lies on the way back is counted as what of the way there lies beyond it.
      group.tally(back(), factor, counts);
      group.tally(threads() - first, -factor, counts);
    }
  }

  @Override
  public String words() {
    String where = turn == Turn.DOUBLED ? "mirrored, the middle doubled: " : "there and back, turning on " + group.last().words() + ": ";
    boolean several = group.parts().stream().anyMatch(part -> !(part instanceof Run));
    return where + (several ? "(" + group.words() + ")" : group.words());
  }

  /** The form an order reads back. */
  @Override
  public String toString() {
    return turn.words() + " (" + group + ")";
  }
}
