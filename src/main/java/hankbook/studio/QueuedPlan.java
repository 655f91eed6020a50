package hankbook.studio;

import hankbook.allot.Verdict;
import hankbook.measure.Length;
import hankbook.yarn.YarnColour;
import java.util.List;

/**
 * A plan at its turn, after those before it took theirs.
 *
 * @param name the plan
 * @param stands whether it still takes yarn
 * @param unfinished what is missing or cannot be read in it; empty where it is finished
 * @param claims what it asks of each yarn; none where it takes no more, or is not finished; on the loom too where it lacks some still
 * @param skeins what it is given
 */
public record QueuedPlan(String name, Stands stands, String unfinished, List<Claim> claims, List<Given> skeins) {
  public QueuedPlan {
    claims = List.copyOf(claims);
    skeins = List.copyOf(skeins);
  }

  /** Whether it takes its yarn at its turn, or lacks some of it on the loom. */
  boolean takesYarn() {
    return stands == Stands.OPEN || !claims.isEmpty();
  }

  /** What has become of a plan. */
  public enum Stands {
    /** It takes its yarn at its turn. */
    OPEN("open"),
    /** Yarn of it was drawn and nothing more is reserved for it; it takes more only where that was not all. */
    ON_THE_LOOM("on the loom"),
    /** It is woven, and nothing is reserved for it or on its loom. */
    WOVEN("woven"),
    /** It cannot be reckoned as it is. */
    UNFINISHED("unfinished");

    private final String words;

    Stands(String words) {
      this.words = words;
    }

    /** In plain words. */
    public String words() {
      return words;
    }
  }

  /**
   * What a plan asks of one yarn at its turn.
   *
   * @param yarn the yarn
   * @param need all that it takes, what it has reserved or on its loom too
   * @param free what it may use at its turn: what those before it left, and what it has
   * @param lack what no skein gives it, whole ends counted
   * @param verdict against what is free
   */
  public record Claim(YarnColour yarn, Length need, Length free, Length lack, Verdict verdict) {}

  /**
   * What a plan is given of one skein.
   *
   * @param skein its code
   * @param length what it has of it already too
   */
  public record Given(String skein, Length length) {}
}
