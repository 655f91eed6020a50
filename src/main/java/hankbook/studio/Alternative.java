package hankbook.studio;

import hankbook.plan.Variation;

/**
 * One of several plans that might be woven: a plan of the ledger, or what it would be with a few values said otherwise.
 *
 * @param name by which it is told from the others
 * @param plan of the ledger
 * @param variation what is said otherwise
 */
public record Alternative(String name, String plan, Variation variation) {
  /** A plan as it is kept. */
  public static Alternative kept(String plan) {
    return new Alternative(plan, plan, Variation.NONE);
  }
}
