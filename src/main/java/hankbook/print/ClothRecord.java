package hankbook.print;

import hankbook.cost.PlanSpent;
import hankbook.measure.Length;
import hankbook.reckon.Made;
import hankbook.reckon.Reckoning;
import hankbook.yarn.YarnColour;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What is remembered of a cloth once its book is squared.
 *
 * @param name of its plan
 * @param cutOff when it was cut off
 * @param author who squared the book
 * @param made the plan, and what was found
 * @param reckoning where its yarn went
 * @param skeins that gave yarn to it
 * @param spent what its yarn cost, where that is known
 * @param printed the day the page is printed
 */
public record ClothRecord(
    String name, LocalDate cutOff, String author, Made made, Reckoning reckoning, List<Gave> skeins, Optional<PlanSpent> spent, LocalDate printed) {
  public ClothRecord {
    skeins = List.copyOf(skeins);
  }

  /**
   * What one skein gave.
   *
   * @param code of the skein
   * @param yarn and its colour
   * @param hex its colour as {@code #rrggbb}, or empty
   * @param lot its dye lot, or empty
   * @param length that went into cloth, thrums and samples
   */
  public record Gave(String code, YarnColour yarn, String hex, String lot, Length length) {}
}
