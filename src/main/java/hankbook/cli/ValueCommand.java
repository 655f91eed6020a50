package hankbook.cli;

import hankbook.cost.ValueMethod;
import hankbook.exchange.BadInput;
import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.Value;
import hankbook.studio.ValueBy;
import hankbook.studio.ValuedStock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What the yarn in the house is worth. */
@NullUnmarked
@Command(name = "value", description = "What the yarn in the house is worth, and what became of what was paid for yarn.", mixinStandardHelpOptions = true)
final class ValueCommand extends LedgerCommand {
  @Option(names = "--on", paramLabel = "DATE", description = "At the end of a day, such as 2026-12-31, by the dates of the entries; without it, all that was entered.")
  private String on;

  @Option(names = "--method", paramLabel = "METHOD", description = "identified, fifo or average; without it, the setting valueMethod.")
  private String method;

  @Option(names = "--by", paramLabel = "GROUP", defaultValue = "yarn", description = "yarn, fibre, place or location; yarn without it.")
  private String by;

  @Option(names = "--paid", description = "What became of what was paid: what is in stock, what each plan took, what was lost.")
  private boolean paid;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    Optional<LocalDate> day = on == null ? Optional.empty() : Optional.of(Day.of("--on", on));
    Optional<ValueMethod> how = method == null ? Optional.empty() : Optional.of(Typed.read("--method", method, ValueMethod::parse));
    ValueBy group = Typed.read("--by", by, ValueCommand::group);
    return ledger().inExisting(studio -> {
      List<ValuedStock> stocks = new Value(studio).stock(day, how);
      out().println(ledger().json() ? ValueJson.of(stocks, group) : paid ? PaidReport.of(stocks) : ValueReport.of(stocks, group));
      return ExitCode.DONE;
    });
  }

  private static ValueBy group(String text) {
    return Arrays.stream(ValueBy.values())
        .filter(one -> one.name().equalsIgnoreCase(text.strip()))
        .findFirst()
        .orElseThrow(() -> new Unreadable(text, Phrase.of("one of {0}", String.join(", ", Arrays.stream(ValueBy.values()).map(one -> one.name().toLowerCase(Locale.ROOT)).toList()))));
  }
}
