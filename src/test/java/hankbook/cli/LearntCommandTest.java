package hankbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hankbook.exchange.ActualsFile;
import hankbook.gear.Loom;
import hankbook.measure.Length;
import hankbook.store.LedgerAddress;
import hankbook.studio.Draw;
import hankbook.studio.Finish;
import hankbook.studio.Looms;
import hankbook.studio.Plans;
import hankbook.studio.Receive;
import hankbook.studio.Reserve;
import hankbook.studio.Studio;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Scarves of 100 ends finished on one loom, and what that teaches. */
class LearntCommandTest {
  private static final Window NO_WINDOW = (ledger, author) -> Optional.of("There is no window in a test.");
  private static final String STOCK = "code,yarn,colour,fibre,grist,length\nA,Fjara,Ash,wool,tex 100,1500 m\n";
  private static final String SCARF = """
      { "format": "hankbook-plan/1", "name": "%s", "loom": "Window loom", "pieces": [{"name": "scarf", "count": 1, "length": "2 m", "width": "20 cm"}],
        "warp": {"sett": "5/cm", "ends": 100, "weave": "plain", "order": [{"yarn": "Fjara", "colour": "Ash", "ends": 100}]}, "allowances": {"loomWaste": "1 m"} }
      """;

  /** Filled once, then copied for each test. */
  @TempDir private static Path filled;

  @TempDir private Path folder;
  private String out = "";
  private String err = "";

  /** 70, 70, 70 and 100 cm: mean 77.5, s = 15, and 3.1824 × 15 × √1.25 = 53.37 cm either way; 22.5/15 = 1.5 is over 1.48125. */
  @BeforeAll
  static void finishFour() throws Exception {
    try (Studio studio = Studio.open(new LedgerAddress.InFile(filled.resolve("book")), "Ida")) {
      new Receive(studio).file("stock.csv", STOCK);
      new Plans(studio).add("next.json", SCARF.formatted("Next"), false);
      new Looms(studio).add(new Loom("Window loom", Length.parse("120 cm"), Length.parse("70 cm"), 8), false);
      finish(studio, "First", 1200, "70 cm");
      finish(studio, "Second", 900, "70 cm");
      finish(studio, "Third", 600, "70 cm");
      finish(studio, "Fourth", 300, "100 cm");
    }
  }

  private static void finish(Studio studio, String plan, int left, String waste) throws Exception {
    String found = """
        { "format": "hankbook-actuals/1", "reason": "as it was", "leftovers": [{"skein": "A", "left": "%d m"}],
          "warp": {"length": "3 m", "loomWaste": "%s"}, "hours": {"threading": "20 min"} }
        """.formatted(left, waste);
    new Plans(studio).add("scarf.json", SCARF.formatted(plan), false);
    new Reserve(studio).plan(UUID.randomUUID(), plan, false);
    new Draw(studio).plan(UUID.randomUUID(), plan);
    new Finish(studio).plan(UUID.randomUUID(), plan, ActualsFile.read("found.json", found).actuals());
  }

  @BeforeEach
  void copy() throws IOException {
    Files.copy(filled.resolve("book.mv.db"), folder.resolve("book.mv.db"));
  }

  @Test
  void beforeAnythingIsFinishedItSaysHowToBegin() throws Exception {
    try (Studio studio = Studio.open(new LedgerAddress.InFile(folder.resolve("young")), "Ida")) {
      new Plans(studio).add("next.json", SCARF.formatted("Next"), false);
    }
    assertThat(runIn("young", "learnt")).isZero();
    assertThat(out).isEqualTo("Nothing is learnt yet; finish PLAN --actuals FILE.json says what was found after a cloth, and that teaches.\n");
    assertThat(runIn("young", "learnt", "--json")).isZero();
    assertThat(json().get("findings")).isEmpty();
    assertThat(runIn("young", "learnt", "--for", "Next")).isZero();
    assertThat(out).startsWith("Next: nothing is learnt yet that it could go by; ");
  }

