package hankbook.allot;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.exchange.BadInput;
import hankbook.exchange.PlanFile;
import hankbook.exchange.StockFile;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.plan.Plan;
import hankbook.yarn.GristSample;
import hankbook.yarn.Skein;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Every figure is worked by hand beside the test. */
class RemediesTest {
  private static final String HEADER = "code,yarn,colour,hex,fibre,grist,form,length,opened,cost,received\n";
  private static final String PLENTY = "W1,Selkie,Pearl,#efe9dc,silk,tex 50,cone,5000 m,no,,\n";

  /** 4 pieces of 1 m, half a metre of sampling and of waste: 5 m for each of 100 ends. */
  private static final String SCARVES = """
      {"format": "hankbook-plan/1", "name": "Scarves",
       "pieces": [{"name": "scarf", "count": 4, "length": "100 cm", "width": "10 cm"}],
       "warp": {"sett": "10/cm", "order": [{"yarn": "Gorse", "colour": "Gold", "share": 1}]},
       "weft": [{"yarn": "Selkie", "colour": "Pearl", "picks": "10/cm"}],
       "allowances": {"sampling": "50 cm", "loomWaste": "50 cm"}}
      """;

  private static final String GIVEN = """
      {"format": "hankbook-plan/1", "name": "Given",
       "warp": {"sett": "10/cm", "ends": 100, "length": "10 m", "order": [{"yarn": "Gorse", "colour": "Gold", "ends": 75}, {"yarn": "Gorse", "colour": "Plum", "ends": 25}]},
       "weft": [{"yarn": "Selkie", "colour": "Pearl", "picks": "10/cm"}]}
      """;

  @Test
  void aShortWarpIsHelpedByLessOfAnythingTheLeastChangeFirst() throws BadInput {
    // 460 m of one skein: 100 ends of 4.6 m, 40 cm less of sampling (0.08 of 5 m) or 10 cm less of each piece (0.1); or 92 ends of 5 m,
    // which are 9/cm or 9 cm (0.1; half a centimetre or thread more makes 95); or 3 scarves, 4 m each end (0.25).
    assertThat(words(SCARVES, PLENTY + "G1,Gorse,Gold,,wool,tex 100,skein,460 m,no,19.00 EUR,2025-01-01\n")).containsExactly(
        "Sample on 10 cm instead of 50 cm.",
        "Open the sett to 9/cm from 10/cm: 90 ends to the same width.",
        "Weave 9 cm wide instead of 10 cm: 90 ends, 9 cm in the reed, instead of 100, 10 cm.",
        "Weave each piece 90 cm long instead of 100 cm.",
        "Weave only 3 of scarf instead of 4.",
        "Buy 1 more of Gorse Gold, as large as the last: 19.00 EUR in all.");
  }

  @Test
  void aShortWeftIsHelpedByFewerPicksToo() throws BadInput {
    // 4.5 m woven, 10/cm across 10 cm: 450 m. 400 m give 8.5/cm (382.5 m; 9/cm take 405 m); without any sampling 4 m take 400 m.
    // 8.5 cm (45 x 8.5 m = 382.5 m; 9 cm take 405 m) or pieces of 87 cm (3.98 m woven, 398 m; 88 cm take 402 m) or 3 (350 m).
    String stock = "G1,Gorse,Gold,,wool,tex 100,skein,5000 m,no,,\nW1,Selkie,Pearl,,silk,tex 50,cone,400 m,yes,,\n";
    assertThat(words(SCARVES, stock)).containsExactly(
        "Give up the sampling of 50 cm.",
        "Weave each piece 87 cm long instead of 100 cm.",
        "Weave 8.5/cm picks instead of 10/cm.",
        "Weave 8.5 cm wide instead of 10 cm: 85 ends, 8.5 cm in the reed, instead of 100, 10 cm.",
        "Weave only 3 of scarf instead of 4.",
        "Buy 1 more of Selkie Pearl, as large as the last: the price is not known.");
  }

