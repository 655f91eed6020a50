package hankbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hankbook.store.LedgerAddress;
import hankbook.studio.Plans;
import hankbook.studio.Receive;
import hankbook.studio.Studio;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a plan costs, by files and in a ledger. */
class CostCommandTest {
  private static final Window NO_WINDOW = (ledger, author) -> Optional.of("There is no window in a test.");
  private static final String QUAY = "imports/quay-towels.json";
  private static final String GORSE = "imports/gorse-shawl.json";

  @TempDir private static Path filled;

  @TempDir private Path folder;

  private String out = "";
  private String err = "";

  @BeforeAll
  static void bringIn() throws Exception {
    try (Studio studio = Studio.open(new LedgerAddress.InFile(filled.resolve("book")), "Ida")) {
      new Receive(studio).file("imports/stock.csv", Files.readString(Path.of("imports/stock.csv")));
      new Plans(studio).add(QUAY, Files.readString(Path.of(QUAY)), false);
      new Plans(studio).add(GORSE, Files.readString(Path.of(GORSE)), false);
    }
  }

  @BeforeEach
  void copy() throws IOException {
    Files.copy(filled.resolve("book.mv.db"), folder.resolve("book.mv.db"));
  }

  @Test
  void aPlanIsCostedByItsYarnAndWhatIsNotKnownIsNamed() {
    assertThat(files(QUAY)).isZero();
    // 1600 m of S001 and S002 each for 19.80, 803.1177 of the 1600 m of S003 for 9.94.
    assertThat(out).contains("Total                    49.54\n").contains("  S005, 518.37 m of Skerry 16/2 Woad: what was paid for it is not known.")
        .contains("  Work of 17 h 1 min 32 s: no hourly rate is set.").contains("Each towel of 4: 12.38 EUR, 2 of them 12.39 EUR.")
        .contains("  796.88 m of Skerry 16/2 Chalk on S003, worth 9.86 EUR").doesNotContain("S001");
    files(QUAY, "--skeins");
    assertThat(out).contains("        S001              12.44  1005.58 m");
    assertThat(err).isEmpty();
  }

  @Test
  void aShortPlanIsCostedWithWhatIsToBuyAndSaysSoToTheShell() {
    assertThat(files(GORSE, "--price", "Gorse, Gold=21 EUR")).isEqualTo(ExitCode.SHORT);
    assertThat(out).contains("To be spent now, on whole put-ups: 108.00 EUR\n  4 of 500 m of Gorse Gold at 21.00 EUR\n  1 of 758.95 m of Selkie 20/2 Plum at 24.00 EUR");
  }

  @Test
  void ratesOverheadsAndAPriceAreNamedOnTheCommandLine() throws IOException {
    files(QUAY, "--rate", "18 EUR", "--time", "weaving=2 s", "--overhead", "10 %", "--plan-overhead", "5 EUR", "--margin", "40 %", "--json");
    JsonNode cost = json();
    // 3303 picks x 2 s at half a cent the second.
    assertThat(line(cost.get("cost"), "work", "weaving").get("amount").asText()).isEqualTo("33.03 EUR");
    assertThat(line(cost.get("cost"), "work", "weaving").get("basis").asText()).contains("2 s each (as named)");
    assertThat(line(cost.get("cost"), "overheads", "perPlan").get("amount").asText()).isEqualTo("5.00 EUR");
    assertThat(leaves(cost.get("cost"))).isEqualByComparingTo(euros(cost.at("/cost/amount")));
    assertThat(cost.at("/price/margin").asText()).isEqualTo("40 %");
    assertThat(euros(cost.at("/price/amount")).multiply(new BigDecimal("0.6"))).isCloseTo(euros(cost.at("/cost/amount")), Offset.offset(new BigDecimal("0.005")));
    assertThat(cost.at("/notCounted/0/what").asText()).isEqualTo("S005, 518.37 m of Skerry 16/2 Woad");
    assertThat(cost.at("/work/4/eachS").decimalValue()).isEqualByComparingTo("2");
    assertThat(cost.at("/perPiece/0/count").asInt()).isEqualTo(4);
    files(QUAY, "--rate", "18 EUR", "--markup", "50 %");
    assertThat(out).contains("Price with a markup of 50 % on the cost, to the nearest smallest coin:").contains("Whether tax comes on top of it or is in it follows local rules");
  }

