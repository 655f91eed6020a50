package hankbook.plan;

import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import java.util.Map;
import java.util.function.Predicate;

/**
 * A stretch of an order that comes several times.
 *
 * @param times how often, at least 1
 * @param group what comes
 */
public record Repeat(long times, Succession group) implements SuccessionPart {
  public Repeat {
    if (times < 1) {
      throw new Unreadable(Long.toString(times), "repeats of at least 1");
    }
    if (times > Succession.MOST / group.threads()) {
      throw new Unreadable(times + " x " + group.threads() + " threads", Phrase.of("an order of at most {0} threads", Succession.MOST));
    }
  }

  @Override
  public long threads() {
    return times * group.threads();
  }

  @Override
  public String at(long index) {
    return group.at(index % group.threads());
  }

  @Override
  public boolean show(boolean backwards, Predicate<Run> more) {
    if (isOneMark()) {
      return more.test(last());
    }
    boolean wanted = true;
    for (long i = 0; wanted && i < times; i++) {
      wanted = group.show(backwards, more);
    }
    return wanted;
  }

  @Override
  public Run last() {
    return isOneMark() ? new Run(threads(), group.last().mark()) : group.last();
  }

  @Override
  public Run first() {
    return isOneMark() ? last() : group.parts().getFirst().first();
  }

  /** Then it is one group, however often it comes, and nobody counts through it. */
  private boolean isOneMark() {
    return group.marks().size() == 1;
  }

  @Override
  public void tally(long first, long factor, Map<String, Long> counts) {
    group.tally(group.threads(), Math.multiplyExact(factor, first / group.threads()), counts);
    group.tally(first % group.threads(), factor, counts);
  }

  @Override
  public String words() {
    boolean several = group.parts().stream().anyMatch(part -> !(part instanceof Run));
    return times + (times == 1 ? " time: " : " times: ") + (several ? "(" + group.words() + ")" : group.words());
  }

  /** The form an order reads back. */
  @Override
  public String toString() {
    return times + " x (" + group + ")";
  }
}
