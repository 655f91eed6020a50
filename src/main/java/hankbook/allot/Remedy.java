package hankbook.allot;

import hankbook.measure.Phrase;
import hankbook.plan.Plan;
import hankbook.yarn.YarnColour;
import java.util.Comparator;
import java.util.List;

/**
 * Something that would make a short plan fit. Applied, the yarns it cures are short no longer, and no other has become so; one step less
 * of it would not do.
 *
 * @param change what it changes
 * @param plan the plan with that changed; the same plan where the remedy lies in the yarn to buy
 * @param cures the yarns that are short no longer, at least one
 * @param whole whether no yarn of the plan is short any longer
 */
public record Remedy(Change change, Plan plan, List<YarnColour> cures, boolean whole) {
  /** What helps the whole plan first, what costs money last, then by how little is given up. */
  static final Comparator<Remedy> LEAST_CHANGE_FIRST =
      Comparator.comparing((Remedy remedy) -> !remedy.whole()).thenComparing(remedy -> remedy.change() instanceof Change.Buying).thenComparing(remedy -> remedy.change().givenUp());

  public Remedy {
    cures = List.copyOf(cures);
  }

  /** What it is, in a sentence or two. */
  public String words() {
    return phrase().english();
  }

  /** The same, to be said in any language. */
  public Phrase phrase() {
    Phrase says = ChangeWords.of(change);
    return whole ? says : Phrase.of("{0} That is for {1} alone.", says, new Phrase.Listed(List.copyOf(cures), " and "));
  }
}
