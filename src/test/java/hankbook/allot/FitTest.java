package hankbook.allot;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.exchange.BadInput;
import hankbook.exchange.PlanFile;
import hankbook.exchange.StockFile;
import hankbook.measure.Length;
import hankbook.plan.Plan;
import hankbook.plan.PlanVariants;
import hankbook.plan.Yardage;
import hankbook.yarn.Skein;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FitTest {
  private final List<Skein> stock;

  FitTest() throws BadInput, IOException {
    stock = StockFile.read("stock.csv", Files.readString(Path.of("imports/stock.csv")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"quay-towels", "ash-blanket", "gorse-shawl", "linen-runner"})
  void theAnswerPassesAndOneStepMoreFails(String name) throws BadInput, IOException {
    Plan plan = plan(name);
    Fit fit = Plainly.fit(plan, stock);
    PlanCheck check = Plainly.check(plan, stock);
    assertThat(PlanCheck.isShort(plan, stock, Judgement.DEFAULT)).isEqualTo(check.isShort());
    OneStepMore.verify(plan, fit, stock);
  }

  @Test
  void aLongerWarpDoesNotWidenThePlansReed() throws BadInput, IOException {
    Plan plan = plan("gorse-shawl");
    assertThat(Yardage.of(PlanVariants.withLength(plan, Length.metres(3))).width()).isEqualTo(Yardage.of(plan).width());
  }

  @Test
  void whereTheWeftIsShortByItselfNoWarpIsShortEnoughAndThatOfTheWarpAloneIsTold() throws BadInput, IOException {
    Fit fit = Plainly.fit(plan("gorse-shawl"), stock);
    assertThat(fit.longestWarp()).isEqualTo(Length.ZERO);
    // 3 skeins of 500 m; 556 ends (60 cm / 0.92 / 0.94 = 69.38 cm of reed, 8 to the cm): 185, 185 and 186 ends of 2.68 m are 498.5 m.
    assertThat(fit.warpAlone()).contains(Length.parse("2.68 m"));
  }

  @Test
  void whatMustBeBoughtIsWholePutUpsAndNoMore() throws BadInput, IOException {
    assertThat(Plainly.fit(plan("gorse-shawl"), stock).buy()).extracting(purchase -> purchase.yarn() + " " + purchase.putUps().orElse(-1))
        .containsExactly("Gorse Gold 4", "Selkie 20/2 Plum 1");
    assertThat(Plainly.fit(plan("quay-towels"), stock).buy()).isEmpty();
  }

  @Test
  void whatMustBeBoughtCostsWhatTheNewestOfTheSameSizeCost() throws BadInput, IOException {
    assertThat(Plainly.fit(plan("gorse-shawl"), stock).buy()).extracting(purchase -> purchase.each().orElseThrow() + ", " + purchase.total().orElseThrow())
        .containsExactly("EUR 19.00, EUR 76.00", "EUR 24.00, EUR 24.00");
    String text = Files.readString(Path.of("imports/stock.csv")).replace("19.00 EUR", "");
    Purchase unknown = Plainly.fit(plan("gorse-shawl"), StockFile.read("stock.csv", text)).buy().getFirst();
    assertThat(unknown.putUps()).hasValue(4);
    assertThat(unknown.each()).isEmpty();
    assertThat(unknown.total()).isEmpty();
  }

  @Test
  void aSkeinMarkedLikeAPurchaseIsNotTakenForOne() throws BadInput, IOException {
    String text = Files.readString(Path.of("imports/stock.csv"));
    for (String code : List.of("bought 1", "+1", "+++++1", "+".repeat(199))) {
      List<Skein> marked = StockFile.read("stock.csv", text.replace("S056,", code + ","));
      assertThat(Plainly.fit(plan("gorse-shawl"), marked).buy()).isEqualTo(Plainly.fit(plan("gorse-shawl"), stock).buy());
    }
  }

  @Test
  void threeSkeinsOf950MetresHold690EndsOfTheLengthWorkedByHand() throws BadInput, IOException {
    // Each skein gives 230 ends: 950 / 230 = 4.13 m; at 4.14 m it gives 229.
    assertThat(Plainly.fit(plan("ash-blanket"), stock).longestWarp()).isEqualTo(Length.parse("4.13 m"));
  }

  @Test
  void aPutUpIsAsLargeAsItWasSoldWhateverIsReservedOfIt() throws BadInput, IOException {
    List<Skein> reserved = stock.stream().map(skein -> skein.yarn().yarn().equals("Gorse") ? skein.withLeft(Length.metres(100), false) : skein).toList();
    // 556 ends of 5.42 m; a put-up of 500 m gives 92, what is left of a skein 18: 54 ends, and 502 more of 6 put-ups.
    assertThat(Plainly.fit(plan("gorse-shawl"), reserved).buy().getFirst().putUps()).hasValue(6);
  }

  private static Plan plan(String name) throws BadInput, IOException {
    return PlanFile.read(name, Files.readString(Path.of("imports/" + name + ".json")));
  }
}
