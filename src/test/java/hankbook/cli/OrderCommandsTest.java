package hankbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OrderCommandsTest {
  private static final Window NO_WINDOW = (ledger, author) -> Optional.of("There is no window in a test.");
  private static final String UNITS =
      """
      { "format": "hankbook-plan/1", "name": "Runner",
        "warp": {"sett": "10/cm", "length": "4 m", "selvedgeEnds": 8, "endsPerUnit": 4, "extendLeft": 12, "extendRight": 9,
                 "sections": [{"name": "star", "repeats": 3, "units": 36}],
                 "order": [{"yarn": "Holm 40/2", "colour": "Bleached", "share": 1}]} }
      """;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @TempDir private Path folder;

  @Test
  void anOrderIsReadBackInWordsAndCounts() {
    assertThat(run("order", "12 x (6 Chalk, 2 Woad), 6 Chalk")).isZero();
    assertThat(out.toString().strip()).isEqualTo("12 times: 6 Chalk, 2 Woad; then 6 Chalk: 102 ends, 78 Chalk and 24 Woad.");
  }

  @Test
  void anOrderOfPicksIsReadBackAsOne() {
    run("order", "there and back (20 Chalk, 2 Gold)", "--picks");
    assertThat(out.toString().strip()).isEqualTo("there and back, turning on 2 Gold: 20 Chalk, 2 Gold: 42 picks, 40 Chalk and 2 Gold.");
  }

  @Test
  void anOrderIsOneJsonObject() throws IOException {
    run("order", "mirror (6 Chalk, 2 Woad)", "--json");
    JsonNode order = new ObjectMapper().readTree(out.toString());
    assertThat(order.get("text").asText()).isEqualTo("mirror (6 Chalk, 2 Woad)");
    assertThat(order.get("threads").asLong()).isEqualTo(16);
    assertThat(order.at("/marks/1/mark").asText()).isEqualTo("Woad");
    assertThat(order.at("/marks/1/count").asLong()).isEqualTo(4);
  }

  @Test
  void anOrderThatCannotBeReadIsBadInput() {
    assertThat(run("order", "12 x (6 Chalk, 2 Woad")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString().strip()).isEqualTo("found nothing, wanted a comma or a closing bracket at character 22 of the order");
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void sectionsAreAddedUpBothWays() throws IOException {
    assertThat(run("sections", file(UNITS))).isZero();
    assertThat(out.toString().lines())
        .containsExactly(
            "Section       repeats  units  ends  from end  to end    width  reaches",
            "to the left         1     12    48         1      48   4.8 cm   4.8 cm",
            "star                3     36   432        49     480  43.2 cm    48 cm",
            "to the right        1      9    36       481     516   3.6 cm  51.6 cm",
            "(12 + 3 x 36 + 9) x 4 + 8 = 524 ends: section by section 516; 129 units of 4 ends 516, and 8 selvedge ends.");
  }

  @Test
  void whatAChangeOfOneSectionDoesIsShownAtOnce() throws IOException {
    run("sections", file(UNITS), "--section", "1", "--repeats", "2");
    assertThat(out.toString()).contains("Ends -144, in the reed -14.4 cm, finished -14.4 cm.", "Holm 40/2 Bleached -576 m.", "Nothing was changed in the plan.");
  }

  @Test
  void aChangeIsOneJsonObject() throws IOException {
    run("sections", file(UNITS), "--section", "1", "--units", "37", "--json");
    JsonNode sums = new ObjectMapper().readTree(out.toString());
    assertThat(sums.at("/change/ends").asInt()).isEqualTo(12);
    assertThat(sums.at("/change/yarns/0/moreM").asDouble()).isEqualTo(48);
    assertThat(sums.at("/endsBySection").asInt()).isEqualTo(528);
    assertThat(sums.at("/endsByUnits").asInt()).isEqualTo(528);
  }

  @Test
  void whatThePlanDoesNotHaveIsRefused() throws IOException {
    String units = file(UNITS);
    assertThat(run("sections", units, "--section", "2", "--repeats", "2")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(run("sections", units, "--section", "1")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(run("sections", "imports/quay-towels.json")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString().lines())
        .containsExactly(
            units + ": found 'section 2', wanted a section from 1 to 1",
            "found --section alone, wanted --section with --repeats, --units or both",
            "imports/quay-towels.json: found no sections in the warp, wanted a plan whose ends are counted in units");
  }

  @Test
  void aCheckReadsTheOrderBack() throws IOException {
    run("check", "imports/striped-towels.json", "--stock", "imports/stock.csv");
    assertThat(out.toString())
        .contains("Order of ends: 69 times: 6 Chalk, 2 Woad; then 4 Chalk: 556 ends, 418 Chalk and 138 Woad.")
        .contains("Order of picks: there and back, turning on 40 Chalk: 20 Chalk, 4 Woad, 40 Chalk: 88 picks, 80 Chalk and 8 Woad.")
        .contains("3303 picks are 37 repeats and the first 47 picks of the next.");
  }

  @Test
  void theAnswerFileHasTheOrderOnlyWhereThePlanWritesOne() throws IOException {
    run("check", "imports/striped-towels.json", "--stock", "imports/stock.csv", "--json");
    JsonNode answer = new ObjectMapper().readTree(out.toString());
    assertThat(answer.at("/warp/order/marks/0/ends").asLong()).isEqualTo(418);
    assertThat(answer.at("/weft/order/marks/1/picks").asLong()).isEqualTo(300);
    out.getBuffer().setLength(0);
    run("check", "imports/quay-towels.json", "--stock", "imports/stock.csv", "--json");
    JsonNode plain = new ObjectMapper().readTree(out.toString());
    assertThat(plain.at("/warp").has("order")).isFalse();
    assertThat(plain.has("weft")).isFalse();
  }

  /** 55.5 cm at 10/cm are 555 ends, rounded up to 600: 60 cm, 4.5 cm or 8.1 % more. */
  @Test
  void endsThatStandWiderThanPlannedAreWarnedOf() throws IOException {
    String plan = Files.readString(Path.of("imports/quay-towels.json"));
    run("check", file(plan.replace("\"endsMultiple\": 4", "\"endsMultiple\": 100")), "--stock", "imports/stock.csv");
    assertThat(out.toString())
        .contains(
            "Skerry 16/2 Chalk: 600 ends at 10/cm take 60 cm in the reed, 4.5 cm more than planned: the weft would be 8.1 % more."
                + " Give the ends outright to reckon on it.");
    out.getBuffer().setLength(0);
    run("check", "imports/quay-towels.json", "--stock", "imports/stock.csv");
    assertThat(out.toString()).doesNotContain("more than planned");
  }

  private String file(String text) throws IOException {
    return Files.writeString(folder.resolve("plan.json"), text).toString();
  }

  private int run(String... args) {
    return CommandLineProgram.run(args, new PrintWriter(out), new PrintWriter(err), NO_WINDOW);
  }
}