  @Test
  void aWarpGivenOutrightIsShortenedOrCutDownInTheProportionOfItsStripes() throws BadInput {
    // 700 m of Gold for 75 ends of 10 m: 9.33 m each, or 70 ends of 10 m. 93 ends are 69.75 Gold, by largest remainder 70; of 94 it is 71.
    // 9.5/cm to the same 10 cm are 95 ends, 71 of them Gold; 9/cm are 90, 68 of them Gold.
    String stock = PLENTY + "G1,Gorse,Gold,,wool,tex 100,skein,700 m,yes,,\nG2,Gorse,Plum,,wool,tex 100,skein,300 m,yes,,\n";
    assertThat(words(GIVEN, stock)).containsExactly(
        "Wind a warp of 9.33 m instead of 10 m.",
        "Weave 9.3 cm wide instead of 10 cm: 93 ends, 9.3 cm in the reed, instead of 100, 10 cm.",
        "Open the sett to 9/cm from 10/cm: 90 ends to the same width.",
        "Buy 1 more of Gorse Gold, as large as the last: the price is not known.");
  }

  @Test
  void whatHelpsOnlyOneOfTwoShortYarnsComesAfterWhatHelpsBothAndSaysSo() throws BadInput {
    // Warp 500 m, 450 m there; weft 450 m, 400 m there.
    String stock = "G1,Gorse,Gold,,wool,tex 100,skein,450 m,no,10.00 EUR,\nW1,Selkie,Pearl,,silk,tex 50,cone,400 m,yes,,\n";
    assertThat(words(SCARVES, stock)).containsExactly(
        "Give up the sampling of 50 cm.",
        "Weave each piece 87 cm long instead of 100 cm.",
        "Weave 8.5 cm wide instead of 10 cm: 85 ends, 8.5 cm in the reed, instead of 100, 10 cm.",
        "Weave only 3 of scarf instead of 4.",
        "Buy 1 more of Gorse Gold and 1 more of Selkie Pearl, as large as the last: the price is not known.",
        "Open the sett to 9/cm from 10/cm: 90 ends to the same width. That is for Gorse Gold alone.",
        "Weave 8.5/cm picks instead of 10/cm. That is for Selkie Pearl alone.",
        "Buy 1 more of Gorse Gold, as large as the last: 10.00 EUR in all. That is for Gorse Gold alone.",
        "Buy 1 more of Selkie Pearl, as large as the last: the price is not known. That is for Selkie Pearl alone.");
  }

  @Test
  void whereAllAreBegunThePutUpIsAsTheLabelSaysAndAWeightOfWhatIsLeftIsNone() throws BadInput {
    String begun = PLENTY + "G1,Gorse,Gold,,wool,tex 100,skein,450 m,yes,10.00 EUR,\n";
    assertThat(words(SCARVES, begun)).contains("Buy 1 more of Gorse Gold, as large as the last: 10.00 EUR in all.");
    assertThat(words(SCARVES, begun.replace("450 m", ""))).noneMatch(words -> words.startsWith("Buy"));
  }

  @Test
  void whatTwoShortYarnsCostTogetherHelpsTheWholePlan() throws BadInput {
    // Warp 500 m of put-ups of 150 m, which hold 30 ends each: 100 ends want 4, one is there. Weft 450 m of put-ups of 300 m.
    String stock = "G1,Gorse,Gold,,wool,tex 100,skein,150 m,no,10.00 EUR,\nW1,Selkie,Pearl,,silk,tex 50,cone,300 m,no,24.00 EUR,\n";
    assertThat(words(SCARVES, stock)).contains(
        "Buy 3 more of Gorse Gold at 10.00 EUR and 1 more of Selkie Pearl, as large as the last: 54.00 EUR in all.",
        "Buy 3 more of Gorse Gold at 10.00 EUR, as large as the last: 30.00 EUR in all. That is for Gorse Gold alone.");
    assertThat(words(SCARVES, stock.replace("24.00 EUR", "24.00 SEK"))).contains(
        "Buy 3 more of Gorse Gold at 10.00 EUR and 1 more of Selkie Pearl, as large as the last: the price is not known.");
  }

  @Test
  void aPlanThatIsCoveredNeedsNoRemedy() throws BadInput {
    assertThat(words(SCARVES, PLENTY + "G1,Gorse,Gold,,wool,tex 100,skein,500 m,no,,\n")).isEmpty();
  }

  @Test
  void aYarnThatIsNotOnTheShelfAtAllHasOnlyItsStandIns() throws BadInput {
    List<String> words = words(SCARVES, PLENTY + "G1,Gorse,Plum,,wool,tex 100,skein,600 m,no,21.50 EUR,\n");
    assertThat(words).containsExactly(
        "Take Gorse Plum in the place of Gorse Gold: 600 m free, of the same grist, colour difference unknown.",
        "Buy 1 more of Gorse Gold, as large as the last: 21.50 EUR in all.");
  }

