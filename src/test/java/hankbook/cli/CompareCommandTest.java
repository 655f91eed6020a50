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
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plans duplicated, varied and laid side by side by command, on the sample studio. */
class CompareCommandTest {
  private static final Window NO_WINDOW = (ledger, author) -> Optional.of("There is no window in a test.");

  @TempDir private Path folder;
  private String out = "";
  private String err = "";

  @BeforeEach
  void fill() throws Exception {
    try (Studio studio = Studio.open(new LedgerAddress.InFile(folder.resolve("book")), "Ida")) {
      SampleStudio.fill(studio);
    }
  }

  private int run(String... args) {
    List<String> all = new ArrayList<>(List.of(args));
    all.addAll(List.of("--ledger", folder.resolve("book").toString(), "--author", "Ida"));
    StringWriter said = new StringWriter();
    StringWriter wrong = new StringWriter();
    int code = CommandLineProgram.run(all.toArray(String[]::new), new PrintWriter(said), new PrintWriter(wrong), NO_WINDOW);
    out = said.toString();
    err = wrong.toString();
    return code;
  }

  private JsonNode json() throws IOException {
    return new ObjectMapper().readTree(out);
  }

  private JsonNode row(String key) throws IOException {
    for (JsonNode row : json().at("/rows")) {
      if (row.at("/row").asText().equals(key)) {
        return row;
      }
    }
    throw new AssertionError("no row " + key + " in " + out);
  }

  @Test
  void aPlanIsDuplicatedUnderAFreeNameAndPuttingThatAwayUndoesIt() throws IOException {
    assertThat(run("reserve", "Quay towels")).isZero();
    assertThat(run("plan", "duplicate", "Quay towels")).isZero();
    assertThat(out).startsWith("Kept the plan Quay towels 2.");
    assertThat(run("plan", "duplicate", "Quay towels", "--json")).isZero();
    assertThat(json().at("/plan").asText()).isEqualTo("Quay towels 3");
    run("plan", "list");
    assertThat(out.lines().filter(line -> line.startsWith("Quay towels 2"))).singleElement().asString().contains("planned");
    assertThat(run("plan", "put-away", "Quay towels 2")).isZero();
    assertThat(run("plan", "duplicate", "Quay towels")).isZero();
    assertThat(out).startsWith("Kept the plan Quay towels 2.");
  }

  @Test
  void aVariantIsHeldBesideItsPlanWhichStaysAsItIs() throws IOException {
    assertThat(run("compare", "Quay towels", "--vary", "pieces=40", "--json")).isZero();
    assertThat(row("verdict").at("/figures").toString()).isEqualTo("[{\"verdict\":\"COVERED\"},{\"verdict\":\"SHORT\"}]");
    assertThat(row("verdict").at("/best").toString()).isEqualTo("[0]");
    assertThat(row("pieces").at("/figures").toString()).isEqualTo("[{\"count\":4},{\"count\":40}]");
    run("plan", "show", "Quay towels");
    assertThat(out).doesNotContain("40,").doesNotContain("\"40\"");
    assertThat(run("compare", "Quay towels", "Linen runner", "--vary", "sett=8/cm")).isZero();
    assertThat(out).startsWith("side by side").contains("best: COVERED").contains("Each is held against the shelf by itself");
  }

  @Test
  void whatIsReservedForOneOfThemIsFreeForTheOthers() throws IOException {
    run("compare", "Quay towels", "--vary", "pieces=5", "--json");
    String free = row("left").toString();
    assertThat(run("plan", "duplicate", "Quay towels", "--vary", "pieces=5", "--as", "Five towels")).isZero();
    assertThat(run("reserve", "Quay towels")).isZero();
    assertThat(run("compare", "Quay towels", "Five towels", "--json")).isZero();
    assertThat(row("left").toString()).isEqualTo(free);
  }

  @Test
  void whatIsAskedWronglyIsRefusedWithWhatIsWanted() {
    assertThat(run("compare", "Quay towels")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("compare: found 1 plan, wanted two to 4, variants counted\n");
    assertThat(run("compare", "Quay towels", "Quay towels")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("compare: found a plan named twice, wanted each once\n");
    assertThat(run("compare", "Quay towels", "No such")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).startsWith("No such: found no plan of this name");
    assertThat(run("compare", "Quay towels", "--vary", "setts=8")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).startsWith("--vary: found 'setts', wanted sett=8/cm");
    assertThat(run("plan", "duplicate", "Quay towels", "--as", "Ash blanket")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("There is a plan Ash blanket already; choose another name.\n");
  }
}
