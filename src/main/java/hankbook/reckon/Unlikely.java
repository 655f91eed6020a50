package hankbook.reckon;

import hankbook.measure.Phrase;

/**
 * What measurements make that no cloth can be; it is told and not used.
 *
 * @param what it would be
 * @param found what they make, as a phrase takes it
 * @param wanted what is likely
 * @param from what it was worked out from
 */
public record Unlikely(String what, Object found, Phrase wanted, Phrase from) {
  /** It in one sentence. */
  public String words() {
    return phrase().english();
  }

  /** The same, to be said in any language. */
  public Phrase phrase() {
    return Phrase.of("{0} would be {1} by {2}; likely is {3}, so it is not used.", new Phrase.Word(what), found, from, wanted);
  }
}
