package hankbook.desktop;

import hankbook.allot.Cover;
import hankbook.cost.Comparison;
import hankbook.cost.CostBecause;
import hankbook.cost.CostLine;
import hankbook.cost.Labour;
import hankbook.cost.PieceCost;
import hankbook.cost.Price;
import hankbook.desktop.say.Say;
import hankbook.measure.DurationText;
import hankbook.plan.Because;
import hankbook.studio.CostedPlan;
import hankbook.yarn.YarnColour;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.joda.money.Money;

/** The lines of what a plan costs, down to its yarns: the parts, the total, each piece, and the price. */
final class CostRows {
  private final CostedPlan now;
  private final Optional<CostedPlan> then;
  private final Function<CostedPlan, Optional<Price>> pricing;
  private final Map<String, YarnColour> yarns = new HashMap<>();
  private final List<CostRow> rows = new ArrayList<>();

  private CostRows(CostedPlan now, Optional<CostedPlan> then, Function<CostedPlan, Optional<Price>> pricing) {
    this.now = now;
    this.then = then;
    this.pricing = pricing;
    now.answer().check().covers().stream().map(Cover::yarn).forEach(yarn -> yarns.put(yarn.toString(), yarn));
  }

  /**
   * The lines of one cost, or of two beside each other.
   *
   * @param then the other, where there is one
   * @param pricing the price of each, where one is asked for
   */
  static List<CostRow> of(CostedPlan now, Optional<CostedPlan> then, Function<CostedPlan, Optional<Price>> pricing) {
    CostRows all = new CostRows(now, then, pricing);
    then.ifPresentOrElse(other -> now.beside(other).parts().forEach(part -> all.add(part, 0)), () -> now.cost().total().parts().forEach(part -> all.add(part, 0)));
    Optional<Supplier<Because>> why = then.isPresent() ? Optional.empty() : Optional.of(() -> now.because(now.cost().total()));
    all.add(CostRow.total(now.cost().total().amount(), then.map(other -> other.cost().total().amount()), why));
    all.pieces(now.cost().pieces(), then.map(other -> other.cost().pieces()));
    all.price();
    all.spending();
    return all.rows;
  }

  private void add(CostRow row) {
    rows.add(row);
  }

  private void add(CostLine line, int depth) {
    add(new CostRow(
        line.name(), depth, yarn(line.name(), depth), line.length(), detail(line, depth), Optional.of(line.amount()), Optional.empty(), Optional.of(() -> now.because(line))));
    if (depth < CostRow.NAMED) {
      line.parts().forEach(part -> add(part, depth + 1));
    }
  }

  private void add(Comparison line, int depth) {
    add(new CostRow(line.name(), depth, yarn(line.name(), depth), Optional.empty(), "", line.now(), line.then(), Optional.empty()));
    if (depth < CostRow.NAMED) {
      line.parts().forEach(part -> add(part, depth + 1));
    }
  }

  private Optional<YarnColour> yarn(String name, int depth) {
    return depth == CostRow.NAMED ? Optional.ofNullable(yarns.get(name)) : Optional.empty();
  }

  private String detail(CostLine line, int depth) {
    Optional<Labour> work = now.cost().work().stream().filter(labour -> depth > 0 && labour.kind().key().equals(line.key())).findFirst();
    return line.key().equals("work") ? hours() : work.map(CostWords::work).orElse(line.basis());
  }

  /** How long all work takes that has a rate, and at what rate where that is one. */
  private String hours() {
    List<Labour> costed = now.cost().work().stream().filter(labour -> labour.hourly().isPresent()).toList();
    Duration all = costed.stream().map(Labour::time).reduce(Duration.ZERO, Duration::plus);
    List<Money> rates = costed.stream().flatMap(labour -> labour.hourly().stream()).distinct().toList();
    String time = DurationText.rounded(all);
    return rates.size() == 1 ? Say.text("{0} at {1} an hour", time, Wording.money(rates.getFirst())) : Say.text("{0} at several rates", time);
  }

  private void pieces(List<PieceCost> pieces, Optional<List<PieceCost>> others) {
    for (int i = 0; i < pieces.size(); i++) {
      PieceCost piece = pieces.get(i);
      Optional<PieceCost> other = others.isPresent() ? Optional.of(others.get().get(i)) : Optional.empty();
      String name = other.filter(then -> then.count() != piece.count()).map(then -> Say.text("Each {0}, of {1} or {2}", piece.name(), piece.count(), then.count()))
          .orElseGet(() -> Say.text("Each {0}, of {1}", piece.name(), piece.count()));
      Optional<Supplier<Because>> why = other.isPresent() ? Optional.empty() : Optional.of(() -> CostBecause.each(piece));
      add(new CostRow(name, 1, Optional.empty(), Optional.empty(), other.isPresent() ? "" : CostWords.dearer(piece), Optional.of(piece.each()), other.map(PieceCost::each), why));
    }
  }

  private void price() {
    pricing.apply(now).ifPresent(price -> {
      Optional<Price> other = then.flatMap(pricing);
      add(CostRow.plain(Say.text("Price"), Say.text("with {0}", Wording.phrase(price.pricing().phrase())), Optional.of(price.all()), other.map(Price::all)));
      pieces(price.pieces(), other.map(Price::pieces));
    });
  }

  /** What is spent stands beside the total; here only where two are compared. */
  private void spending() {
    then.filter(other -> !other.cost().purchases().isEmpty() || !now.cost().purchases().isEmpty()).ifPresent(
        other -> add(CostRow.plain(Say.text("To be spent now"), Say.text("on whole put-ups, not in the total"), Optional.of(now.cost().spendNow()), Optional.of(other.cost().spendNow()))));
  }
}
