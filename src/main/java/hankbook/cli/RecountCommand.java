package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.ledger.ChainedEntry;
import hankbook.measure.Arithmetic;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.Percentage;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.FarOff;
import hankbook.studio.Recount;
import hankbook.yarn.Turns;
import hankbook.yarn.Weighing;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Puts the book right after a weighing. */
@NullUnmarked
@Command(
    name = "recount",
    description = "Put the book right: the whole skein was measured again, with what is reserved of it and without what is on a loom. A weight or turns also make its metres as sure as they are.",
    mixinStandardHelpOptions = true)
final class RecountCommand extends LedgerCommand {
  @Parameters(index = "0", paramLabel = "SKEIN", description = "The skein's code.")
  private String code;

  @Parameters(index = "1", arity = "0..1", paramLabel = "LENGTH", description = "What there is of it, such as '120 m', where it was neither weighed nor counted.")
  private String found;

  @ArgGroup(exclusive = true)
  private How how;

  @Option(names = "--note", paramLabel = "TEXT", defaultValue = "", description = "What the journal should say of it.")
  private String note;

  /** One of these is how it was measured. */
  static final class How {
    @ArgGroup(exclusive = false)
    private Balance balance;

    @ArgGroup(exclusive = false)
    private Reel reel;
  }

  /** What the balance said. */
  static final class Balance {
    @Option(names = "--gross", required = true, paramLabel = "MASS", description = "What it weighs with what it is wound on, such as '92 g'.")
    private String gross;

    @Option(names = "--tare", required = true, paramLabel = "MASS", description = "What it is wound on, 0 g for nothing.")
    private String tare;

    @Option(names = "--regain", paramLabel = "PERCENTAGE", description = "The moisture in the yarn, of its dry mass, such as '12 %%'; without it, the standard one.")
    private String regain;

    Weighing read() throws BadInput {
      Mass laden = Typed.read("--gross", gross, Mass::parse);
      Mass empty = Typed.read("--tare", tare, Mass::parse);
      Optional<Percentage> moisture = regain == null ? Optional.empty() : Optional.of(Typed.read("--regain", regain, Percentage::parse));
      return Typed.read("--gross and --tare", tare, _ -> new Weighing(laden, empty, moisture));
    }
  }

  /** What was counted. */
  static final class Reel {
    @Option(names = "--turns", required = true, paramLabel = "COUNT", description = "Turns counted on a reel.")
    private String turns;

    @Option(names = "--reel", required = true, paramLabel = "LENGTH", description = "The reel's circumference, such as '2 m'.")
    private String reel;

    Turns read() throws BadInput {
      int count = Typed.read("--turns", turns, Arithmetic::count);
      Length circumference = Typed.read("--reel", reel, Length::parse);
      return Typed.read("--turns and --reel", turns, _ -> new Turns(count, circumference));
    }
  }

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    if ((found == null) == (how == null)) {
      throw new BadInput("recount " + code + ": found " + (how == null ? "no measurement" : "two measurements") + ", wanted a length, or --gross and --tare, or --turns and --reel");
    }
    return ledger().inExisting(studio -> {
      Recount recount = new Recount(studio);
      Optional<ChainedEntry> entered = measured(recount);
      Optional<FarOff> farOff = entered.flatMap(recount::farOff);
      List<ChainedEntry> entries = entered.stream().toList();
      out().println(ledger().json() ? RecountReport.json(entries, farOff) : RecountReport.page(entries, farOff));
      return ExitCode.DONE;
    });
  }

  private Optional<ChainedEntry> measured(Recount recount) throws BadInput, NotDone {
    UUID id = UUID.randomUUID();
    if (how == null) {
      return recount.skein(id, code, Typed.read("LENGTH", found, Length::parse), note);
    } else if (how.balance != null) {
      return recount.weighed(id, code, how.balance.read(), note);
    }
    return recount.counted(id, code, how.reel.read(), note);
  }
}
