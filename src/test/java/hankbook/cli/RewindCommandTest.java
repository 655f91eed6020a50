package hankbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hankbook.store.LedgerAddress;
import hankbook.studio.SampleStudio;
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

/** Winding yarn off one skein onto another by command, on the sample studio. */
class RewindCommandTest {
  private static final Window NO_WINDOW = (ledger, author) -> Optional.of("There is no window in a test.");

  /** Filled once, then copied for each test. */
  @TempDir private static Path filled;

  @TempDir private Path folder;

  private String out = "";
  private String err = "";

  @BeforeAll
  static void bringIn() throws Exception {
    try (Studio studio = Studio.open(new LedgerAddress.InFile(filled.resolve("book")), "Ida")) {
      SampleStudio.fill(studio);
    }
  }

  @BeforeEach
  void copy() throws IOException {
    Files.copy(filled.resolve("book.mv.db"), folder.resolve("book.mv.db"));
  }

  @Test
  void aLengthIsWoundOffOntoANewSkein() {
    assertThat(run("rewind", "S004", "--onto", "S004b", "300 m", "--form", "ball", "--location", "Basket", "--note", "for the scarf")).isZero();
    assertThat(out).contains("rewind, by Ida: for the scarf").contains("300 m of S004 from the shelf to what was wound onto another skein");
    run("shelf", "S004");
    assertThat(out).startsWith("""
        code   yarn              lot    form    free       ±  known by  reserved  on loom  where
        S004   Skerry 16/2 Woad  K-290  cone  1300 m  41.6 m  label                        Left shelf 1
        S004b  Skerry 16/2 Woad  K-290  ball   300 m     9 m                               Basket
        """);
    run("audit");
    assertThat(out).startsWith("The ledger is sound");
  }

  @Test
  void turnsAWeightAndAllOfItSayHowMuchToo() {
    assertThat(run("rewind", "S004", "--onto", "T", "--turns", "100", "--reel", "2 m", "--json")).isZero();
    assertThat(json().at("/entries/0/kind").asText()).isEqualTo("REWIND");
    assertThat(json().at("/entries/0/transfers/1").toString()).isEqualTo("{\"skein\":\"T\",\"from\":\"REWOUND\",\"to\":\"SHELF\",\"lengthM\":200.0}");
    assertThat(run("rewind", "S004", "--onto", "U", "--gross", "30 g", "--tare", "8 g")).isZero();
    assertThat(run("rewind", "S005", "--onto", "V", "--all")).isZero();
    run("shelf", "V", "--json");
    assertThat(json().at("/skeins/0/knownBy").asText()).isEqualTo("weight");
  }

  @Test
  void aSkeinIsJoinedOntoAnotherOfItsYarnAndItsLotOnlyIfThatIsSaid() {
    assertThat(run("rewind", "S002", "--onto", "S001", "--all", "--join")).isZero();
    run("shelf", "S001", "--json");
    assertThat(json().at("/skeins/0/freeM").asDouble()).isEqualTo(3200);
    assertThat(run("rewind", "S006", "--onto", "S007", "100 m", "--join")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo(
        "S006 is of lot K-275 and S007 is of lot K-276; joined they are of neither. Say that the lots may be mixed (--mix-lots) if that is meant. Nothing was changed.\n");
    assertThat(run("rewind", "S006", "--onto", "S007", "100 m", "--join", "--mix-lots")).isZero();
    run("shelf", "S007", "--json");
    assertThat(json().at("/skeins/0/lot").asText()).isEqualTo("K-275 + K-276");
    assertThat(run("rewind", "S001", "--onto", "S004", "--all", "--join")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).startsWith("S001 is Skerry 16/2 Chalk and S004 is Skerry 16/2 Woad; only yarn of one kind and colour is joined.");
  }

  @Test
  void whatIsSaidWronglyIsRefusedWithWhatIsWanted() {
    refused("rewind S004: found not how much, wanted one of a length, --all, --turns with --reel, or --gross with --tare\n", "rewind", "S004", "--onto", "N");
    refused("rewind S004: found several lengths, wanted one of", "rewind", "S004", "--onto", "N", "3 m", "--all");
    refused("rewind S004: found --turns alone, wanted --turns with --reel\n", "rewind", "S004", "--onto", "N", "--turns", "3");
    refused("rewind S004: found a weight in part, wanted --gross with --tare", "rewind", "S004", "--onto", "N", "--gross", "3 g");
    refused("LENGTH: found '3 apples'", "rewind", "S004", "--onto", "N", "3 apples");
    refused("--form: found 'bag'", "rewind", "S004", "--onto", "N", "3 m", "--form", "bag");
    refused("rewind S004: found --mix-lots without --join", "rewind", "S004", "--onto", "N", "3 m", "--mix-lots");
    refused("rewind S004: found --join with --form or --location", "rewind", "S004", "--onto", "S005", "3 m", "--join", "--form", "ball");
    refused("Missing required option: '--onto=SKEIN'", "rewind", "S004", "3 m");
    refused("--onto: found nothing, wanted a code of its own", "rewind", "S004", "--onto", " ", "3 m");
    refused("There is a skein S005 already", "rewind", "S004", "--onto", "S005", "3 m");
    refused("A weight says what is on S005 in all", "rewind", "S004", "--onto", "S005", "--join", "--gross", "9 g", "--tare", "0 g");
    run("journal", "--json");
    assertThat(out).doesNotContain("REWIND");
  }

  private void refused(String why, String... words) {
    assertThat(run(words)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).contains(why);
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
