package hankbook.desktop;

/**
 * What the plans screen says of the last thing done.
 *
 * @param text a sentence; empty where nothing is to be said
 * @param trouble whether it was not done
 */
record PlanSaid(String text, boolean trouble) {
  static final PlanSaid NOTHING = new PlanSaid("", false);
}
