package hankbook.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import hankbook.allot.PutUp;
import hankbook.cost.CostWish;
import hankbook.cost.Pricing;
import hankbook.measure.DurationText;
import hankbook.measure.Length;
import hankbook.measure.MoneyText;
import hankbook.measure.Percentage;
import hankbook.measure.Unreadable;
import hankbook.plan.Plan;
import hankbook.plan.WorkKind;
import hankbook.yarn.YarnColour;
import java.time.Duration;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.joda.money.Money;

/** Reads what a plan is to be costed beside: a plan file, or a file of format {@code hankbook-what-if/1} with other prices, rates, times or a price. */
public final class WhatIfFile {
  static final String FORMAT = "hankbook-what-if/1";
  private static final Set<String> KNOWN = Set.of("format", "plan", "prices", "rate", "times", "overhead", "planOverhead", "margin", "markup");
  private static final Set<String> PRICE = Set.of("yarn", "colour", "each", "holds");

  private WhatIfFile() {}

  /**
   * What would be otherwise.
   *
   * @param plan another plan in the place of the one that is costed
   * @param wish how it is costed otherwise
   */
  public record WhatIf(Optional<Plan> plan, CostWish wish) {}

  /**
   * Reads the text of such a file.
   *
   * @param file its name, for messages
   * @throws BadInput naming the file, the field, what was found and what is wanted
   */
  public static WhatIf read(String file, String text) throws BadInput {
    return JsonFile.read(file, text, "a plan, or a file of format " + FORMAT, WhatIfFile::whatIf);
  }

  private static WhatIf whatIf(JsonNode root) {
    if (!root.path("format").asText().equals(FORMAT)) {
      return new WhatIf(Optional.of(PlanFile.plan(root)), CostWish.AS_SET);
    }
    JsonFields fields = new JsonFields(root, "", KNOWN);
    Optional<Plan> plan = fields.has("plan") ? Optional.of(PlanFile.plan(root.get("plan"))) : Optional.empty();
    Optional<Pricing> margin = fields.read("margin", text -> new Pricing.Margin(Percentage.parse(text)));
    Optional<Pricing> markup = fields.read("markup", text -> new Pricing.Markup(Percentage.parse(text)));
    if (margin.isPresent() && markup.isPresent()) {
      throw new JsonFields.Refused("markup", new Unreadable("a margin and a markup", "one of them"));
    }
    Optional<Money> rate = fields.read("rate", MoneyText::parse);
    Optional<Percentage> overhead = fields.read("overhead", Percentage::parse);
    Optional<Money> planOverhead = fields.read("planOverhead", MoneyText::parse);
    Map<YarnColour, PutUp> prices = prices(fields);
    Map<WorkKind, Duration> times = times(fields);
    return new WhatIf(plan, fields.built(() -> new CostWish(prices, rate, times, overhead, planOverhead, margin.or(() -> markup))));
  }

  private static Map<YarnColour, PutUp> prices(JsonFields fields) {
    Map<YarnColour, PutUp> prices = new HashMap<>();
    for (JsonFields price : fields.list("prices", PRICE)) {
      YarnColour yarn = PlanFile.yarn(price);
      Money each = price.required("each", "the price of one such as 24.50 EUR", MoneyText::parse);
      PutUp putUp = price.built(() -> new PutUp(each, price.read("holds", Length::parse)));
      price.check("yarn", () -> refuseTwice(prices, yarn));
      prices.put(yarn, putUp);
    }
    return prices;
  }

  private static void refuseTwice(Map<YarnColour, PutUp> prices, YarnColour yarn) {
    if (prices.containsKey(yarn)) {
      throw new Unreadable(yarn.toString(), "each yarn once");
    }
  }

  private static Map<WorkKind, Duration> times(JsonFields fields) {
    JsonFields times = fields.object("times", Arrays.stream(WorkKind.values()).map(WorkKind::key).collect(Collectors.toSet()));
    Map<WorkKind, Duration> read = new EnumMap<>(WorkKind.class);
    for (WorkKind kind : WorkKind.values()) {
      times.read(kind.key(), DurationText::parse).ifPresent(time -> read.put(kind, time));
    }
    return read;
  }
}
