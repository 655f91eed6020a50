package hankbook.reckon;

/**
 * What measurements make that no cloth can be; it is told and not used.
 *
 * @param what it would be
 * @param found what they make
 * @param wanted what is likely
 * @param from what it was worked out from
 */
public record Unlikely(String what, String found, String wanted, String from) {
  /** It in one sentence. */
  public String words() {
    return what + " would be " + found + " by " + from + "; likely is " + wanted + ", so it is not used.";
  }
}