  @Test
  void whatStandsInIsOfLikeGristAndFibreTheLargestFirstAndTheUnknownColourLast() throws BadInput {
    String stock = PLENTY
        + "G1,Gorse,Gold,#000000,wool,tex 100,skein,100 m,no,,\n"
        + "A1,Heavier,Gold,#000000,merino,tex 110,skein,600 m,no,,\n"
        + "A2,Finer,White,#ffffff,alpaca,tex 90,skein,700 m,no,,\n"
        + "A3,Gorse,Plum,#5b2a4a,wool,tex 100,skein,450 m,no,,\n"
        + "A4,Bare,Grey,,wool,tex 100,skein,900 m,no,,\n"
        + "B1,TooHeavy,Gold,#c9971c,wool,tex 110.1,skein,800 m,no,,\n"
        + "B2,TooFine,Gold,#c9971c,wool,tex 89.9,skein,800 m,no,,\n"
        + "B3,Cotton,Gold,#c9971c,cotton,tex 100,skein,800 m,no,,\n"
        + "B4,Unknown,Gold,#c9971c,wool,,skein,800 m,no,,\n";
    List<StandIn> standIns = standIns(SCARVES, stock);
    assertThat(standIns).extracting(standIn -> standIn.yarn() + " " + standIn.covers()).containsExactly("Finer White true", "Heavier Gold true", "Gorse Plum false", "Bare Grey true");
    assertThat(standIns.get(1).difference().orElseThrow().deltaE()).isZero();
    assertThat(standIns.getLast().difference()).isEmpty();
    // The same colour in a grist of 10 % more changes least; black and white lie 100 apart.
    assertThat(words(SCARVES, stock)).filteredOn(words -> words.startsWith("Take ")).containsExactly(
        "Take Heavier Gold in the place of Gorse Gold: 600 m free, 10 % heavier, colour difference 0.0.",
        "Take Finer White in the place of Gorse Gold: 700 m free, 10 % lighter, colour difference 100.0.",
        "Take Bare Grey in the place of Gorse Gold: 900 m free, of the same grist, colour difference unknown.");
  }

  /** By its yarn number it would be 20 % heavier than Gorse, and as it was weighed it is 5 %. */
  @Test
  void aGristThatWasWeighedRulesOverTheYarnNumberWhereAStandInIsSought() throws BadInput {
    String rows = PLENTY + "G1,Gorse,Gold,#000000,wool,tex 100,skein,100 m,no,,\n" + "A1,Heavier,Gold,#000000,merino,tex 120,skein,600 m,no,,\n";
    GristSample sample = new GristSample(Length.metres(10), new Mass(1050), new Mass(1), Length.parse("1 cm"));
    List<Skein> stock = StockFile.read("stock.csv", HEADER + rows);
    List<Skein> weighed = stock.stream().map(skein -> skein.code().equals("A1") ? skein.withSample(Optional.of(sample)) : skein).toList();
    Plan plan = PlanFile.read("plan", SCARVES);
    assertThat(Fit.of(plan, stock, Judgement.DEFAULT).standIns()).isEmpty();
    assertThat(Fit.of(plan, weighed, Judgement.DEFAULT).standIns()).singleElement().satisfies(standIn -> assertThat(standIn.heavier()).contains(BigFraction.of(1, 20)));
  }

  @Test
  void aYarnThatThePlanUsesElsewhereStandsInWithWhatIsLeftOfIt() throws BadInput {
    // Gold lacks: 75 ends of 10 m. 1009 m of Plum serve their own 25 ends and 750 m more; of 999 m an end is left over.
    String gold = PLENTY + "G1,Gorse,Gold,#c9971c,wool,tex 100,skein,100 m,yes,,\n";
    StandIn enough = standIns(GIVEN, gold + "G2,Gorse,Plum,#5b2a4a,wool,tex 100,skein,1009 m,no,,\n").getFirst();
    assertThat(enough.covers()).isTrue();
    assertThat(enough.free().toString()).isEqualTo("759 m");
    assertThat(standIns(GIVEN, gold + "G2,Gorse,Plum,#5b2a4a,wool,tex 100,skein,999 m,no,,\n").getFirst().covers()).isFalse();
  }

