package hankbook.cost;

import hankbook.measure.DurationText;
import hankbook.measure.Exact;
import hankbook.measure.Phrase;
import hankbook.plan.Need;
import hankbook.plan.Plan;
import hankbook.plan.WorkKind;
import hankbook.plan.Yardage;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What the work on a plan costs.
 *
 * @param labour every kind of work
 * @param currency of the costs
 */
record WorkCosts(List<Labour> labour, CurrencyUnit currency) {
  static WorkCosts of(Plan plan, Yardage yardage, Costing costing) {
    List<Labour> labour = new ArrayList<>();
    for (WorkKind kind : WorkKind.values()) {
      UnitTime unit = costing.rates().times().getOrDefault(kind, new UnitTime(Duration.ZERO, Phrase.of("not known")));
      labour.add(new Labour(kind, count(kind, plan, yardage), unit, costing.rates().hourly(kind)));
    }
    return new WorkCosts(labour, costing.currency());
  }

  private static long count(WorkKind kind, Plan plan, Yardage yardage) {
    return switch (kind.per()) {
      case END -> yardage.width().ends();
      case PICK -> yardage.needs().stream().filter(need -> need.role() == Need.Role.WEFT).mapToLong(Need::threads).sum();
      case PIECE -> plan.toFinish();
    };
  }

  /** The work that has a rate, as one line: rounded once, half a coin up, and shared over its kinds. */
  Optional<CostLine> line() {
    List<Labour> costed = labour.stream().filter(this::isCosted).toList();
    if (costed.isEmpty()) {
      return Optional.empty();
    }
    List<BigFraction> coins = costed.stream().map(Labour::coins).toList();
    long all = Exact.whole(coins.stream().reduce(BigFraction.ZERO, BigFraction::add), RoundingMode.HALF_UP);
    List<Money> amounts = SharedOut.of(Money.ofMinor(currency, all), coins);
    List<CostLine> lines = new ArrayList<>();
    for (int i = 0; i < costed.size(); i++) {
      WorkKind kind = costed.get(i).kind();
      lines.add(CostLine.of(kind.key(), heading(kind), costed.get(i).basis(), amounts.get(i)));
    }
    return Optional.of(CostLine.ofAll("work", "Work", currency, lines));
  }

  /** The work that has none. */
  List<Uncounted> uncounted() {
    List<Labour> without = labour.stream().filter(work -> !isCosted(work) && !work.time().isZero()).toList();
    boolean nothingSet = labour.stream().allMatch(work -> work.hourly().isEmpty());
    if (nothingSet && !without.isEmpty()) {
      Duration hours = without.stream().map(Labour::time).reduce(Duration.ZERO, Duration::plus);
      return List.of(new Uncounted(Uncounted.Kind.WORK, Phrase.of("Work of {0}", DurationText.rounded(hours)), Phrase.of("no hourly rate is set")));
    }
    return without.stream().map(work -> new Uncounted(Uncounted.Kind.WORK, Phrase.of("{0}, {1}", new Phrase.Word(heading(work.kind())), work.phrase()), whyNot(work))).toList();
  }

  private boolean isCosted(Labour work) {
    return work.hourly().filter(rate -> rate.getCurrencyUnit().equals(currency)).isPresent();
  }

  private Phrase whyNot(Labour work) {
    return work.hourly().map(rate -> Phrase.of("its rate is in {0}, and this is reckoned in {1}", rate.getCurrencyUnit(), currency)).orElseGet(() -> Phrase.of("no hourly rate is set for it"));
  }

  private static String heading(WorkKind kind) {
    return kind.key().substring(0, 1).toUpperCase(Locale.ROOT) + kind.key().substring(1);
  }
}
