package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.ledger.ChainedEntry;
import hankbook.measure.Arithmetic;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.Percentage;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NewPackage;
import hankbook.studio.NotDone;
import hankbook.studio.Rewind;
import hankbook.studio.Studio;
import hankbook.studio.WoundOff;
import hankbook.yarn.PackageForm;
import hankbook.yarn.Turns;
import hankbook.yarn.Weighing;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Winds yarn off one skein onto another. */
@NullUnmarked
@Command(
    name = "rewind",
    description = "Wind yarn off a skein onto a package of its own, or join it onto another skein of the yarn. Its cost goes with it; what is reserved stays where it is.",
    mixinStandardHelpOptions = true)
final class RewindCommand extends LedgerCommand {
  @Parameters(index = "0", paramLabel = "SKEIN", description = "The skein that yarn is wound off.")
  private String from;

  @Parameters(index = "1", arity = "0..1", paramLabel = "LENGTH", description = "How much, such as '300 m', where it was neither counted nor weighed.")
  private String length;

  @Option(names = "--onto", required = true, paramLabel = "SKEIN", description = "What it is wound onto: a new code; with --join, that of a skein there is.")
  private String onto;

  @Option(names = "--all", description = "All of it that is free.")
  private boolean all;

  @Option(names = "--turns", paramLabel = "COUNT", description = "How much, as turns counted on a reel.")
  private String turns;

  @Option(names = "--reel", paramLabel = "LENGTH", description = "The reel's circumference, such as '2 m'.")
  private String reel;

  @Option(names = "--gross", paramLabel = "MASS", description = "How much, by what the new package weighs with what it is wound on.")
  private String gross;

  @Option(names = "--tare", paramLabel = "MASS", description = "What it is wound on, 0 g for nothing.")
  private String tare;

  @Option(names = "--regain", paramLabel = "PERCENTAGE", description = "The moisture in the yarn that was weighed, of its dry mass; without it, the standard one.")
  private String regain;

  @Option(names = "--form", paramLabel = "FORM", description = "How the new package is put up: skein, cone, ball or spool; without it, as the other.")
  private String form;

  @Option(names = "--location", paramLabel = "PLACE", description = "Where the new package lies; without it, where the other does.")
  private String location;

  @Option(names = "--join", description = "Wind it onto a skein that has yarn of the same kind and colour on it.")
  private boolean join;

  @Option(names = "--mix-lots", description = "With --join: also where the dye lots differ; the joined skein's lot then names both.")
  private boolean mixLots;

  @Option(names = "--note", paramLabel = "TEXT", defaultValue = "", description = "What the journal should say of it.")
  private String note;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    WoundOff much = much();
    if (join && (form != null || location != null)) {
      throw wanted("--join with --form or --location", "these for a new package only; describe moves a skein to another place");
    }
    if (mixLots && !join) {
      throw wanted("--mix-lots without --join", "it with --join only, since a new package is of the lot that it comes off");
    }
    Optional<PackageForm> put = form == null ? Optional.empty() : Optional.of(Typed.read("--form", form, PackageForm::parse));
    return ledger().entering(out(), studio -> wind(studio, much, put).stream().toList());
  }

  private Optional<ChainedEntry> wind(Studio studio, WoundOff much, Optional<PackageForm> put) throws BadInput, NotDone {
    Rewind rewind = new Rewind(studio);
    UUID id = UUID.randomUUID();
    if (join) {
      return rewind.join(id, from, much, onto, mixLots, note);
    }
    NewPackage fresh = Typed.read("--onto", onto, code -> new NewPackage(code, put, Optional.ofNullable(location)));
    return rewind.off(id, from, much, fresh, note);
  }

  private WoundOff much() throws BadInput {
    boolean counted = turns != null || reel != null;
    boolean weighed = gross != null || tare != null || regain != null;
    long said = Stream.of(length != null, all, counted, weighed).filter(Boolean::booleanValue).count();
    if (said != 1) {
      throw wanted(said == 0 ? "not how much" : "several lengths", "one of a length, --all, --turns with --reel, or --gross with --tare");
    }
    if (counted) {
      return counted();
    }
    return weighed ? weighed() : all ? new WoundOff.All() : new WoundOff.Metres(Typed.read("LENGTH", length, Length::parse));
  }

  private WoundOff counted() throws BadInput {
    if (turns == null || reel == null) {
      throw wanted(turns == null ? "--reel alone" : "--turns alone", "--turns with --reel");
    }
    int count = Typed.read("--turns", turns, Arithmetic::count);
    Length circumference = Typed.read("--reel", reel, Length::parse);
    return Typed.read("--turns and --reel", turns, _ -> new WoundOff.Counted(new Turns(count, circumference)));
  }

  private WoundOff weighed() throws BadInput {
    if (gross == null || tare == null) {
      throw wanted("a weight in part", "--gross with --tare, 0 g for nothing");
    }
    Mass laden = Typed.read("--gross", gross, Mass::parse);
    Mass empty = Typed.read("--tare", tare, Mass::parse);
    Optional<Percentage> moisture = regain == null ? Optional.empty() : Optional.of(Typed.read("--regain", regain, Percentage::parse));
    return Typed.read("--gross and --tare", tare, _ -> new WoundOff.Weighed(new Weighing(laden, empty, moisture)));
  }

  private BadInput wanted(String found, String wanted) {
    return new BadInput(List.of("rewind " + from + ": found " + found + ", wanted " + wanted));
  }
}
