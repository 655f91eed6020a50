package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.exchange.StockFile;
import hankbook.studio.SkeinFacts;
import java.util.Optional;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Option;

/** The words that say what is known of a skein beside its yarn and its metres. */
@NullUnmarked
final class Told {
  @Option(names = "--lot", paramLabel = "LOT", description = "The dye lot; '' for none.")
  private String lot;

  @Option(names = "--location", paramLabel = "PLACE", description = "Where it lies; '' for nowhere that is known.")
  private String location;

  @Option(names = "--cost", paramLabel = "MONEY", description = "What was paid for each, such as '24.50 EUR'.")
  private String cost;

  @Option(names = "--on", paramLabel = "DAY", description = "When it came, such as 2026-03-14.")
  private String day;

  SkeinFacts facts() throws BadInput {
    return new SkeinFacts(
        Optional.ofNullable(lot),
        Optional.ofNullable(location),
        cost == null ? Optional.empty() : Optional.of(Typed.read("--cost", cost, StockFile::money)),
        day == null ? Optional.empty() : Optional.of(Typed.read("--on", day, Day::of)));
  }
}
