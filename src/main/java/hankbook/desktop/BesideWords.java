package hankbook.desktop;

import hankbook.cost.Contender;
import hankbook.cost.Figure;
import hankbook.cost.Trait;
import hankbook.cost.Uncounted;
import hankbook.desktop.say.Say;
import hankbook.measure.DurationText;
import hankbook.measure.Length;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/** What is said of plans that lie side by side. */
final class BesideWords {
  private BesideWords() {}

  /** What a row is about. */
  static String name(Trait trait) {
    return switch (trait) {
      case VERDICT -> Say.text("Verdict");
      case RISK -> Say.text("Risk of running short");
      case NEED -> Say.text("Need");
      case LEFT -> Say.text("Left on the shelf");
      case PIECES -> Say.text("Pieces");
      case ENDS -> Say.text("Ends");
      case WIDTH_IN_REED -> Say.text("Width in the reed");
      case WIDTH -> Say.text("Width finished");
      case WARP_LENGTH -> Say.text("Warp length");
      case COST -> Say.text("Cost");
      case EACH -> Say.text("Cost of each piece");
      case TIME -> Say.text("Time to make");
      case PUT_UPS -> Say.text("To buy, whole put-ups");
      case SPEND_NOW -> Say.text("To be spent now");
    };
  }

  /** A figure as it stands in its row. */
  static String figure(Trait trait, Figure figure) {
    return switch (figure) {
      case Figure.Unknown() -> Say.text("not known");
      case Figure.Metres(Length length) when trait == Trait.LEFT && length.isNegative() -> Say.text("{0} short", Wording.yarn(length.negated()));
      case Figure.Metres(Length length) when trait == Trait.WARP_LENGTH -> PlanWords.fine(length);
      case Figure.Metres(Length length) -> Wording.yarn(length);
      case Figure.Across(Length length) -> Wording.width(length);
      case Figure.Count(long count) -> Long.toString(count);
      case Figure.Amount(Money money) -> Wording.money(money);
      case Figure.Time(Duration time) -> DurationText.rounded(time);
      case Figure.Stands(var verdict) -> Standing.of(verdict).word();
      case Figure.Chance(var risk) -> Wording.phrase(risk.phrase());
    };
  }

  /** What a figure is called that is better than the others of its row. */
  static String best(Trait trait) {
    return trait == Trait.VERDICT ? Say.text("best") : trait.better() == Trait.Better.MOST ? Say.text("most") : Say.text("least");
  }

  /** How much more or less it is than that of the first; empty where it is as much. */
  static Optional<String> beyond(Trait trait, Figure beyond) {
    return switch (beyond) {
      case Figure.Metres(Length length) -> sized(sign(length), length.isNegative() ? new Figure.Metres(length.negated()) : beyond, trait);
      case Figure.Across(Length length) -> sized(sign(length), length.isNegative() ? new Figure.Across(length.negated()) : beyond, trait);
      case Figure.Count(long count) -> sized(Long.signum(count), new Figure.Count(Math.abs(count)), trait);
      case Figure.Amount(Money money) -> sized(money.getAmount().signum(), new Figure.Amount(money.abs()), trait);
      case Figure.Time(Duration time) -> sized(time.isNegative() ? -1 : time.isZero() ? 0 : 1, new Figure.Time(time.abs()), trait);
      case Figure.Unknown _, Figure.Stands _, Figure.Chance _ -> Optional.empty();
    };
  }

  private static int sign(Length length) {
    return length.isNegative() ? -1 : length.isZero() ? 0 : 1;
  }

  private static Optional<String> sized(int sign, Figure size, Trait trait) {
    String words = figure(trait, size);
    return sign == 0 ? Optional.empty() : Optional.of(sign > 0 ? Say.text("{0} more", words) : Say.text("{0} less", words));
  }

  /** Which yarn is in no cost, so that a total looks less than it is. */
  static List<String> uncounted(Contender plan) {
    return plan.cost().uncounted().stream()
        .filter(left -> left.kind() == Uncounted.Kind.YARN)
        .map(left -> Say.text("{0}: not in the cost is {1}.", plan.name(), Wording.phrase(left.phrase())))
        .toList();
  }
}
