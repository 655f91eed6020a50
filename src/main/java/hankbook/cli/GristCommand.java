package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.Grists;
import hankbook.studio.NotDone;
import hankbook.studio.Studio;
import hankbook.studio.YarnGrist;
import hankbook.yarn.GristSample;
import java.util.List;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** How heavy a yarn really is for its length. */
@NullUnmarked
@Command(
    name = "grist",
    description = "A yarn's own grist: of every yarn, of one, or set by a sample that was measured and weighed.",
    mixinStandardHelpOptions = true)
final class GristCommand extends LedgerCommand {
  @Parameters(arity = "0..1", paramLabel = "YARN", description = "The yarn's name, without a colour.")
  private String yarn;

  @ArgGroup(exclusive = true)
  private Change change;

  /** What is to be said of the yarn. */
  static final class Change {
    @ArgGroup(exclusive = false)
    private Sample sample;

    @Option(names = "--forget", description = "Go by the yarn number again.")
    private boolean forget;
  }

  /** What was cut off and put on the balance. */
  static final class Sample {
    @Option(names = "--length", required = true, paramLabel = "LENGTH", description = "How long the sample is, such as '10 m'.")
    private String length;

    @Option(names = "--mass", required = true, paramLabel = "MASS", description = "What it weighs, such as '0.63 g'.")
    private String mass;

    @Option(names = "--division", paramLabel = "MASS", description = "The balance's division; without it, one in the last digit of the mass.")
    private String division;

    @Option(names = "--within", paramLabel = "LENGTH", description = "How far the length may be off; without it, half a hundredth.")
    private String within;

    GristSample read() throws BadInput {
      Length measured = Typed.read("--length", length, Length::parse);
      Mass weighed = Typed.read("--mass", mass, Mass::parse);
      Mass step = division == null ? Mass.lastDigit(mass) : Typed.read("--division", division, Mass::parse);
      Length off = within == null ? GristSample.usuallyWithin(measured) : Typed.read("--within", within, Length::parse);
      return Typed.read("grist", mass, _ -> new GristSample(measured, weighed, step, off));
    }
  }

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    if (yarn == null && change != null) {
      throw new BadInput("grist: found no yarn, wanted the name of the one that was weighed");
    }
    return ledger().inExisting(studio -> {
      List<YarnGrist> grists = yarn == null ? new Grists(studio).all() : List.of(one(studio));
      out().println(ledger().json() ? CertaintyJson.grists(grists) : yarn == null ? CertaintyReport.grists(grists) : CertaintyReport.grist(grists.getFirst()));
      return ExitCode.DONE;
    });
  }

  private YarnGrist one(Studio studio) throws BadInput, NotDone {
    Grists grists = new Grists(studio);
    if (change == null) {
      return grists.of(yarn);
    }
    return change.forget ? grists.forget(yarn) : grists.weigh(yarn, change.sample.read());
  }
}
