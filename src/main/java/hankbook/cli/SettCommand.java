package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.gear.Diameters;
import hankbook.gear.Reed;
import hankbook.gear.SettAdvice;
import hankbook.gear.SleyChoice;
import hankbook.gear.Weave;
import hankbook.measure.Arithmetic;
import hankbook.measure.Grist;
import hankbook.measure.Phrase;
import hankbook.measure.Sett;
import hankbook.measure.Unreadable;
import hankbook.measure.YarnNumber;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** How closely may a yarn be set? */
@NullUnmarked
@Command(name = "sett", description = "How closely may a yarn be set in a weave, and which sleying gives that?", mixinStandardHelpOptions = true)
final class SettCommand implements Callable<Integer> {
  private static final int NAMED = 4;

  @Option(
      names = "--grist",
      required = true,
      paramLabel = "NUMBER",
      description = "The yarn's number, such as '8/2 cotton'; with + between them, threads that go as one end. Given again, another kind of end.")
  private List<String> grists = new ArrayList<>();

  @Option(names = "--parts", paramLabel = "A:B", description = "How many of each kind of end, such as 2:1; without it, as many of each.")
  private String parts;

  @Option(names = "--weave", paramLabel = "WEAVE", description = "Such as plain, '2/2 twill', '5-end satin' or '4 ends, 2 intersections'; without it, plain.")
  private String weave;

  @Option(names = "--k", paramLabel = "K", description = "0.84 for soft woollen; without it, 0.9, for worsted and other firm yarn.")
  private String factor;

  @Option(names = "--part", paramLabel = "PART", description = "Which part of the fullest sett is worked with; without it, 3/4.")
  private String part;

  @Option(names = "--reed", paramLabel = "DENTS", description = "A reed to sley it in, such as 12/in; may be given again.")
  private List<String> reeds = new ArrayList<>();

  @Option(names = "--json", description = "Print one JSON object and nothing else.")
  private boolean json;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws BadInput {
    List<Diameters.Kind> kinds = kinds();
    Diameters diameters = factor == null ? Diameters.of(kinds, Diameters.FIRM) : Typed.read("--k", factor, text -> Diameters.of(kinds, Arithmetic.number(text)));
    Weave woven = weave == null ? Weave.PLAIN : Typed.read("--weave", weave, Weave::parse);
    SettAdvice advice =
        part == null ? new SettAdvice(diameters, woven, SettAdvice.THREE_QUARTERS) : Typed.read("--part", part, text -> new SettAdvice(diameters, woven, Arithmetic.number(text)));
    List<SleyChoice> choices = choices(advice);
    spec.commandLine().getOut().println(json ? GearJson.advice(advice, choices) : SettReport.advice(advice, choices));
    return ExitCode.DONE;
  }

  private List<Diameters.Kind> kinds() throws BadInput {
    List<Integer> counts = parts == null ? grists.stream().map(_ -> 1).toList() : Typed.read("--parts", parts, this::counts);
    List<Diameters.Kind> kinds = new ArrayList<>();
    for (int i = 0; i < grists.size(); i++) {
      kinds.add(new Diameters.Kind(Typed.read("--grist", grists.get(i), SettCommand::end), counts.get(i)));
    }
    return kinds;
  }

  private List<Integer> counts(String text) {
    List<Integer> counts = Arrays.stream(text.split(":", -1)).map(Arithmetic::count).toList();
    if (counts.size() != grists.size() || counts.contains(0)) {
      throw new Unreadable(text, Phrase.of("as many parts over zero as there are kinds of end, such as 2:1; there are {0}", grists.size()));
    }
    return counts;
  }

  /** The threads that go as one end. */
  private static Grist end(String text) {
    return Arrays.stream(text.split("\\+", -1)).map(thread -> YarnNumber.parse(thread).grist()).reduce(Grist::with).orElseThrow();
  }

  /** Near the working sett, in the unit of the first reed. */
  private List<SleyChoice> choices(SettAdvice advice) throws BadInput {
    List<Reed> read = new ArrayList<>();
    for (String reed : reeds) {
      Sett dents = Typed.read("--reed", reed, Reed::dents);
      read.add(new Reed(dents.toString(), dents, Optional.empty()));
    }
    if (read.isEmpty()) {
      return List.of();
    }
    boolean inches = read.getFirst().dents().span().equals(SettReport.INCH);
    Sett wanted = advice.working(inches ? SettReport.INCH : SettReport.CENTIMETRE);
    return SleyChoice.all(wanted, read).stream().limit(NAMED).toList();
  }
}
