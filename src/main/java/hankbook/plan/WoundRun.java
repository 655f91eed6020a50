package hankbook.plan;

import hankbook.measure.Unreadable;

/**
 * Ends of one kind that lie side by side.
 *
 * @param kind what they are of
 * @param ends how many, at least 1
 */
public record WoundRun(WoundEnd kind, int ends) {
  public WoundRun {
    if (ends < 1) {
      throw new Unreadable(Integer.toString(ends), "a run of at least 1 end");
    }
  }

  WoundRun of(int some) {
    return new WoundRun(kind, some);
  }
}
