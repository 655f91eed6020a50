package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.studio.ExpectedBy;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Option;

/** The words that say whether yarn on order counts. */
@NullUnmarked
final class CountExpected {
  @Option(names = "--count-expected", description = "Count yarn on order as though it had come.")
  private boolean counted;

  @Option(names = "--by", paramLabel = "DAY", description = "With --count-expected: only what is expected by this day, such as 2026-12-20.")
  private String by;

  boolean isGiven() {
    return counted || by != null;
  }

  /**
   * What counts.
   *
   * @throws BadInput if there is a day and nothing to be counted by it
   */
  ExpectedBy expectedBy() throws BadInput {
    if (by != null && !counted) {
      throw new BadInput("--by: found a day without --count-expected, wanted both, since yarn on order counts only where you say so");
    }
    return by != null ? new ExpectedBy(Day.of("--by", by)) : counted ? ExpectedBy.ANY_DAY : ExpectedBy.NOTHING;
  }
}
