package hankbook.cli;

import hankbook.allot.PutUp;
import hankbook.cost.CostWish;
import hankbook.cost.Pricing;
import hankbook.exchange.BadInput;
import hankbook.measure.DurationText;
import hankbook.measure.MoneyText;
import hankbook.measure.Percentage;
import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import hankbook.plan.WorkKind;
import hankbook.yarn.YarnColour;
import java.time.Duration;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Option;

/** The words that say how a plan is to be costed. */
@NullUnmarked
final class CostOptions {
  private static final String WANTED_PRICE = "a yarn, its colour and a price such as 'Skerry 16/2, Woad=24.50 EUR' or '...=24.50 EUR / 1600 m'";

  @Option(names = "--price", paramLabel = "'YARN, COLOUR=PRICE'",
      description = "What a put-up of a yarn costs now, such as 24.50 EUR; 24.50 EUR / 1600 m says too what is on one, and then also counts for skeins whose cost is not known.")
  private List<String> prices;

  @Option(names = "--rate", paramLabel = "MONEY", description = "What an hour of work costs, of every kind; else as it is set.")
  private String rate;

  @Option(names = "--time", paramLabel = "WORK=TIME", description = "How long work takes for each end, pick or piece, such as weaving=3.5 s; else as it is set.")
  private List<String> times;

  @Option(names = "--overhead", paramLabel = "PERCENT", description = "Overheads on yarn and work together; else as it is set.")
  private String overhead;

  @Option(names = "--plan-overhead", paramLabel = "MONEY", description = "Overheads on the plan; else as it is set.")
  private String planOverhead;

  @Option(names = "--margin", paramLabel = "PERCENT", description = "A price of which this part is left after the cost: cost / (1 - margin).")
  private String margin;

  @Option(names = "--markup", paramLabel = "PERCENT", description = "A price that is the cost and this part of it: cost x (1 + markup).")
  private String markup;

  CostWish wish() throws BadInput {
    if (margin != null && markup != null) {
      throw new BadInput("--markup: found it beside --margin, wanted one of them");
    }
    Optional<Pricing> byMargin = read("--margin", margin, text -> new Pricing.Margin(Percentage.parse(text)));
    Optional<Pricing> byMarkup = read("--markup", markup, text -> new Pricing.Markup(Percentage.parse(text)));
    return new CostWish(
        putUps(), read("--rate", rate, MoneyText::parse), workTimes(), read("--overhead", overhead, CostOptions::percent),
        read("--plan-overhead", planOverhead, MoneyText::parse), byMargin.or(() -> byMarkup));
  }

  private static <T> Optional<T> read(String where, String text, Function<String, T> reader) throws BadInput {
    return text == null ? Optional.empty() : Optional.of(Typed.read(where, text, reader));
  }

  private static Percentage percent(String text) {
    Percentage percentage = Percentage.parse(text);
    if (percentage.base() != Percentage.Base.UNSAID) {
      throw new Unreadable(text, "a percentage such as 10 %");
    }
    return percentage;
  }

  private Map<YarnColour, PutUp> putUps() throws BadInput {
    Map<YarnColour, PutUp> named = new HashMap<>();
    for (String price : prices == null ? List.<String>of() : prices) {
      int equals = price.lastIndexOf('=');
      int comma = equals < 0 ? -1 : price.lastIndexOf(',', equals);
      if (comma < 0) {
        throw new BadInput("--price: " + new Unreadable(price, WANTED_PRICE).getMessage());
      }
      YarnColour yarn = Typed.read("--price", price, text -> new YarnColour(text.substring(0, comma), text.substring(comma + 1, equals)));
      if (named.put(yarn, Typed.read("--price", price.substring(equals + 1), PutUp::parse)) != null) {
        throw new BadInput("--price: found " + yarn + " twice, wanted each yarn once");
      }
    }
    return named;
  }

  private Map<WorkKind, Duration> workTimes() throws BadInput {
    Map<WorkKind, Duration> named = new EnumMap<>(WorkKind.class);
    for (String time : times == null ? List.<String>of() : times) {
      int equals = time.indexOf('=');
      WorkKind kind = Typed.read("--time", equals < 0 ? time : time.substring(0, equals), CostOptions::work);
      named.put(kind, Typed.read("--time", equals < 0 ? "" : time.substring(equals + 1), DurationText::parse));
    }
    return named;
  }

  private static WorkKind work(String text) {
    return Arrays.stream(WorkKind.values())
        .filter(kind -> kind.key().equals(text.strip()))
        .findFirst()
        .orElseThrow(() -> new Unreadable(text, Phrase.of("one of {0}, and = and a time", Arrays.stream(WorkKind.values()).map(WorkKind::key).collect(Collectors.joining(", ")))));
  }
}
