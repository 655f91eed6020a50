package hankbook.desktop;

import hankbook.desktop.say.Say;
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
  static ExpectedRow of(ExpectedSkein expected, LocalDate today) {
    boolean known = !expected.due().equals(LocalDate.MAX);
    return new ExpectedRow(
        expected.skein(), Amount.of(expected.length()), known ? expected.due().toString() : Say.text("no day"), known ? state(expected.due(), today) : "", expected.isOverdue(today));
  }

  private static String state(LocalDate due, LocalDate today) {
    long days = ChronoUnit.DAYS.between(today, due);
    if (days == 0) {
      return Say.text("due today");
    }
    return days < 0 ? Say.count(-days, "late by {0} day", "late by {0} days") : Say.count(days, "in {0} day", "in {0} days");
  }

  String code() {
    return skein.code();
  }

  /** What was agreed to be paid, or empty. */
  String price() {
    return skein.cost().map(cost -> cost.getAmount() + " " + cost.getCurrencyUnit().getCode()).orElse("");
  }
}
