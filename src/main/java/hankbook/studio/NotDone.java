package hankbook.studio;

import hankbook.measure.Phrase;

/** Something could not be done, and nothing was changed; the phrase says why in the user's words. */
public final class NotDone extends Exception {
  private static final long serialVersionUID = 1L;

  /** Transient only because its values do not promise that they can be serialised. */
  private final transient Phrase phrase;

  private final boolean yarnIsShort;

  private NotDone(Phrase phrase, boolean yarnIsShort) {
    super(phrase.english());
    this.phrase = phrase;
    this.yarnIsShort = yarnIsShort;
  }

  /** The English is a constant, with {@code {0}}, {@code {1}} where the values go. */
  static NotDone because(String english, Object... values) {
    return because(Phrase.of(english, values));
  }

  static NotDone because(Phrase why) {
    return new NotDone(why, false);
  }

  static NotDone shortOfYarn(Phrase why) {
    return new NotDone(why, true);
  }

  /** Why, to be said in any language. */
  public Phrase phrase() {
    return phrase;
  }

  /** Whether the reason is that a yarn is short. */
  public boolean yarnIsShort() {
    return yarnIsShort;
  }
}