  @Test
  void aPriceNamedWithItsLengthAlsoCountsForASkeinOfUnknownCost() {
    files(QUAY, "--price", "Skerry 16/2, Woad=21.40 EUR / 1600 m");
    // S005 holds 731.5 m, by the gram; 518.37 m of it at 1.3375 cents the metre are 6.93.
    assertThat(out).doesNotContain("what was paid for it is not known").contains("At the price you named, since it is not known what was paid: S005.");
    assertThat(out).contains("Total                    56.47");
  }

  @Test
  void anotherPlanOrOtherPricesAreLaidBesideIt() throws IOException {
    files(QUAY, "--rate", "18 EUR", "--what-if", "imports/linen-runner.json");
    assertThat(out).containsPattern("What if: Linen runner +now +then +difference").containsPattern("To be spent now +0.00 +7.20 +\\+7.20");
    Path other = Files.writeString(
        folder.resolve("if.json"),
        """
        { "format": "hankbook-what-if/1", "rate": "20 EUR", "times": {"weaving": "3 s"}, "overhead": "5 %", "markup": "10 %",
          "prices": [{"yarn": "Skerry 16/2", "colour": "Woad", "each": "21.40 EUR", "holds": "1600 m"}] }
        """);
    files(QUAY, "--rate", "18 EUR", "--what-if", other.toString(), "--json");
    JsonNode json = json();
    JsonNode beside = json.get("beside");
    assertThat(euros(beside.get("then")).subtract(euros(beside.get("now")))).isEqualByComparingTo(euros(beside.get("difference")));
    assertThat(euros(json.at("/whatIf/cost/amount"))).isEqualByComparingTo(euros(beside.get("then")));
    assertThat(beside.at("/parts/2/line").asText()).isEqualTo("overheads");
    assertThat(beside.at("/parts/2/now").isNull()).isTrue();
    assertThat(json.at("/whatIf/price/markup").asText()).isEqualTo("10 %");
    assertThat(json.has("price")).isFalse();
  }

  @Test
  void whatIsSetInTheLedgerHoldsAndWhatIsDrawnStandsBesideTheCost() throws IOException {
    run("settings", "hourlyRate", "18 EUR");
    run("settings", "weavingTime", "2 s");
    run("cost", "Quay towels", "--json");
    JsonNode before = json();
    assertThat(line(before.get("cost"), "work", "weaving").get("amount").asText()).isEqualTo("33.03 EUR");
    assertThat(before.has("soFar")).isFalse();
    run("reserve", "Quay towels");
    run("cost", "Quay towels", "--json");
    assertThat(json()).as("what is set aside is not spent, and costs what it did").isEqualTo(before);
    run("draw", "Quay towels");
    run("cost", "Quay towels", "--json");
    assertThat(json().get("cost")).isEqualTo(before.get("cost"));
    assertThat(json().at("/soFar/total").asText()).isEqualTo("49.54 EUR");
    assertThat(json().at("/soFar/places/0/place").asText()).isEqualTo("LOOM");
    assertThat(json().at("/soFar/notCounted/0").asText()).isEqualTo("S005");
    run("cost", "Quay towels");
    assertThat(out).contains("What its yarn has cost so far: 49.54 EUR; the yarn above: 49.54 EUR\n  on the loom: 4003.12 m, 49.54 EUR\n  Not counted, since what was paid is not known: S005");
  }

