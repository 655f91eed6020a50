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
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands on yarn on order and on all plans together. */
class ExpectAndQueueTest {
  private static final Window NO_WINDOW = (ledger, author) -> Optional.of("There is no window in a test.");

  @TempDir private Path folder;

  private final LocalDate soon = LocalDate.now(ZoneId.systemDefault()).plusDays(20);
  private String out = "";
  private String err = "";

  /** Filled once, then copied for each test. */
  @TempDir private static Path filled;

  @BeforeAll
  static void bringIn() throws Exception {
    try (Studio studio = Studio.open(new LedgerAddress.InFile(filled.resolve("book")), "Ida")) {
      new Receive(studio).file("stock.csv", "code,yarn,colour,length\nC1,Skerry,Chalk,107 m\nC2,Skerry,Chalk,53 m\n");
      new Plans(studio).add("apron.json", planOf("Apron", 20), false);
      new Plans(studio).add("band.json", planOf("Band", 25), false);
    }
  }

  @BeforeEach
  void copy() throws IOException {
    Files.copy(filled.resolve("book.mv.db"), folder.resolve("book.mv.db"));
  }

  @Test
  void whatIsKnownOfYarnIsSaidWhenItArrivesAndMendedAfterwards() throws IOException {
    run("expect", "add", "--csv", file("order.csv", "code,yarn,colour,length\nC3,Skerry,Chalk,80 m\n"), "--by", soon.toString());
    assertThat(run("expect", "arrived", "C3", "--cost", "24")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("--cost: found '24', wanted an amount and its currency such as 24.50 EUR\n");
    assertThat(run("expect", "arrived", "C3", "--on", "soon")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("--on: found 'soon', wanted a day such as 2026-12-20\n");
    assertThat(run("expect", "arrived", "C3", "--lot", "B7", "--location", "blue chest", "--cost", "24 EUR", "--on", "2026-03-10")).isZero();
    assertThat(out).contains("2026-03-10").contains("80 m of C3 from what is on order to the shelf");
    run("shelf", "C3");
    assertThat(out).contains("B7").contains("blue chest");
    assertThat(run("describe", "C3", "--lot", "B8")).isZero();
    assertThat(out).isEqualTo("Described 1 skein anew; what was said before is kept.\n");
    run("describe", "C3", "--lot", "B8");
    assertThat(out).isEqualTo("Nothing to change: the ledger says so already.\n");
    run("describe", "C1", "C3", "--location", "shelf 2", "--json");
    assertThat(json().at("/changed").asInt()).isEqualTo(2);
    assertThat(run("describe", "C3")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("describe C3: found nothing to say, wanted --lot, --location, --cost or --on\n");
    run("audit");
    assertThat(out).startsWith("The ledger is sound");
  }

  @Test
  void yarnIsPutOnOrderAndArrives() throws IOException {
    String order = file("order.csv", "code,yarn,colour,length,form\nC3,Skerry,Chalk,80 m,cone\n");
    assertThat(run("expect", "add", "--csv", order, "--by", soon.toString())).isZero();
    assertThat(out).isEqualTo("1 skein put on order, expected by " + soon + ".\n");
    run("expect", "add", "--csv", order, "--by", soon.toString());
    assertThat(out).isEqualTo("0 skeins put on order, expected by " + soon + "; 1 of the file were on order or had come before.\n");
    run("expect", "list");
    assertThat(out).isEqualTo("code  yarn          form  length  expected by\nC3    Skerry Chalk  cone    80 m  " + soon + "\n");
    run("expect", "list", "--json");
    assertThat(json().at("/expected/0/due").asText()).isEqualTo(soon.toString());
    assertThat(json().at("/expected/0/overdue").asBoolean()).isFalse();
    assertThat(run("expect", "due", "C3", "--by", soon.plusDays(1).toString())).isZero();
    assertThat(out).isEqualTo("1 skein expected by " + soon.plusDays(1) + " now.\n");
    assertThat(run("expect", "arrived", "C3")).isZero();
    assertThat(out).contains("80 m of C3 from what is on order to the shelf");
    assertThat(run("expect", "arrived", "C3")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("C3 is not on order: it has come; nothing was changed.\n");
    assertThat(run("audit")).isZero();
  }

  @Test
  void whatWillNotComeIsGivenUpWithAReason() throws IOException {
    run("expect", "add", "--csv", file("order.csv", "code,yarn,colour,length\nC3,Skerry,Chalk,80 m\n"), "--by", soon.toString());
    assertThat(run("expect", "cancel", "C3", "--reason", "out of stock", "--json")).isZero();
    assertThat(json().at("/entries/0/kind").asText()).isEqualTo("REVERSAL");
    run("expect", "list");
    assertThat(out).isEqualTo("Nothing is on order; expect add puts the skeins of a file on order.\n");
  }

  @Test
  void aDayIsWrittenWithItsYearFirst() throws IOException {
    for (String day : List.of("20.12.2026", "2026-02-30", "soon", "2026-1-1", "0000-01-01")) {
      assertThat(run("expect", "add", "--csv", file("order.csv", "code,yarn,colour\n"), "--by", day)).isEqualTo(ExitCode.BAD_INPUT);
      assertThat(err).isEqualTo("found '" + day + "', wanted a day such as 2026-12-20\n");
    }
  }

  @Test
  void aCheckCountsYarnOnOrderOnlyWhereItIsSaid() throws IOException {
    run("plan", "add", plan("Cape", 40));
    run("expect", "add", "--csv", file("order.csv", "code,yarn,colour,length\nC3,Skerry,Chalk,80 m\n"), "--by", soon.toString());
    assertThat(run("check", "Cape")).isEqualTo(ExitCode.SHORT);
    assertThat(run("check", "Cape", "--count-expected")).isZero();
    assertThat(out).endsWith("Counted though it has not come yet: C3 by " + soon + ".\n");
    assertThat(run("check", "Cape", "--count-expected", "--json")).isZero();
    assertThat(json().at("/counted/0/skein").asText()).isEqualTo("C3");
    assertThat(run("check", "Cape", "--count-expected", "--by", soon.minusDays(1).toString())).isEqualTo(ExitCode.SHORT);
    assertThat(run("check", "Cape", "--by", soon.toString())).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("--by: found a day without --count-expected, wanted both, since yarn on order counts only where you say so\n");
    assertThat(CommandLineProgram.run(
            new String[] {"check", "imports/ash-blanket.json", "--stock", "imports/stock.csv", "--count-expected"}, new PrintWriter(new StringWriter()), new PrintWriter(new StringWriter()), NO_WINDOW))
        .isEqualTo(ExitCode.BAD_INPUT);
  }

  @Test
  void thePlansAreHeldAgainstTheShelfTogether() throws IOException {
    assertThat(run("plan", "queue")).isEqualTo(ExitCode.SHORT);
    assertThat(out).isEqualTo(
        """
        turn  plan   yarn           need  free then  lacks  verdict
           1  Apron  Skerry Chalk   80 m      160 m         COVERED
           2  Band   Skerry Chalk  100 m       80 m   24 m  SHORT

        all plans      need   free  lacks
        Skerry Chalk  180 m  160 m   24 m

        Each plan takes its yarn from what those before it leave; what it lacks is counted in whole ends.
        """);
    run("plan", "queue", "--json");
    assertThat(json().at("/plans/1/yarns/0/lackM").asText()).isEqualTo("24.0");
    assertThat(json().at("/plans/0/skeins/0/skein").asText()).isNotEmpty();
    assertThat(json().has("changes")).isFalse();
  }

  @Test
  void anotherOrderOfThePlansIsTriedAndKept() throws IOException {
    assertThat(run("plan", "queue", "--move", "Band", "--before", "Apron", "--try")).isEqualTo(ExitCode.SHORT);
    assertThat(out).contains("The order of the plans was only tried, and is as it was. What it would change:\n").contains("Band, Skerry Chalk: SHORT, lacking 24 m becomes COVERED");
    run("plan", "queue", "--move", "Apron", "--after", "Band", "--json");
    assertThat(json().at("/kept").asBoolean()).isTrue();
    assertThat(json().at("/changes").size()).isEqualTo(2);
    run("plan", "queue", "--json");
    assertThat(json().at("/plans/0/plan").asText()).isEqualTo("Band");
  }

  @Test
  void aMoveThatSaysTooLittleOrTooMuchIsRefused() throws IOException {
    assertThat(run("plan", "queue", "--move", "Band")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("plan queue: found --move with neither --before nor --after, wanted one of them\n");
    run("plan", "queue", "--move", "Band", "--before", "Apron", "--after", "Apron");
    assertThat(err).isEqualTo("plan queue: found --move with both --before and --after, wanted one of them\n");
    run("plan", "queue", "--try");
    assertThat(err).isEqualTo("plan queue: found --before, --after or --try without --move, wanted the plan to move, too\n");
    run("plan", "queue", "--move", "Cape", "--before", "Apron");
    assertThat(err).isEqualTo("There is no plan Cape in the ledger; the order of the plans is as it was.\n");
  }

  private String plan(String name, int ends) throws IOException {
    return file(name + ".json", planOf(name, ends));
  }

  /** So many ends of 4 m and no weft. */
  private static String planOf(String name, int ends) {
    return ("{\"format\": \"hankbook-plan/1\", \"name\": \"%s\", \"pieces\": [], \"weft\": [],"
            + " \"warp\": {\"sett\": \"10/cm\", \"ends\": %d, \"length\": \"4 m\", \"order\": [{\"yarn\": \"Skerry\", \"colour\": \"Chalk\", \"ends\": %d}]}}")
        .formatted(name, ends, ends);
  }

  private String file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text).toString();
  }

  private JsonNode json() throws IOException {
    return new ObjectMapper().readTree(out);
  }

  private int run(String... args) {
    StringWriter said = new StringWriter();
    StringWriter complained = new StringWriter();
    List<String> all = new ArrayList<>(List.of(args));
    all.addAll(List.of("--ledger", folder.resolve("book").toString(), "--author", "Ida"));
    int code = CommandLineProgram.run(all.toArray(String[]::new), new PrintWriter(said), new PrintWriter(complained), NO_WINDOW);
    out = said.toString().replace(System.lineSeparator(), "\n");
    err = complained.toString().replace(System.lineSeparator(), "\n");
    return code;
  }
}
