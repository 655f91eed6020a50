package hankbook.allot;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.exchange.BadInput;
import hankbook.exchange.PlanFile;
import hankbook.exchange.StockFile;
import hankbook.measure.Length;
import hankbook.plan.Plan;
import hankbook.plan.PlanVariants;
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
    Fit fit = Fit.of(plan, stock);
    PlanCheck check = PlanCheck.of(plan, stock);
    int ends = check.yardage().width().ends();
    Length warp = check.yardage().warp().total();
    Length step = Length.parse("1 cm");
    int multiple = plan.warp().endsMultiple();
    assertThat(PlanCheck.isShort(plan, stock, Judgement.DEFAULT)).isEqualTo(check.isShort());
    assertThat(isShort(PlanVariants.withWarp(plan, ends, fit.longestWarp().plus(step)))).isTrue();
    assertThat(isShort(PlanVariants.withWarp(plan, fit.mostEnds() + multiple, warp))).isTrue();
    if (fit.longestWarp().isPositive()) {
      assertThat(isShort(PlanVariants.withWarp(plan, ends, fit.longestWarp()))).isFalse();
    }
    if (fit.mostEnds() > 0) {
      assertThat(isShort(PlanVariants.withWarp(plan, fit.mostEnds(), warp))).isFalse();
    }
    fit.mostPieces()
        .ifPresent(most -> assertThat(isShort(PlanVariants.withPieces(plan, plan.pieces().get(0), Math.toIntExact(most + 1)))).isTrue());
  }

  @Test
  void whatMustBeBoughtIsWholePutUpsAndNoMore() throws BadInput, IOException {
    assertThat(Fit.of(plan("gorse-shawl"), stock).buy()).extracting(purchase -> purchase.yarn() + " " + purchase.putUps().orElse(-1))
        .containsExactly("Gorse Gold 4", "Selkie 20/2 Plum 1");
    assertThat(Fit.of(plan("quay-towels"), stock).buy()).isEmpty();
  }

  @Test
  void aSkeinMarkedLikeAPurchaseIsNotTakenForOne() throws BadInput, IOException {
    String text = Files.readString(Path.of("imports/stock.csv"));
    for (String code : List.of("bought 1", "+1", "+++++1")) {
      List<Skein> marked = StockFile.read("stock.csv", text.replace("S056,", code + ","));
      assertThat(Fit.of(plan("gorse-shawl"), marked).buy()).isEqualTo(Fit.of(plan("gorse-shawl"), stock).buy());
    }
  }

  @Test
  void threeSkeinsOf950MetresHold690EndsOfTheLengthWorkedByHand() throws BadInput, IOException {
    // Each skein gives 230 ends: 950 / 230 = 4.13 m; at 4.14 m it gives 229.
    assertThat(Fit.of(plan("ash-blanket"), stock).longestWarp()).isEqualTo(Length.parse("4.13 m"));
  }

  private boolean isShort(Plan plan) {
    return PlanCheck.of(plan, stock).isShort();
  }

  private static Plan plan(String name) throws BadInput, IOException {
    return PlanFile.read(name, Files.readString(Path.of("imports/" + name + ".json")));
  }
}
