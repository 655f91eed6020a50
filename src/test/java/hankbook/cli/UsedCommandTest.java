package hankbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where the yarn of two runners went; the numbers are those worked out in {@code ReckoningTest}. */
class UsedCommandTest {
  private static final Window NO_WINDOW = (ledger, author) -> Optional.of("There is no window in a test.");
  private static final String PLAN = """
      { "format": "hankbook-plan/1", "name": "Runners", "pieces": [{"name": "runner", "count": 2, "length": "90 cm", "width": "45 cm", "hems": "10 cm"}],
        "warp": {"sett": "10/cm", "order": [{"yarn": "Skerry 16/2", "colour": "Woad", "share": 1}]},
        "weft": [{"yarn": "Fulmar 8/1", "colour": "Chalk", "picks": "8/cm", "share": 1}],
        "allowances": {"warpTakeUp": "10 %", "lengthShrinkage": "20 %", "widthShrinkage": "10 %", "sampling": "22 cm", "loomWaste": "53 cm", "repairEnds": 2} }
      """;
  private static final String ACTUALS = """
      { "format" : "hankbook-actuals/1", "reason" : "the bobbins were fat", "leftovers" : [ {"skein" : "C1", "left" : "240 m"}, {"skein" : "W1", "left" : "530 m"} ],
        "warp" : {"length" : "3.8 m", "ends" : 510, "broken" : 5, "loomWaste" : "60 cm", "sampling" : "33 cm", "widthInReed" : "50.5 cm"},
        "cloth" : {"lengthOffLoom" : "280 cm", "lengthFinished" : "210 cm", "widthOnLoom" : "48 cm", "picks" : 2500, "pieces" : 2},
        "hours" : {"winding" : "2 h 30 min", "beaming" : "1 h 28 min"} }
      """;

  /** Finished once, then copied for each test. */
  @TempDir private static Path finished;

  @TempDir private Path folder;

  private String out = "";
  private String err = "";

  @BeforeAll
  static void finish() throws IOException {
    Path stock = Files.writeString(finished.resolve("stock.csv"), "code,yarn,colour,form,length\nW1,Skerry 16/2,Woad,cone,2500 m\nC1,Fulmar 8/1,Chalk,cone,1500 m\n");
    Path plan = Files.writeString(finished.resolve("runners.json"), PLAN);
    UsedCommandTest weaver = new UsedCommandTest();
    weaver.folder = finished;
    assertThat(weaver.run("receive", "--csv", stock.toString())).as(weaver.err).isZero();
    assertThat(weaver.run("plan", "add", plan.toString())).as(weaver.err).isZero();
    assertThat(weaver.run("reserve", "Runners")).as(weaver.err).isZero();
    assertThat(weaver.run("draw", "Runners")).as(weaver.err).isZero();
    assertThat(weaver.run("used", "Runners")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(weaver.err).isEqualTo("Runners is not finished, so it is not known what it used; finish it first.\n");
    Path actuals = Files.writeString(finished.resolve("actuals.json"), ACTUALS);
    assertThat(weaver.run("finish", "Runners", "--actuals", actuals.toString())).as(weaver.err).isZero();
  }

  @BeforeEach
  void copy() throws IOException {
    Files.copy(finished.resolve("book.mv.db"), folder.resolve("book.mv.db"));
  }

  @Test
  void theYarnIsFollowedFromWhatWasPlannedToWhatWasUsed() {
    assertThat(run("used", "Runners")).isZero();
    assertThat(out).startsWith("""
        Runners: what it used against the plan as its yarn was taken for it.

        Skerry 16/2 Woad: 1757 m planned, 1970 m used, 213 m more (12.1 %).
                        metres  comes to
          planned                1757.00  |
          ends          +35.00   1792.00  +++++
          warp length   +70.40   1862.40       +++++++++++
          shrinkage     +98.56   1960.96                  +++++++++++++++
          take-up      -107.52   1853.44                -----------------
          sampling      +56.32   1909.76                +++++++++
          loom waste    +35.84   1945.60                         +++++
          repairs       +11.40   1957.00                              ++
          measurement   +13.00   1970.00                                ++
          used                   1970.00                                  |
          Planned for cloth 900 m, hems 100 m, shrinkage 250 m, take-up 125 m, sampling 110 m, loom waste 265 m, repair ends 7 m.
        """);
    assertThat(out).contains(
        "  weft width    -12.50\n", "  warp take-up         10 %   2.5 %  2.8 m of cloth off the loom, of 3.8 m of warp less 0.6 m of loom waste, 0.33 m of sampling\n",
        "  winding, an end            17.6 s  2 h 30 min for 510 ends\n  beaming, an end            10.4 s  1 h 28 min for 510 ends\n", "Not known: width shrinkage, which wants the width on or off the loom, and finished.\n");
  }

  @Test
  void theSameIsOneObjectForPrograms() {
    assertThat(run("used", "Runners", "--json")).isZero();
    JsonNode used = json();
    assertThat(used.at("/as").asText()).isEqualTo("reserved");
    assertThat(used.at("/yarns/0/causes")).hasSize(11);
    assertThat(used.at("/yarns/0/causes/2/cause").asText()).isEqualTo("shrinkage");
    assertThat(used.at("/yarns/0/causes/2/lengthM").decimalValue()).isEqualByComparingTo("98.56");
    assertThat(used.at("/yarns/0/purposes/7/purpose").asText()).isEqualTo("loomWaste");
    assertThat(used.at("/yarns/0/purposes/7/lengthM").decimalValue()).isEqualByComparingTo("265");
    assertThat(used.at("/total/causes/0/lengthM").decimalValue()).isEqualByComparingTo("56.6");
    assertThat(used.at("/really/allowances/0/allowance").asText()).isEqualTo("warpTakeUp");
    assertThat(used.at("/really/allowances/0/found").decimalValue()).isEqualByComparingTo("0.025");
    assertThat(used.at("/really/loomWaste/foundM").decimalValue()).isEqualByComparingTo("0.6");
    assertThat(used.at("/really/times/0/seconds").decimalValue()).isEqualByComparingTo("17.647");
  }

  /** By hand: 502 × 3.61 m instead of 3.5 m of warp, 55.22 m more that were planned so. */
  @Test
  void thePlanAsItWasLastEditedIsAnotherMeasure() throws IOException {
    Path edited = Files.writeString(folder.resolve("edited.json"), PLAN.replace("\"22 cm\"", "\"33 cm\""));
    assertThat(run("plan", "add", edited.toString(), "--replace")).as(err).isZero();
    assertThat(run("used", "Runners")).isZero();
    assertThat(out).startsWith("Runners: what it used against the plan as its yarn was taken for it. It was edited since: see also --as edited.\n");
    assertThat(run("used", "Runners", "--as", "edited")).isZero();
    assertThat(out).contains("Skerry 16/2 Woad: 1812.22 m planned, 1970 m used, 157.78 m more (8.7 %).\n").doesNotContain("sampling      +");
  }

  @Test
  void whatCannotBeToldIsRefused() {
    assertThat(run("used", "Quay towels")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("Quay towels: found no plan of this name in the ledger, wanted one that plan list shows\n");
    assertThat(run("used", "Runners", "--as", "dreamt")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("--as: found 'dreamt', wanted reserved or edited\n");
  }

  private int run(String... words) {
    List<String> all = new ArrayList<>(List.of(words));
    all.addAll(List.of("--ledger", folder.resolve("book").toString(), "--author", "Ida"));
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