  @Test
  void aWarpLengthThatIsGivenIsNotDroppedForShorterPieces() throws BadInput {
    // 100 ends of 6 m of which 598 m are there: pieces of 99 cm would not need less while the warp is 6 m.
    String given = SCARVES.replace("\"order\"", "\"length\": \"6 m\", \"order\"");
    String stock = PLENTY + "G1,Gorse,Gold,,wool,tex 100,skein,598 m,yes,,\n";
    assertThat(words(given, stock)).containsExactly(
        "Wind a warp of 5.98 m instead of 6 m.",
        "Open the sett to 9.5/cm from 10/cm: 95 ends to the same width.",
        "Weave 9.5 cm wide instead of 10 cm: 95 ends, 9.5 cm in the reed, instead of 100, 10 cm.",
        "Buy 1 more of Gorse Gold, as large as the last: the price is not known.");
    assertThat(fit(given, stock).longestPiece()).isEmpty();
  }

  @Test
  void whatDoesNotFallShortAsAskedIsNoRemedy() {
    assertThat(Largest.under(5, 1, steps -> true)).isEmpty();
    assertThat(Largest.under(5, 1, steps -> steps < 4)).hasValue(3);
  }

  @Test
  void aWarpOfUnitsIsCutByWholeUnitsAndSaysThatItsSectionsAreLost() throws BadInput {
    // 25 units of 4 ends are 100 of 10 m; 950 m hold 95, which are 23 units of 4 and 3 ends more.
    String units = GIVEN.replace("\"ends\": 100,", "\"endsPerUnit\": 4, \"sections\": [{\"units\": 5}, {\"repeats\": 2, \"units\": 10}],")
        .replace("\"ends\": 75", "\"share\": 1").replace(", {\"yarn\": \"Gorse\", \"colour\": \"Plum\", \"ends\": 25}", "");
    String stock = PLENTY + "G1,Gorse,Gold,,wool,tex 100,skein,950 m,yes,,\n";
    assertThat(words(units, stock)).containsExactly(
        "Wind a warp of 9.5 m instead of 10 m.",
        "Weave 9.2 cm wide instead of 10 cm: 92 ends, 9.2 cm in the reed, instead of 100, 10 cm; the sections become a plain count of ends.",
        "Open the sett to 9/cm from 10/cm: 92 ends to the same width; the sections become a plain count of ends.",
        "Buy 1 more of Gorse Gold, as large as the last: the price is not known.");
    assertThat(fit(units, stock).mostEnds()).isEqualTo(92);
    assertThat(fit(units, stock).closestSett()).hasToString("Optional[9/cm]");
  }

  @Test
  void aWrittenOrderHasItsMostEndsInWholeRepeatsAndNoOtherSett() throws BadInput {
    // 10 repeats of 8 and 2 ends, 10 m each: 650 m of Gold hold 8 of them, 80 ends.
    String written = GIVEN.replace("\"order\"", "\"succession\": \"10 x (8 G, 2 P)\", \"order\"").replace("\"ends\": 75", "\"mark\": \"G\"").replace("\"ends\": 25", "\"mark\": \"P\"");
    String stock = PLENTY + "G1,Gorse,Gold,,wool,tex 100,skein,650 m,yes,,\nG2,Gorse,Plum,,wool,tex 100,skein,300 m,yes,,\n";
    assertThat(fit(written, stock).mostEnds()).isEqualTo(80);
    assertThat(fit(written, stock).closestSett()).isEmpty();
    String once = written.replace("10 x (8 G, 2 P)", "80 G, 20 P");
    assertThat(fit(once, stock).mostEnds()).isZero();
    assertThat(fit(once, stock.replace("650", "800")).mostEnds()).isEqualTo(100);
  }

  private static Fit fit(String plan, String rows) throws BadInput {
    return Plainly.fit(PlanFile.read("plan", plan), StockFile.read("stock.csv", HEADER + rows));
  }

  private static List<StandIn> standIns(String plan, String rows) throws BadInput {
    return Plainly.fit(PlanFile.read("plan", plan), StockFile.read("stock.csv", HEADER + rows)).standIns();
  }

  private static List<String> words(String text, String rows) throws BadInput {
    Plan plan = PlanFile.read("plan", text);
    List<Skein> stock = StockFile.read("stock.csv", HEADER + rows);
    return Remedies.of(Plainly.check(plan, stock), stock, Judgement.DEFAULT).stream().map(Remedy::words).toList();
  }
}