  @Test
  void whatFinishedPlansTaughtIsATable() {
    assertThat(run("learnt", "--loom", "Window loom")).isZero();
    assertThat(out.lines().filter(line -> line.startsWith("loom waste"))).singleElement().asString()
        .containsSubsequence("4", "on Window loom", "77.5 cm", "15 cm", "24.1 to 130.9 cm");
    assertThat(out.lines().filter(line -> line.startsWith("threading time"))).singleElement().asString().containsSubsequence("4", "on Window loom", "12 s an end", "0 s", "always the same");
    assertThat(out).containsPattern("Odd beside the others, and counted all the same:\n  Fourth, \\d{4}-\\d\\d-\\d\\d: loom waste 100 cm\n$");
    assertThat(run("learnt", "--loom", "Table loom")).isZero();
    assertThat(out).startsWith("Nothing is learnt yet of plans on Table loom; ");
  }

  @Test
  void whatTheyProposeForAPlanStandsBesideWhatItSays() {
    assertThat(run("learnt", "--for", "Next")).isZero();
    assertThat(out).startsWith("Next, in plain of wool on Window loom\n").endsWith("Nothing was changed: what you like of it, put into the plan.\n");
    assertThat(out.lines().filter(line -> line.startsWith("loom waste"))).singleElement().asString()
        .containsSubsequence("100 cm", "77.5 cm", "from 4 plans on Window loom, 24.1 to 130.9 cm; odd among them: Fourth with 100 cm");
    assertThat(run("learnt", "--for", "Next", "--json")).isZero();
    JsonNode waste = waste(json().get("offers"));
    assertThat(waste.get("says").decimalValue()).isEqualByComparingTo("1");
    assertThat(waste.get("offered").decimalValue()).isEqualByComparingTo("0.775");
    assertThat(waste.get("plans").asInt()).isEqualTo(4);
    assertThat(waste.get("unit").asText()).isEqualTo("m");
    assertThat(waste.get("loom").asText()).isEqualTo("Window loom");
    assertThat(waste.get("weave").isNull()).isTrue();
    assertThat(waste.at("/odd/0/plan").asText()).isEqualTo("Fourth");
    assertThat(waste.get("text").asText()).isEqualTo("77.5 cm");
  }

  @Test
  void aLoomSaysWhatItWasFoundToWasteBesideWhatIsSaidOfIt() {
    run("loom", "list");
    assertThat(out).isEqualTo("loom          width  waste  shafts  learnt waste\nWindow loom  120 cm  70 cm       8  77.5 cm, 4 plans, 24.1 to 130.9 cm\n");
    run("loom", "list", "--json");
    assertThat(json().at("/looms/0/learntWasteM").decimalValue()).isEqualByComparingTo("0.775");
    assertThat(json().at("/looms/0/learntPlans").asInt()).isEqualTo(4);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      --weave | lace | --weave: found 'lace', wanted a weave such as plain, 2/2 twill, 5-end satin, or 4 ends, 2 intersections
      --fibre | stone | --fibre: found 'stone', wanted a fibre such as wool, silk, cotton, linen, viscose or acrylic
      --loom | ' ' | --loom: found nothing, wanted the name of a loom
      --for | Nope | Nope: found no plan of this name in the ledger, wanted one that plan list shows
      """)
  void aBadWordIsNamedWithWhatIsWanted(String option, String word, String message) {
    assertThat(run("learnt", option, word)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.strip()).isEqualTo(message);
    assertThat(out).isEmpty();
  }

  private static JsonNode waste(JsonNode offers) {
    for (JsonNode offer : offers) {
      if (offer.get("of").asText().equals("loomWaste")) {
        return offer;
      }
    }
    throw new AssertionError(offers.toString());
  }

  private int run(String... words) {
    return runIn("book", words);
  }

  private int runIn(String ledger, String... words) {
    List<String> all = new ArrayList<>(List.of(words));
    all.addAll(List.of("--ledger", folder.resolve(ledger).toString(), "--author", "Ida"));
    StringWriter printed = new StringWriter();
    StringWriter complained = new StringWriter();
    int code = CommandLineProgram.run(all.toArray(String[]::new), new PrintWriter(printed), new PrintWriter(complained), NO_WINDOW);
    out = printed.toString();
    err = complained.toString();
    return code;
  }

  private JsonNode json() {
    try {
      return new ObjectMapper().readTree(out);
    } catch (IOException broken) {
      throw new AssertionError(out, broken);
    }
  }
}
