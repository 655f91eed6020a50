package hankbook.studio;

import hankbook.measure.Length;
import hankbook.yarn.Skein;
import java.time.LocalDate;
import java.util.Map;

/**
 * A skein that is on order.
 *
 * @param skein as it was ordered
 * @param length of it that has not come
 * @param due when it is expected
 */
public record ExpectedSkein(Skein skein, Length length, LocalDate due) {
  /** As though it lay on the shelf already. */
  ShelfSkein arrived() {
    return new ShelfSkein(skein.withLeft(length, skein.opened()), length, Map.of(), Map.of());
  }

  /** Whether it should have come before a day. */
  public boolean isOverdue(LocalDate today) {
    return due.isBefore(today);
  }
}
