package hankbook.cost;

import hankbook.allot.Judgement;
import hankbook.allot.PlanCheck;
import hankbook.allot.Purchase;
import hankbook.allot.PutUp;
import hankbook.allot.Setting;
import hankbook.measure.Length;
import hankbook.measure.MoneyText;
import hankbook.measure.Percentage;
import hankbook.measure.Sett;
import hankbook.plan.Allowances;
import hankbook.plan.OrderEntry;
import hankbook.plan.Piece;
import hankbook.plan.Plan;
import hankbook.plan.Warp;
import hankbook.plan.Weft;
import hankbook.yarn.PackageForm;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.numbers.fraction.BigFraction;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * A plan that can be reckoned by hand. Three mats, 50 cm long and 20 cm wide, without take-up or shrinkage; 20 cm of sampling and 30 cm of loom waste: a warp of
 * 1.5 + 0.2 + 0.3 = 2 m. 5 ends to the centimetre over 20 cm are 100 ends, 200 m of warp. Woven are 1.5 + 0.2 = 1.7 m; 5 picks to the centimetre are 850 picks
 * of 20 cm, 170 m of weft.
 */
final class Mats {
  static final YarnColour WARP = new YarnColour("Tarn", "Slate");
  static final YarnColour WEFT = new YarnColour("Beck", "Milk");
  static final CurrencyUnit EUR = CurrencyUnit.EUR;

  private Mats() {}

  static Plan plan(Percentage winding, int repairEnds) {
    return plan(List.of(new Piece("mat", 3, cm(50), cm(20), Length.ZERO, Length.ZERO)), winding, repairEnds);
  }

  static Plan plan(List<Piece> pieces, Percentage winding, int repairEnds) {
    Allowances allowances =
        new Allowances(
            Percentage.ZERO, Percentage.ZERO, Percentage.ZERO, Percentage.ZERO, Percentage.ZERO, cm(20), cm(30), Length.ZERO, winding, repairEnds, Length.ZERO);
    Warp warp = new Warp(Sett.perCentimetre(5), OptionalInt.empty(), Optional.empty(), 1, 0, List.of(new OrderEntry(WARP, new OrderEntry.Share(BigFraction.ONE), 1)));
    Weft weft = new Weft(WEFT, Sett.perCentimetre(5), BigFraction.ONE, 1, BigFraction.ONE, Optional.empty());
    return new Plan("Mats", pieces, warp, List.of(weft), allowances, 1);
  }

  static Plan plan() {
    return plan(Percentage.ZERO, 0);
  }

  static Length cm(long count) {
    return Length.parse(count + " cm");
  }

  static Skein skein(String code, YarnColour yarn, String length) {
    return new Skein(
        code, yarn, "", "", Optional.empty(), PackageForm.SKEIN, Optional.of(Length.parse(length)), Optional.empty(), false, "", "", Optional.empty(),
        Optional.empty(), Optional.empty());
  }

  /** What a skein is worth, as {@code A 250 m 25.00 EUR}. */
  static Map<String, List<Worth>> worths(String... texts) {
    Map<String, List<Worth>> worths = new HashMap<>();
    for (String text : texts) {
      String[] parts = text.split(" ", 4);
      worths.put(parts[0], List.of(new Worth(Length.parse(parts[1] + " " + parts[2]), money(parts[3]))));
    }
    return worths;
  }

  static Money money(String text) {
    return MoneyText.parse(text);
  }

  static PlanCost cost(Plan plan, List<Skein> stock, Map<String, List<Worth>> worths, Judgement judgement, Map<YarnColour, PutUp> prices) {
    PlanCheck check = PlanCheck.of(plan, stock, judgement);
    return PlanCost.of(check, stock, costing(check, stock, worths, judgement, prices));
  }

  static Costing costing(PlanCheck check, List<Skein> stock, Map<String, List<Worth>> worths, Judgement judgement, Map<YarnColour, PutUp> prices) {
    return new Costing(
        EUR, worths, Purchase.of(check, stock, judgement, prices), Rates.of(judgement, Map.of()), judgement.percentage(Setting.OVERHEAD),
        judgement.money(Setting.PLAN_OVERHEAD), judgement.usefulRemnant());
  }

  /** The line that is found by going down from the total by these keys. */
  static CostLine line(PlanCost cost, String... keys) {
    CostLine line = cost.total();
    for (String key : keys) {
      CostLine from = line;
      line = from.part(key).orElseThrow(() -> new AssertionError("no " + key + " under " + from.name() + ", only " + from.parts().stream().map(CostLine::key).toList()));
    }
    return line;
  }

  static String amount(PlanCost cost, String... keys) {
    return MoneyText.print(line(cost, keys).amount());
  }
}
