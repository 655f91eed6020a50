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
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Looms, reeds, setts and sleying at the command line. */
class GearCommandsTest {
  private static final Window NO_WINDOW = (ledger, author) -> Optional.of("There is no window in a test.");

  /** Filled once, then copied for each test. */
  @TempDir private static Path filled;

  @TempDir private Path folder;

  private String out = "";
  private String err = "";

  @BeforeAll
  static void bringIn() throws Exception {
    try (Studio studio = Studio.open(new LedgerAddress.InFile(filled.resolve("book")), "Ida")) {
      new Receive(studio).file("imports/stock.csv", Files.readString(Path.of("imports/stock.csv")));
      new Plans(studio).add("quay-towels.json", Files.readString(Path.of("imports/quay-towels.json")), false);
    }
  }

  @BeforeEach
  void copy() throws IOException {
    Files.copy(filled.resolve("book.mv.db"), folder.resolve("book.mv.db"));
  }

  @Test
  void loomsAreEnteredListedAndPutAway() {
    assertThat(inLedger("loom", "add", "Table loom", "--width", "60 cm", "--waste", "45 cm", "--shafts", "4")).isZero();
    assertThat(out).isEqualTo("Entered the loom Table loom.\n");
    assertThat(inLedger("loom", "add", "Table loom", "--width", "70 cm", "--waste", "45 cm", "--shafts", "4")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("There is a loom Table loom already that is another; replace it outright, or give this one another name.\n");
    assertThat(inLedger("loom", "add", "Table loom", "--width", "70 cm", "--waste", "45 cm", "--shafts", "4", "--replace")).isZero();
    inLedger("loom", "list");
    assertThat(out).isEqualTo("""
        loom        width  waste  shafts
        Table loom  70 cm  45 cm       4
        """);
    inLedger("loom", "put-away", "Table loom");
    inLedger("loom", "list", "--json");
    assertThat(json().get("looms")).isEmpty();
    assertThat(inLedger("loom", "put-away", "Table loom")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("There is no loom Table loom; loom list shows those there are.\n");
  }

  @Test
  void reedsAreCalledByTheirDentsUnlessTheyHaveNames() {
    inLedger("reed", "add", "12/in", "--width", "90 cm");
    inLedger("reed", "add", "50/10cm", "--name", "Long fifty");
    inLedger("reed", "list");
    assertThat(out).isEqualTo("""
        reed           dents  width
        12/in          12/in  90 cm
        Long fifty  50/10 cm    any
        """);
    inLedger("reed", "put-away", "Long fifty");
    inLedger("reed", "list", "--json");
    assertThat(json().toString()).isEqualTo("{\"reeds\":[{\"reed\":\"12/in\",\"dents\":\"12/in\",\"widthM\":0.9}]}");
    assertThat(inLedger("reed", "add", "twelve")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("DENTS: found 'twelve', wanted dents to a length such as 12/in or 50/10 cm\n");
  }

  /** 26 fullest: T. R. Ashenhurst's rule as handweavers use it. */
  @Test
  void aSettIsReckonedWithoutALedger() {
    assertThat(run("sett", "--grist", "8/2 cotton", "--weave", "plain", "--reed", "12/in")).isZero();
    assertThat(out).isEqualTo("""
        Diameters: 52.2 to the inch with k 0.9 (0.9 is for worsted and other firm yarn, 0.84 for soft woollen).
        Weave: plain, of which 2/(2 + 2) = 0.5 may be ends.
        Fullest sett: 26/in, 10.2/cm.
        Working sett: 19.5/in, 7.7/cm, 0.75 of the fullest.

        reed   sley          sett     off
        12/in  2-2-1-2-1  19.2/in  -1.5 %
        12/in  2-2-1        20/in   2.6 %
        12/in  1-2          18/in  -7.7 %
        12/in  2-2-2-1      21/in   7.7 %
        """);
    run("sett", "--grist", "16/2 cotton + 16/2 cotton", "--json");
    assertThat(json().get("fullest").asText()).isEqualTo("26/in");
    assertThat(json().get("k").decimalValue()).isEqualByComparingTo("0.9");
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      eight | plain | 0.9 | 3/4 | --grist: found 'eight', wanted a yarn number such as
      8/2 cotton | lace | 0.9 | 3/4 | --weave: found 'lace', wanted a weave such as
      8/2 cotton | plain | 9 | 3/4 | --k: found '9', wanted a k over 0, to 2: 0.9 for firm yarn, 0.84 for soft woollen
      8/2 cotton | plain | 0.9 | 4/3 | --part: found '1.333333', wanted a part of the fullest sett over 0, to 1, such as 3/4
      """)
  void aBadWordIsNamedWithWhatIsWanted(String grist, String weave, String factor, String part, String message) {
    assertThat(run("sett", "--grist", grist, "--weave", weave, "--k", factor, "--part", part)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).startsWith(message);
    assertThat(out).isEmpty();
  }

  @Test
  void aPlanIsSleyedFromItsFileInAReedThatIsNamed() {
    assertThat(run("sley", "imports/quay-towels.json", "--reed", "50/10 cm")).isZero();
    assertThat(out).isEqualTo("""
        Quay towels: 556 ends, to be set 10/cm.

        reed      sley   sett  off
        50/10 cm  2     10/cm  0 %

        Reed 50/10 cm sleyed 2 gives 10/cm:
          278 dents, 278 repeats of the sleying and none of the ends left over.
          55.6 cm wide in the reed, where the plan reckons 55.5 cm.
          To stand in the middle, begin 27.8 cm from the middle of the reed.
        """);
    assertThat(run("sley", "imports/quay-towels.json")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("Quay towels: found no reed in plan or ledger, wanted one: --reed 12/in, or reed add\n");
  }

  @Test
  void aPlanIsSleyedInTheReedsOfTheStudioAndARefusalGivesTheNumbers() {
    inLedger("reed", "add", "12/in", "--width", "60 cm");
    assertThat(inLedger("sley", "Quay towels", "--pattern", "2", "--json")).isZero();
    assertThat(json().get("dents").asInt()).isEqualTo(278);
    assertThat(json().get("firstDent").asInt()).isEqualTo(3);
    assertThat(json().get("widthInReedM").asText()).isEqualTo("0.5884");
    assertThat(inLedger("sley", "Quay towels", "--pattern", "1")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("Quay towels: found '556 dents for 556 ends sleyed 1', wanted at most the 283 that reed 12/in has in its 60 cm\n");
    assertThat(inLedger("sley", "Quay towels", "--reed", "blue")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("reed: found 'blue', wanted a reed that reed list shows, or dents such as 12/in\n");
  }

  @Test
  void aBeamedWarpIsSleyedAgainAndThePlanKeptOnlyWhereThatIsSaid() {
    assertThat(inLedger("resley", "Quay towels", "11/cm")).isZero();
    String shown = """
        Quay towels: 556 ends stay, and the width moves.

                 sett  in the reed  finished
        before  10/cm      55.6 cm   48.1 cm
        after   11/cm      50.6 cm   43.7 cm

        Weft Skerry 16/2 Chalk: 1753 m, 175.3 m less.
        """;
    assertThat(out).isEqualTo(shown + "Nothing was changed; --keep keeps the plan with this sett.\n");
    inLedger("plan", "show", "Quay towels");
    assertThat(out).contains("\"sett\": \"10/cm\"");
    inLedger("resley", "Quay towels", "11/cm", "--keep");
    assertThat(out).isEqualTo(shown + "Kept the plan with this sett; its pieces still say the width they had.\n");
    inLedger("check", "Quay towels", "--json");
    assertThat(json().at("/warp/ends").asInt()).isEqualTo(556);
    assertThat(json().at("/warp/widthInReedM").asText()).isEqualTo("0.5055");
    // (55.6 - 556/11) cm x 3303 picks x 1.05.
    inLedger("resley", "Quay towels", "10/cm", "--json");
    assertThat(json().at("/weft/0/moreM").asText()).isEqualTo("175.2992");
    assertThat(inLedger("resley", "Quay", "10/cm")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("Quay: found no plan of this name in the ledger, wanted one that plan list shows\n");
  }

  @Test
  void aCheckSaysWhatLoomAndReedDoNotGive() throws IOException {
    String towels = Files.readString(Path.of("imports/quay-towels.json")).replaceFirst("\"pieces\"", "\"loom\": \"Table loom\", \"reed\": \"12/in\", \"pieces\"");
    Path file = Files.writeString(folder.resolve("towels.json"), towels);
    inLedger("plan", "add", file.toString(), "--replace");
    inLedger("loom", "add", "Table loom", "--width", "50 cm", "--waste", "70 cm", "--shafts", "4");
    inLedger("reed", "add", "12/in", "--width", "90 cm");
    assertThat(inLedger("check", "Quay towels", "--json")).isZero();
    assertThat(json().get("warnings").findValuesAsText("code")).containsExactly("TOO_WIDE", "SETT");
    assertThat(json().at("/warnings/0").toString())
        .isEqualTo(
            "{\"code\":\"TOO_WIDE\",\"yarn\":\"\",\"colour\":\"\","
                + "\"text\":\"The warp is 55.5 cm wide in the reed, and Table loom weaves 50 cm; no loom takes it, the widest is Table loom with 50 cm.\"}");
    assertThat(run("check", file.toString(), "--stock", "imports/stock.csv")).isZero();
    assertThat(out).doesNotContain("ledger").contains("No sleying of reed 12/in gives 10/cm within 3 %.");
  }

  private int inLedger(String... words) {
    List<String> all = new ArrayList<>(List.of(words));
    all.addAll(List.of("--ledger", folder.resolve("book").toString(), "--author", "Ida"));
    return run(all.toArray(String[]::new));
  }

  private int run(String... words) {
    StringWriter printed = new StringWriter();
    StringWriter complained = new StringWriter();
    int code = CommandLineProgram.run(words, new PrintWriter(printed), new PrintWriter(complained), NO_WINDOW);
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
