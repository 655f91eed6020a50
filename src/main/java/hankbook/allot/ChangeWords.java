package hankbook.allot;

import hankbook.measure.Exact;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.plan.Width;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import org.joda.money.Money;

/** Says a change as a weaver would tell another. */
final class ChangeWords {
  private ChangeWords() {}

  static String of(Change change) {
    return switch (change) {
      case Change.LessSampling less when less.to().isZero() -> "Give up the sampling of " + centimetres(less.from()) + ".";
      case Change.LessSampling less -> "Sample on " + centimetres(less.to()) + " instead of " + centimetres(less.from()) + ".";
      case Change.OpenerSett opener ->
          "Open the sett to " + opener.to() + " from " + opener.from() + ": " + opener.ends() + " ends to the same width" + sections(opener.sectionsLost()) + ".";
      case Change.FewerPicks fewer -> "Weave " + fewer.to() + " picks instead of " + fewer.from() + ".";
      case Change.Narrower narrower -> narrower(narrower);
      case Change.ShorterPieces shorter when shorter.to().size() == 1 ->
          "Weave each piece " + centimetres(shorter.longestTo()) + " long instead of " + centimetres(shorter.longestFrom()) + ".";
      case Change.ShorterPieces shorter -> "Weave every piece shorter: " + all(shorter.to()) + " instead of " + all(shorter.from()) + ".";
      case Change.ShorterWarp shorter -> "Wind a warp of " + metres(shorter.to()) + " instead of " + metres(shorter.from()) + ".";
      case Change.FewerPieces fewer -> "Weave only " + fewer.to() + " of " + fewer.piece() + " instead of " + fewer.from() + ".";
      case Change.OtherYarn other -> standIn(other.standIn());
      case Change.Buying buying -> buying(buying.purchases());
    };
  }

  private static String narrower(Change.Narrower narrower) {
    String ends = narrower.to().ends() + " ends, " + inReed(narrower.to()) + " in the reed, instead of " + narrower.from().ends() + ", " + inReed(narrower.from());
    return "Weave " + centimetres(narrower.finishedTo()) + " wide instead of " + centimetres(narrower.finishedFrom()) + ": " + ends + sections(narrower.sectionsLost()) + ".";
  }

  private static String sections(boolean lost) {
    return lost ? "; the sections become a plain count of ends" : "";
  }

  private static String inReed(Width width) {
    return width.inReed().print(LengthUnit.CENTIMETRE, 1);
  }

  static String standIn(StandIn standIn) {
    String colour = standIn.difference().map(difference -> "colour difference " + difference).orElse("colour difference unknown");
    String grist = standIn.heavier().map(ChangeWords::grist).orElse("grist unknown");
    return "Take " + standIn.yarn() + " in the place of " + standIn.place() + ": " + metres(standIn.free()) + " free, " + grist + ", " + colour + ".";
  }

  private static String grist(BigFraction heavier) {
    String percent = Exact.plain(heavier.abs().multiply(100), 1) + " %";
    return heavier.signum() == 0 ? "of the same grist" : percent + (heavier.signum() > 0 ? " heavier" : " lighter");
  }

  private static String buying(List<Purchase> purchases) {
    String what = purchases.stream().map(purchase -> purchase.putUps().orElse(0) + " more of " + purchase.yarn() + each(purchase)).collect(Collectors.joining(" and "));
    return "Buy " + what + ", as large as the last: " + Purchase.total(purchases).map(total -> money(total) + " in all").orElse("the price is not known") + ".";
  }

  private static String each(Purchase purchase) {
    return purchase.putUps().orElse(0) > 1 ? purchase.each().map(price -> " at " + money(price)).orElse("") : "";
  }

  private static String money(Money money) {
    return money.getAmount().toPlainString() + " " + money.getCurrencyUnit();
  }

  private static String all(List<Length> lengths) {
    return lengths.stream().map(ChangeWords::centimetres).collect(Collectors.joining(", "));
  }

  private static String centimetres(Length length) {
    return length.print(LengthUnit.CENTIMETRE, 2);
  }

  private static String metres(Length length) {
    return length.print(LengthUnit.METRE, 2);
  }
}
