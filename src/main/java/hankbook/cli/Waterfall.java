package hankbook.cli;

import hankbook.measure.Length;
import java.util.ArrayList;
import java.util.List;

/** From one length to another by steps, each as a bar between where it begins and where it ends; as wide as the steps reach, not from zero. */
final class Waterfall {
  private static final int COLUMNS = 32;

  private final long least;
  private final long most;

  Waterfall(Length from, Iterable<Length> reached) {
    List<Length> all = new ArrayList<>(List.of(from));
    reached.forEach(all::add);
    least = all.stream().mapToLong(Length::tenthsOfMillimetre).min().orElse(0);
    most = all.stream().mapToLong(Length::tenthsOfMillimetre).max().orElse(0);
  }

  /** Where the whole way begins, or where it ends. */
  String mark(Length at) {
    return " ".repeat(column(at)) + "|";
  }

  /** A step: at least one sign, {@code +} for more and {@code -} for less. */
  String bar(Length before, Length after) {
    int start = Math.min(column(before), column(after));
    int width = Math.max(1, Math.abs(column(after) - column(before)));
    return " ".repeat(start) + (after.compareTo(before) > 0 ? "+" : "-").repeat(width);
  }

  private int column(Length at) {
    return most == least ? 0 : Math.toIntExact(Math.round((double) (at.tenthsOfMillimetre() - least) * COLUMNS / (most - least)));
  }
}
