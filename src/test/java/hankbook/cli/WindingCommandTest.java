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

class WindingCommandTest {
  private static final Window NO_WINDOW = (ledger, author) -> Optional.of("There is no window in a test.");

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @TempDir private Path folder;

  @Test
  void theSheetSaysAfterWhichPassAPositionChangesItsSkein() {
    assertThat(run("winding", "imports/ash-blanket.json", "--stock", "imports/stock.csv", "--threads", "2")).isEqualTo(ExitCode.DONE);
    assertThat(out.toString().lines().map(String::strip)).contains(
        "690 ends of 4.05 m in 345 passes along the warping path, 2794.5 m of yarn to wind.",
        "The skeins are chosen for 2 threads together, while the plan winds 3; let the plan say 2 before you reserve.",
        "passes 1-345: 690 ends of Fjara 2/20 Ash, 2 together");
    assertThat(out.toString()).containsPattern("after pass \\d+ position \\d changes from S01[0-2] to S01[0-2], \\d+ ends");
  }

  @Test
  void whatTheSkeinsDoNotAllowIsSaid() {
    assertThat(run("winding", "imports/ash-blanket.json", "--stock", "imports/stock.csv", "--threads", "4")).isEqualTo(ExitCode.DONE);
    assertThat(out.toString()).contains("4 together is not possible from the skeins it is allotted: one would have to feed two threads at once.");
  }

  @Test
  void theSheetAsJsonTellsTheSame() throws IOException {
    assertThat(run("winding", "imports/ash-blanket.json", "--stock", "imports/stock.csv", "--threads", "1", "--bout", "100", "--group", "25", "--json")).isEqualTo(ExitCode.DONE);
    JsonNode sheet = new ObjectMapper().readTree(out.toString());
    assertThat(sheet.at("/passes").asInt()).isEqualTo(690);
    assertThat(sheet.at("/lengthM").asText()).isEqualTo("2794.5");
    assertThat(sheet.at("/bouts").size()).isEqualTo(7);
    assertThat(sheet.at("/bouts/0/groups").asInt()).isEqualTo(sheet.at("/bouts/0/ends").asInt() / 25);
    int given = 0;
    for (JsonNode stint : sheet.at("/feeds/0/skeins")) {
      given += stint.get("ends").asInt();
    }
    assertThat(given).isEqualTo(690);
  }

  @Test
  void whatComesAgainAndAgainInALongOrderIsWrittenOnce() throws IOException {
    StringBuilder order = new StringBuilder();
    for (int i = 0; i < 40; i++) {
      order.append("{\"yarn\": \"Skerry\", \"colour\": \"Chalk\", \"ends\": 6}, {\"yarn\": \"Skerry\", \"colour\": \"Woad\", \"ends\": 3}, ");
    }
    Path plan = Files.writeString(
        folder.resolve("stripes.json"),
        "{\"format\": \"hankbook-plan/1\", \"name\": \"Stripes\", \"pieces\": [], \"warp\": {\"sett\": \"10/cm\", \"ends\": 366, \"length\": \"2 m\", \"order\": ["
            + order + "{\"yarn\": \"Skerry\", \"colour\": \"Chalk\", \"ends\": 6}]}, \"weft\": [], \"winding\": {\"threads\": 2}}");
    Path stock = Files.writeString(
        folder.resolve("stock.csv"), "code,yarn,colour,length\nC1,Skerry,Chalk,246 m\nC2,Skerry,Chalk,246 m\nW1,Skerry,Woad,120 m\nW2,Skerry,Woad,120 m\n");
    assertThat(run("winding", plan.toString(), "--stock", stock.toString())).as(err.toString()).isEqualTo(ExitCode.DONE);
    assertThat(out.toString().lines()).containsSubsequence(
        "  40 times, passes 1-200:",
        "    passes 1-3: 6 ends of Skerry Chalk, 2 together",
        "    passes 4-5: 3 ends of Skerry Woad, 2 together, in the last pass 1",
        "  passes 201-203: 6 ends of Skerry Chalk, 2 together");
  }

  @Test
  void aBoutThatHoldsNoPassThereAndBackIsRefused() {
    assertThat(run("winding", "imports/ash-blanket.json", "--stock", "imports/stock.csv", "--threads", "2", "--bout", "3")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString().strip()).isEqualTo("Ash blanket: found '3', wanted a bout of at least 4 ends, which one pass there and back lays");
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void aWarpBeyondAllMeasureHasNoSheet() throws IOException {
    Path plan = Files.writeString(
        folder.resolve("sail.json"),
        "{\"format\": \"hankbook-plan/1\", \"name\": \"Sail\", \"pieces\": [], \"warp\": {\"sett\": \"10/cm\", \"ends\": 20001, \"length\": \"2 m\","
            + " \"order\": [{\"yarn\": \"Skerry\", \"colour\": \"Chalk\", \"share\": 1}]}, \"weft\": []}");
    assertThat(run("winding", plan.toString(), "--stock", "imports/stock.csv")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString().strip()).isEqualTo("Sail: found '20001 ends', wanted a warp of at most 20000 ends to wind");
  }

  @Test
  void noThreadsAreRefused() {
    assertThat(run("winding", "imports/ash-blanket.json", "--stock", "imports/stock.csv", "--threads", "0")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString().strip()).isEqualTo("found '0', wanted threads held together from 1 to 100");
  }

  @Test
  void aPlanThatIsShortHasASheetWithoutSkeins() {
    assertThat(run("winding", "imports/linen-runner.json", "--stock", "imports/stock.csv")).isEqualTo(ExitCode.SHORT);
    assertThat(out.toString()).contains("2 ends have no skein on the shelf, so no skein is assigned yet; there is yarn for 528 ends.");
  }

  private int run(String... args) {
    return CommandLineProgram.run(args, new PrintWriter(out), new PrintWriter(err), NO_WINDOW);
  }
}