  @Test
  void nothingThatCostsOrWritesAnythingIsDoneByAsking() throws IOException {
    run("journal", "--most", "0");
    String before = out;
    run("cost", "Gorse shawl", "--rate", "18 EUR");
    run("journal", "--most", "0");
    assertThat(out).isEqualTo(before);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "--price | Woad=5 EUR | --price: found 'Woad=5 EUR', wanted a yarn, its colour and a price such as 'Skerry 16/2, Woad=24.50 EUR' or '...=24.50 EUR / 1600 m'",
    "--price | Skerry, Woad=five | --price: found 'five', wanted an amount and its currency such as 24.50 EUR",
    "--price | Skerry, Woad=5 EUR / 0 m | --price: found '0 m', wanted a length over zero",
    "--price | , Woad=5 EUR | '--price: found nothing, wanted the yarn''s name'",
    "--rate | 18 | --rate: found '18', wanted an amount and its currency such as 24.50 EUR",
    "--time | spinning=2 s | '--time: found ''spinning'', wanted one of winding, beaming, threading, sleying, weaving, finishing, and = and a time'",
    "--time | weaving | --time: found nothing, wanted a time such as 45 s, 2 min or 1 h 30 min",
    "--margin | 100 % | --margin: found '100 %', wanted a margin of the price under 100 %",
    "--markup | 8 % of yarn | --markup: found '8 % of yarn', wanted a percentage such as 40 %",
    "--overhead | ten | --overhead: found 'ten', wanted a percentage such as 8 %, 8 % of cloth or 8 % of yarn",
    "--what-if | nowhere.json | nowhere.json: found no such file, wanted a file to read"
  })
  void whatCannotBeReadIsRefusedInOneLine(String option, String value, String message) {
    assertThat(files(QUAY, option, value)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(out).isEmpty();
    assertThat(err.strip()).isEqualTo(message);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "{\"format\": \"hankbook-what-if/1\", \"rates\": \"5 EUR\"} | rates: found 'rates', wanted one of format, margin, markup, overhead, plan, planOverhead, prices, rate, times",
    "{\"format\": \"hankbook-what-if/1\", \"times\": {\"weaving\": \"5\"}} | times.weaving: found '5', wanted a time such as 45 s, 2 min or 1 h 30 min",
    "{\"format\": \"hankbook-what-if/1\", \"margin\": \"5 %\", \"markup\": \"5 %\"} | markup: found 'a margin and a markup', wanted one of them",
    "{\"format\": \"hankbook-what-if/1\", \"prices\": [{\"yarn\": \"Tarn\", \"colour\": \"Milk\"}]} | prices[1].each: found nothing, wanted the price of one such as 24.50 EUR",
    "{\"format\": \"other\"} | format: found 'other', wanted hankbook-plan/1"
  })
  void aFaultInTheOtherFileIsNamedWithItsPlace(String text, String message) throws IOException {
    Path other = Files.writeString(folder.resolve("if.json"), text);
    assertThat(files(QUAY, "--what-if", other.toString())).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.strip()).isEqualTo(other + ", " + message);
  }

  @Test
  void aMarginBesideAMarkupAYarnTwiceAndAPlanThatIsNotThereAreRefused() {
    assertThat(files(QUAY, "--margin", "5 %", "--markup", "5 %")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("--markup: found it beside --margin, wanted one of them\n");
    assertThat(files(QUAY, "--price", "A, B=1 EUR", "--price", "A, B=2 EUR")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("--price: found A B twice, wanted each yarn once\n");
    assertThat(files(GORSE, "--price", "Gorse, Gld=1 EUR")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo(GORSE + ": found a price of Gorse, Gld, wanted one of a yarn of the plan: Gorse, Gold; Selkie 20/2, Plum\n");
    assertThat(run("cost", "Kay towels")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("Kay towels: found no plan of this name in the ledger, wanted one that plan list shows\n");
  }

  private static JsonNode line(JsonNode from, String... keys) {
    JsonNode line = from;
    for (String key : keys) {
      for (JsonNode part : line.path("parts")) {
        line = part.get("line").asText().equals(key) ? part : line;
      }
    }
    return line;
  }

  private static BigDecimal leaves(JsonNode line) {
    if (!line.has("parts")) {
      return euros(line.get("amount"));
    }
    BigDecimal sum = BigDecimal.ZERO;
    for (JsonNode part : line.get("parts")) {
      sum = sum.add(leaves(part));
    }
    return sum;
  }

  private static BigDecimal euros(JsonNode amount) {
    assertThat(amount.asText()).endsWith(" EUR");
    return new BigDecimal(amount.asText().replace(" EUR", ""));
  }

  private JsonNode json() throws IOException {
    return new ObjectMapper().readTree(out);
  }

  private int files(String plan, String... more) {
    List<String> args = new ArrayList<>(List.of("cost", plan, "--stock", "imports/stock.csv"));
    args.addAll(List.of(more));
    return runExactly(args);
  }

  private int run(String... args) {
    List<String> all = new ArrayList<>(List.of(args));
    all.addAll(List.of("--ledger", folder.resolve("book").toString(), "--author", "Ida"));
    return runExactly(all);
  }

  private int runExactly(List<String> args) {
    StringWriter said = new StringWriter();
    StringWriter wrong = new StringWriter();
    int code = CommandLineProgram.run(args.toArray(String[]::new), new PrintWriter(said), new PrintWriter(wrong), NO_WINDOW);
    out = said.toString();
    err = wrong.toString();
    return code;
  }
}
