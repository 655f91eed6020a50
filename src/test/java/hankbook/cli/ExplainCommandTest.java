package hankbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ExplainCommandTest {
  private static final Window NO_WINDOW = (ledger, author) -> Optional.of("There is no window in a test.");

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  /** By hand: 48 cm / (0.92 x 0.94) = 55.504 cm, times 10 to the centimetre 555.04, up to a multiple of 4. */
  @Test
  void theEndsAreToldFromTheWidthOfTheCloth() {
    assertThat(run("explain", "imports/quay-towels.json", "--stock", "imports/stock.csv", "ends")).isEqualTo(ExitCode.DONE);
    assertThat(out.toString().lines()).contains(
        "ends: 556 (Those across the width, and the selvedges.)",
        "      ends across the width: 555.0416 (The width in the reed, times the sett.)",
        "        × sett: 10/cm",
        "            − shrinkage in width: 8 %");
  }

  @Test
  void whatComesAgainIsToldOnce() {
    run("explain", "imports/quay-towels.json", "--stock", "imports/stock.csv", "warp");
    assertThat(out.toString().lines().map(String::strip)).contains("− finished cloth: 2.8 m (as above)");
    assertThat(out.toString().lines().filter(line -> line.contains("shrinkage in length: 8 %"))).hasSize(1);
  }

  @Test
  void asJsonTheNeedIsThatOfTheCheckAndItsPartsSumToIt() throws IOException {
    run("check", "imports/quay-towels.json", "--stock", "imports/stock.csv", "--json");
    JsonNode check = new ObjectMapper().readTree(out.toString());
    out.getBuffer().setLength(0);
    assertThat(run("explain", "imports/quay-towels.json", "--stock", "imports/stock.csv", "need", "--json")).isEqualTo(ExitCode.DONE);
    JsonNode chalk = new ObjectMapper().readTree(out.toString()).at("/figures/0");
    assertThat(chalk.get("figure").asText()).isEqualTo("need");
    assertThat(chalk.get("value").decimalValue()).isEqualByComparingTo(check.at("/cover/0/needM").decimalValue());
    assertThat(chalk.get("combined").asText()).isEqualTo("sum");
    BigDecimal sum = BigDecimal.ZERO;
    for (JsonNode part : chalk.get("parts")) {
      sum = sum.add(part.get("value").decimalValue());
    }
    assertThat(sum).isEqualByComparingTo(chalk.get("value").decimalValue());
  }

  @Test
  void everyFigureIsToldAndAShortPlanSaysSoToTheShell() {
    assertThat(run("explain", "imports/gorse-shawl.json", "--stock", "imports/stock.csv")).isEqualTo(ExitCode.SHORT);
    for (String figure : List.of("width in the reed: ", "ends: ", "warp length: ", "need of Gorse Gold: ", "free of Gorse Gold: ", "margin of Gorse Gold: -", "risk of running short of Gorse Gold: ")) {
      assertThat(out.toString().lines()).anyMatch(line -> line.startsWith(figure));
    }
  }

  @Test
  void aFigureThatThereIsNotIsRefused() {
    assertThat(run("explain", "imports/quay-towels.json", "--stock", "imports/stock.csv", "weight")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString().strip()).isEqualTo("FIGURE: found 'weight', wanted one of width, ends, warp, need, free, margin, uncertainty, risk, skeins");
  }

  private int run(String... arguments) {
    return CommandLineProgram.run(arguments, new PrintWriter(out), new PrintWriter(err), NO_WINDOW);
  }
}
