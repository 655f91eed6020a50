package hankbook.allot;

import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.measure.Phrase;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.joda.money.Money;

/** Says a change as a weaver would tell another. */
final class ChangeWords {
  private ChangeWords() {}

  static Phrase of(Change change) {
    return switch (change) {
      case Change.LessSampling less when less.to().isZero() -> Phrase.of("Give up the sampling of {0}.", centimetres(less.from()));
      case Change.LessSampling less -> Phrase.of("Sample on {0} instead of {1}.", centimetres(less.to()), centimetres(less.from()));
      case Change.OpenerSett opener ->
          opener.sectionsLost()
          ? Phrase.of("Open the sett to {0} from {1}: {2} ends to the same width; the sections become a plain count of ends.", opener.to(), opener.from(), opener.ends())
          : Phrase.of("Open the sett to {0} from {1}: {2} ends to the same width.", opener.to(), opener.from(), opener.ends());
      case Change.FewerPicks fewer -> Phrase.of("Weave {0} picks instead of {1}.", fewer.to(), fewer.from());
      case Change.Narrower narrower -> narrower(narrower);
      case Change.ShorterPieces shorter when shorter.to().size() == 1 ->
          Phrase.of("Weave each piece {0} long instead of {1}.", centimetres(shorter.longestTo()), centimetres(shorter.longestFrom()));
      case Change.ShorterPieces shorter -> Phrase.of("Weave every piece shorter: {0} instead of {1}.", all(shorter.to()), all(shorter.from()));
      case Change.ShorterWarp shorter -> Phrase.of("Wind a warp of {0} instead of {1}.", toTheCentimetre(shorter.to()), toTheCentimetre(shorter.from()));
      case Change.FewerPieces fewer -> Phrase.of("Weave only {0} of {1} instead of {2}.", fewer.to(), fewer.piece(), fewer.from());
      case Change.OtherYarn other -> standIn(other.standIn());
      case Change.Buying buying -> buying(buying.purchases());
    };
  }

  private static Phrase narrower(Change.Narrower narrower) {
    Phrase ends = Phrase.of("{0} ends, {1} in the reed, instead of {2}, {3}",
        narrower.to().ends(), Phrase.width(narrower.to().inReed()), narrower.from().ends(), Phrase.width(narrower.from().inReed()));
    return narrower.sectionsLost()
        ? Phrase.of("Weave {0} wide instead of {1}: {2}; the sections become a plain count of ends.", centimetres(narrower.finishedTo()), centimetres(narrower.finishedFrom()), ends)
        : Phrase.of("Weave {0} wide instead of {1}: {2}.", centimetres(narrower.finishedTo()), centimetres(narrower.finishedFrom()), ends);
  }

  static Phrase standIn(StandIn standIn) {
    Phrase colour = standIn.difference().map(difference -> Phrase.of("colour difference {0}", difference)).orElseGet(() -> Phrase.of("colour difference unknown"));
    Phrase grist = standIn.heavier().map(ChangeWords::grist).orElseGet(() -> Phrase.of("grist unknown"));
    return Phrase.of("Take {0} in the place of {1}: {2} free, {3}, {4}.", standIn.yarn(), standIn.place(), metres(standIn.free()), grist, colour);
  }

  private static Phrase grist(BigFraction heavier) {
    if (heavier.signum() == 0) {
      return Phrase.of("of the same grist");
    }
    Phrase.Percent percent = new Phrase.Percent(heavier.abs(), 1);
    return heavier.signum() > 0 ? Phrase.of("{0} heavier", percent) : Phrase.of("{0} lighter", percent);
  }

  private static Phrase buying(List<Purchase> purchases) {
    Phrase.Listed what = new Phrase.Listed(purchases.stream().<Object>map(ChangeWords::more).toList(), " and ");
    return Purchase.total(purchases)
        .map(total -> Phrase.of("Buy {0}, as large as the last: {1} in all.", what, money(total)))
        .orElseGet(() -> Phrase.of("Buy {0}, as large as the last: the price is not known.", what));
  }

  private static Phrase more(Purchase purchase) {
    int putUps = purchase.putUps().orElse(0);
    Optional<Money> each = purchase.each().filter(_ -> putUps > 1);
    return each.map(price -> Phrase.of("{0} more of {1} at {2}", putUps, purchase.yarn(), money(price))).orElseGet(() -> Phrase.of("{0} more of {1}", putUps, purchase.yarn()));
  }

  /** Two warps may differ by less than a tenth of a metre. */
  private static Phrase.Width toTheCentimetre(Length length) {
    return new Phrase.Width(length, metres(length).english());
  }

  private static Phrase.As money(Money money) {
    return new Phrase.As(money, money.getAmount().toPlainString() + " " + money.getCurrencyUnit());
  }

  private static Phrase.Listed all(List<Length> lengths) {
    return Phrase.list(lengths.stream().map(ChangeWords::centimetres).toList());
  }

  private static Phrase.Width centimetres(Length length) {
    return new Phrase.Width(length, length.print(LengthUnit.CENTIMETRE, 2));
  }

  private static Phrase.As metres(Length length) {
    return Phrase.yarn(length, 2);
  }
}
