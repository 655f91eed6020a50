package hankbook.allot;

import hankbook.measure.Length;
import hankbook.plan.Amount;
import hankbook.plan.Because;
import hankbook.plan.Combined;
import hankbook.plan.Term;
import hankbook.yarn.Measurement;
import hankbook.yarn.Skein;
import java.util.ArrayList;
import java.util.List;

/** Why so much of a skein is free, and why it gives so much of that to a plan. */
public final class SkeinBecause {
  private SkeinBecause() {}

  /** What is free of a skein: what it held when it was measured, and what happened to it since. */
  static Because free(Skein skein) {
    Length holds = skein.holds();
    if (skein.measurement().length().isEmpty()) {
      return Because.given(Term.FREE_OF_SKEIN, skein.code(), Amount.Stretch.of(holds));
    }
    Because measured = measured(skein, skein.measurement());
    Length since = holds.minus(skein.measurement().length().orElseThrow());
    return since.isZero()
        ? measured.as(measured.isMade() ? measured.term() : Term.MEASURED_BY_LABEL, skein.code())
        : Because.made(
            Term.FREE_SINCE_MEASURED, skein.code(), Amount.Stretch::new, Combined.SUM, List.of(measured, Because.given(Term.SINCE, skein.code(), Amount.Stretch.of(since))));
  }

  private static Because measured(Skein skein, Measurement measurement) {
    return switch (measurement) {
      case Measurement.ByLabel label -> Because.given(Term.MEASURED_BY_LABEL, skein.code(), Amount.Stretch.of(label.printed()));
      case Measurement.ByTurns counted -> Because.made(
          Term.MEASURED_BY_TURNS, skein.code(), Amount.Stretch::new, Combined.PRODUCT,
          List.of(Because.given(Term.TURNS, Amount.Count.of(counted.turns().count())), Because.given(Term.REEL, Amount.Stretch.of(counted.turns().reel()))));
      case Measurement.ByWeight weight -> Because.made(
          Term.MEASURED_BY_WEIGHT, skein.code(), Amount.Stretch::new, Combined.NEAREST,
          List.of(Because.made(Term.BY_WEIGHT_EXACT, Amount.Stretch::new, Combined.QUOTIENT, net(weight), Because.given(Term.GRIST, new Amount.Fineness(weight.grist())))));
      case Measurement.Unmeasured _ -> Because.given(Term.FREE_OF_SKEIN, skein.code(), Amount.Stretch.of(skein.holds()));
    };
  }

  /** What a moist yarn weighs at its standard moisture is given, since that is reckoned from another table. */
  private static Because net(Measurement.ByWeight weight) {
    if (!weight.net().equals(weight.weighing().net())) {
      return Because.given(Term.NET_AT_STANDARD, Amount.Weight.of(weight.net()));
    }
    Because gross = Because.given(Term.GROSS, Amount.Weight.of(weight.weighing().gross()));
    Because tare = Because.given(Term.TARE, Amount.Weight.of(weight.weighing().tare()));
    return Because.made(Term.NET, Amount.Weight::new, Combined.DIFFERENCE, gross, tare);
  }

  /**
   * What a skein gives to a plan: ends of every kind, and weft.
   *
   * @param share of the skein in the plan
   */
  public static Because given(Share share) {
    List<Because> parts = new ArrayList<>();
    share.kinds().forEach(kind -> parts.add(
        Because.made(
            Term.WARP_FROM_SKEIN, share.code(), Amount.Stretch::new, Combined.PRODUCT,
            List.of(Because.given(Term.ENDS_FROM_SKEIN, Amount.Count.of(kind.ends())), Because.given(Term.YARN_IN_END, Amount.Stretch.of(kind.each()))))));
    if (share.weft().isPositive()) {
      parts.add(Because.given(Term.WEFT_FROM_SKEIN, share.code(), Amount.Stretch.of(share.weft())));
    }
    return Because.sum(Term.FROM_SKEIN, share.code(), Amount.Stretch::new, parts);
  }

  /** What a skein has left of what is free of it, when it has given its share. */
  public static Because left(Share share, Skein skein) {
    return Because.made(Term.LEFT_ON_SKEIN, share.code(), Amount.Stretch::new, Combined.DIFFERENCE, List.of(free(skein), given(share)));
  }

  /**
   * The whole ends that a skein could give of one kind and gives.
   *
   * @param skein what is free of it
   * @param kind of ends, and how many it gives
   */
  public static Because ends(Skein skein, EndsGiven kind) {
    Because each = Because.given(Term.YARN_IN_END, Amount.Stretch.of(kind.each()));
    Because held = Because.made(Term.ENDS_HELD, skein.code(), Amount.Count::new, Combined.QUOTIENT, List.of(free(skein), each));
    Because most = Because.made(Term.MOST_ENDS, skein.code(), Amount.Count::new, Combined.DOWN, List.of(held));
    return new Because(Term.ENDS_FROM_SKEIN, skein.code(), Amount.Count.of(kind.ends()), Combined.RULE, List.of(most));
  }
}
