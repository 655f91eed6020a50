package hankbook.allot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hankbook.measure.Grist;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.YarnNumber;
import hankbook.yarn.Doubts;
import hankbook.yarn.GristSample;
import hankbook.yarn.Kept;
import hankbook.yarn.PackageForm;
import hankbook.yarn.Skein;
import hankbook.yarn.Turns;
import hankbook.yarn.Uncertainty;
import hankbook.yarn.Weighing;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Whether the risk is what it says: of so many shelves on which running short is said to be about 1 in 10, a tenth do run short.
 *
 * <p>Simulated are 20,000 shelves of one yarn, of 3 to 14 skeins that are known by label, turns or weight, in one to three lots, with a weighed sample of the
 * yarn on a fifth of them; for each a plan that needs so many metres, from surely too few to surely too many; and for each 40 times what the skeins
 * truly hold, drawn from the errors that the measurements are said to have. Running short is that they hold fewer metres than the plan needs.
 * Not simulated: whole ends, moisture, blunders, and errors that are larger than a measurement is said to have. A shelf of one or two skeins known by
 * label alone is left out, since there the sum of the errors is no normal distribution: for a single one the risk is up to 6 points off.
 */
class CalibrationTest {
  private static final YarnColour YARN = new YarnColour("Fjara", "Ash");
  private static final int SHELVES = 10_000;
  private static final int TRUTHS = 40;
  private static final int TENTH = SHELVES / 10;

  private final SplittableRandom random = new SplittableRandom(20260314);

  private record Trial(double predicted, double observed) {}

  @Test
  void inEveryTenthOfTheShelvesAsManyRunShortAsWasSaid() {
    List<Trial> trials = new ArrayList<>();
    for (int i = 0; i < SHELVES; i++) {
      trials.add(trial());
    }
    trials.sort(Comparator.comparingDouble(Trial::predicted));
    for (int tenth = 0; tenth < 10; tenth++) {
      List<Trial> of = trials.subList(tenth * TENTH, (tenth + 1) * TENTH);
      double predicted = of.stream().mapToDouble(Trial::predicted).average().orElseThrow();
      double observed = of.stream().mapToDouble(Trial::observed).average().orElseThrow();
      assertThat(observed).as("tenth %d, said to be %.4f", tenth + 1, predicted).isCloseTo(predicted, within(0.01));
    }
  }

  /** The needs lie as many uncertainties from what is free as make every risk about as frequent as any other. */
  private Trial trial() {
    List<Skein> skeins = shelf();
    Uncertainty doubt = Uncertainty.of(skeins, Doubts.DEFAULT);
    Length free = skeins.stream().map(Skein::holds).reduce(Length.ZERO, Length::plus);
    Length need = free.plus(new Length(Math.round((random.nextDouble() * 5 - 2.5) * doubt.combined().tenthsOfMillimetre())));
    Cover cover = new Cover(YARN, need, free, doubt, true, Judgement.DEFAULT.percentage(Setting.RISK_LIMIT));
    List<Errors> errors = skeins.stream().map(CalibrationTest::errors).toList();
    int ranShort = 0;
    for (int i = 0; i < TRUTHS; i++) {
      ranShort += truth((double) free.tenthsOfMillimetre(), errors) < need.tenthsOfMillimetre() ? 1 : 0;
    }
    return new Trial(cover.chance().chance(), (double) ranShort / TRUTHS);
  }

  private List<Skein> shelf() {
    Optional<GristSample> sample =
        random.nextInt(5) == 0 ? Optional.of(new GristSample(Length.metres(20), new Mass(2000), new Mass(10), Length.parse("10 cm"))) : Optional.empty();
    List<Skein> skeins = new ArrayList<>();
    int lots = 1 + random.nextInt(3);
    int count = 3 + random.nextInt(12);
    for (int i = 0; i < count; i++) {
      skeins.add(skein(Integer.toString(i), "lot " + random.nextInt(lots), sample));
    }
    return skeins;
  }

  /** Some of them begun: what was taken off left the error of the whole. */
  private Skein skein(String code, String lot, Optional<GristSample> sample) {
    int grams = 30 + random.nextInt(220);
    int kind = random.nextInt(4);
    Optional<Length> label = kind == 0 ? Optional.of(Length.metres(grams * 10L)) : Optional.empty();
    Optional<Turns> turns = kind == 1 ? Optional.of(new Turns(grams * 5, Length.metres(2))) : Optional.empty();
    Optional<Weighing> weighing = kind >= 2 ? Optional.of(new Weighing(Mass.grams(grams + 40L), Mass.grams(40))) : Optional.empty();
    Skein whole = new Skein(
        code, YARN, "", "wool", Optional.of(YarnNumber.parse("tex 100")), PackageForm.CONE, label, turns, weighing, false, lot, "", Optional.empty(),
        Optional.empty(), Optional.empty(), sample);
    Length left = new Length(Math.round(whole.holds().tenthsOfMillimetre() * (0.5 + random.nextDouble() / 2)));
    return random.nextInt(4) == 0 ? whole.withKept(Kept.of(left), true) : whole;
  }

  /**
   * The errors of one skein, in tenths of a millimetre.
   *
   * @param lot whose grist error it shares
   * @param grist what one standard deviation of that error makes
   * @param normal one standard deviation
   * @param rectangular half-width
   * @param balance half-width of each of two readings
   */
  private record Errors(String lot, double grist, double normal, double rectangular, double balance) {}

  /** 76/211/EEC, Annex I 2.4: the label may be wrong by up to so much; a balance rounds twice, by up to half a gram; the rest is normal. */
  private static Errors errors(Skein skein) {
    double whole = skein.measurement().length().orElseThrow().tenthsOfMillimetre();
    if (skein.weighing().isEmpty()) {
      boolean turns = skein.turns().isPresent();
      return new Errors(skein.lot(), 0, turns ? whole * 0.01 : 0, turns ? 0 : whole * tolerated(whole / 100_000), 0);
    }
    double relative = skein.sample().map(sample -> sample.uncertainty().fraction().doubleValue()).orElse(0.02);
    Grist grist = skein.sample().map(GristSample::grist).orElseGet(() -> skein.grist().orElseThrow().grist());
    return new Errors(skein.sample().isPresent() ? "" : skein.lot(), whole * relative, 0, 0, 500 / grist.tex().doubleValue() * 10_000);
  }

  /** What the skeins truly hold: what is said of them, and one error of each source. */
  private double truth(double said, List<Errors> errors) {
    Map<String, Double> gristOfLot = new HashMap<>();
    double total = said;
    for (Errors of : errors) {
      total += of.grist * gristOfLot.computeIfAbsent(of.lot, none -> random.nextGaussian());
      total += of.normal * random.nextGaussian() + rectangular(of.rectangular) + rectangular(of.balance) + rectangular(of.balance);
    }
    return total;
  }

  private double rectangular(double halfWidth) {
    return (random.nextDouble() * 2 - 1) * halfWidth;
  }

  private static double tolerated(double grams) {
    if (grams <= 50) {
      return 0.09;
    } else if (grams <= 100) {
      return 4.5 / grams;
    } else if (grams <= 200) {
      return 0.045;
    }
    return 9 / grams;
  }
}
