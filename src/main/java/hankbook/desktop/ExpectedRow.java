package hankbook.desktop;

import hankbook.studio.ExpectedSkein;
import hankbook.yarn.Skein;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * A skein on order, as the list shows it.
 *
 * @param skein as it was ordered
 * @param metres of it that have not come
 * @param due the day
 * @param state how far off that is, in words
 * @param isLate whether it should have come
 */
record ExpectedRow(Skein skein, Amount metres, String due, String state, boolean isLate) {
  private static final String NO_DAY = "no day";

  static ExpectedRow of(ExpectedSkein expected, LocalDate today) {
    boolean known = !expected.due().equals(LocalDate.MAX);
    return new ExpectedRow(
        expected.skein(), Amount.of(expected.length()), known ? expected.due().toString() : NO_DAY, known ? state(expected.due(), today) : "", expected.isOverdue(today));
  }

  private static String state(LocalDate due, LocalDate today) {
    long days = ChronoUnit.DAYS.between(today, due);
    if (days == 0) {
      return "due today";
    }
    return days < 0 ? "late by " + Wording.count(-days, "day", "days") : "in " + Wording.count(days, "day", "days");
  }

  String code() {
    return skein.code();
  }

  /** What was agreed to be paid, or empty. */
  String price() {
    return skein.cost().map(cost -> cost.getAmount() + " " + cost.getCurrencyUnit().getCode()).orElse("");
  }
}
