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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The commands on a ledger in a file, from an empty one to a squared plan. */
class LedgerCommandsTest {
  private static final Window NO_WINDOW = (ledger, author) -> Optional.of("There is no window in a test.");

  @TempDir private Path folder;

  private String out = "";
  private String err = "";

  /** Filled once, then copied for each test. */
  @TempDir private static Path filled;

  @BeforeAll
  static void bringIn() throws Exception {
    try (Studio studio = Studio.open(new LedgerAddress.InFile(filled.resolve("book")), "Ida")) {
      new Receive(studio).file("imports/stock.csv", Files.readString(Path.of("imports/stock.csv")));
      new Plans(studio).add("quay-towels.json", Files.readString(Path.of("imports/quay-towels.json")), false);
      new Plans(studio).add("gorse-shawl.json", Files.readString(Path.of("imports/gorse-shawl.json")), false);
    }
  }

  @BeforeEach
  void copy() throws IOException {
    Files.copy(filled.resolve("book.mv.db"), folder.resolve("book.mv.db"));
  }

  @Test
  void aNewLedgerIsMadeByTheFirstThatIsEntered() {
    String fresh = folder.resolve("fresh").toString();
    assertThat(runExactly("receive", "--csv", "imports/stock.csv", "--ledger", fresh)).isZero();
    assertThat(out).isEqualTo("Received 58 skeins.\n");
    assertThat(runExactly("plan", "add", "imports/linen-runner.json", "--ledger", fresh)).isZero();
    assertThat(out).isEqualTo("Kept the plan Linen runner.\n");
    assertThat(runExactly("check", "Linen runner", "--ledger", fresh)).isEqualTo(ExitCode.SHORT);
    assertThat(err).isEmpty();
  }

  @Test
  void aFileIsReceivedOnceHoweverOftenItIsRead() {
    run("receive", "--csv", "imports/stock.csv");
    assertThat(out).isEqualTo("Received 0 skeins; 58 of the file had come before.\n");
    run("receive", "--csv", "imports/stock.csv", "--json");
    assertThat(json().toString()).isEqualTo("{\"received\":0,\"alreadyThere\":58}");
  }

  @Test
  void everyBadRowIsReportedAtOnceAndNothingIsTaken() throws IOException {
    Path file = Files.writeString(folder.resolve("bad.csv"), "code,yarn,colour,length,form\nN1,Nameless,Grey,40 m,skein\nN2,Nameless,,4 m,hank\nS001,Other,Red,1 m,ball\n");
    assertThat(run("receive", "--csv", file.toString())).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.lines())
        .containsExactly(file + ", row 3, form: found 'hank', wanted skein, cone, ball or spool", file + ", row 3, colour: found nothing, wanted the skein's colour");
    Files.writeString(file, "code,yarn,colour,length\nN1,Nameless,Grey,40 m\nS001,Other,Red,1 m\n");
    assertThat(run("receive", "--csv", file.toString())).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo(file + ", row 3, code: found 'S001', which another skein of the ledger has, wanted a code of its own\n");
    run("shelf", "nameless");
    assertThat(out).isEqualTo("No skein to show.\n");
  }

  @Test
  void theShelfIsFilteredByWordsAndSummed() {
    run("shelf", "skerry", "woad");
    assertThat(out).isEqualTo("""
        code  yarn              lot    form     free       ±  known by  reserved  on loom  where
        S004  Skerry 16/2 Woad  K-290  cone   1600 m  41.6 m  label                        Left shelf 1
        S005  Skerry 16/2 Woad  K-290  cone  731.5 m  15.6 m  weight                       Left shelf 1

        2 skeins: 2331.5 m free, 0 m reserved, 0 m on the loom.
        """);
    run("shelf", "woad", "--json");
    assertThat(json().at("/skeins/1/freeM").asText()).isEqualTo("731.5323");
  }

  @Test
  void thePlansAreListedWithTheirVerdicts() {
    run("plan", "list");
    assertThat(out).startsWith("""
        plan         verdict  stands   reserved  on loom
        Gorse shawl  SHORT    planned
        Quay towels  COVERED  planned
        """);
    run("plan", "show", "Quay towels");
    assertThat(out).startsWith("{").contains("\"name\": \"Quay towels\"");
  }

  @Test
  void aPlanOfTheLedgerIsCheckedLikeItsFile() {
    assertThat(run("check", "Quay towels", "--json")).isEqualTo(ExitCode.DONE);
    JsonNode fromLedger = json();
    runExactly("check", "imports/quay-towels.json", "--stock", "imports/stock.csv", "--json");
    assertThat(fromLedger).isEqualTo(json());
    assertThat(run("fit", "Gorse shawl", "--json")).isEqualTo(ExitCode.SHORT);
    assertThat(json().at("/fit/buy").isArray()).isTrue();
  }

  @Test
  void yarnIsReservedDrawnAndTakenBackAndTheAuditStaysSound() {
    assertThat(run("reserve", "Quay towels")).isZero();
    assertThat(out).isEqualTo("""
           58  TODAY  reserve, by Ida
               1600 m of S001 from the shelf to what is set aside for Quay towels
               1600 m of S002 from the shelf to what is set aside for Quay towels
               803.1177 m of S003 from the shelf to what is set aside for Quay towels
               518.37 m of S005 from the shelf to what is set aside for Quay towels
        """);
    assertThat(run("reserve", "Quay towels")).isZero();
    assertThat(out).isEqualTo("Nothing to change: the ledger says so already.\n");
    assertThat(run("draw", "Quay towels")).isZero();
    assertThat(run("return", "Quay towels", "S005", "18.37 m")).isZero();
    assertThat(run("release", "Quay towels")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("Nothing is reserved for Quay towels, so there is nothing to release.\n");
    assertThat(run("reverse", "58", "--reason", "too early")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("Not enough S001: what is set aside for Quay towels holds 0 m, and 1600 m would be taken (1600 m short).\n");
    assertThat(run("reverse", "60", "--reason", "never came off the loom")).isZero();
    assertThat(run("reverse", "60", "--reason", "again")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("The entry return, TODAY, by Ida has already been taken back. To bring it back, reverse its reversal.\n");
    run("journal", "--most", "2");
    assertThat(out).isEqualTo("""
           61  TODAY  reversal, by Ida: never came off the loom
               18.37 m of S005 from the shelf to the loom for Quay towels
           60  TODAY  return, by Ida
               18.37 m of S005 from the loom for Quay towels to the shelf
              taken back since

        59 earlier entries; --most 0 shows all.
        """);
    assertThat(run("audit")).isZero();
    assertThat(out).isEqualTo("The ledger is sound: 61 entries, every hash and every balance as it should be.\n");
  }

  @Test
  void aShortPlanIsNotReservedUnlessToldTo() {
    assertThat(run("reserve", "Gorse shawl")).isEqualTo(ExitCode.SHORT);
    assertThat(err).startsWith("Nothing was reserved for Gorse shawl, since it is short: ");
    assertThat(run("reserve", "Gorse shawl", "--even-if-short", "--json")).isZero();
    assertThat(json().at("/entries/0/kind").asText()).isEqualTo("RESERVE");
  }

  @Test
  void aSkeinIsRecountedAndPartedWith() {
    assertThat(run("recount", "S001", "1590 m", "--note", "weighed again")).isZero();
    assertThat(out).isEqualTo("   58  TODAY  recount, by Ida: weighed again\n       10 m of S001 from the shelf to the recounts\n");
    assertThat(run("part", "S001", "2 x 10 m")).isZero();
    assertThat(run("shelf", "S001", "--json")).isZero();
    assertThat(out).contains("\"freeM\" : 1570.0000");
    assertThat(run("journal", "--skein", "S001", "--most", "0", "--json")).isZero();
    assertThat(json().get("entries")).hasSize(3);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "check|Towels|Towels: found no plan of this name in the ledger, wanted one that plan list shows",
    "reserve|Towels|Towels: found no plan of this name in the ledger, wanted one that plan list shows",
    "check|imports/quay-towels.json|imports/quay-towels.json: found a plan file without a stock, wanted --stock STOCK.csv, or a plan of the ledger by its name",
    "reverse|999 --reason slip|There is no such entry in the journal.",
    "reverse|one --reason slip|Invalid value for positional parameter at index 0 (NUMBER): 'one' is not a long. See hankbook reverse --help.",
    "reverse|1|Missing required option: '--reason=TEXT'. See hankbook reverse --help.",
    "recount|S001 plenty|LENGTH: found 'plenty', wanted a length such as 70 cm or 2 x 70 cm + 5 cm (mm, cm, m, in, ft or yd)",
    "recount|X1 4m|There is no skein X1 in the ledger.",
    "part|S001 0m|The length must be over zero; it is 0 m.",
    "plan add|nowhere.json|nowhere.json: found no such file, wanted a file to read",
    "plan add|imports/stock.csv|imports/stock.csv, line 1: found no JSON (Unrecognized token 'code': was expecting (JSON String, Number, Array, Object or token 'null', 'true' or 'false')), wanted a plan",
  })
  void everyMistakeIsSaidInOneLine(String command, String arguments, String message) {
    List<String> words = new ArrayList<>(List.of(command.split(" ")));
    words.addAll(List.of(arguments.split(" ")));
    assertThat(run(words.toArray(String[]::new))).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo(message + "\n");
    assertThat(out).isEmpty();
  }

  @Test
  void aLedgerThatIsNotThereIsNotMadeByLookingAtIt() {
    Path nowhere = folder.resolve("nowhere");
    assertThat(runExactly("shelf", "--ledger", nowhere.toString())).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo(nowhere + ".mv.db: found no ledger here, wanted one that receive or plan add has made\n");
    assertThat(nowhere.resolveSibling("nowhere.mv.db")).doesNotExist();
  }

  @Test
  void anAddressThatIsNoLedgerIsRefused() {
    assertThat(runExactly("shelf", "--ledger", "jdbc:other:thing")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("found 'jdbc:other:thing', wanted a path, or a PostgreSQL address such as jdbc:postgresql://host/guild\n");
  }

  @Test
  void anotherPlanOfTheSameNameNeedsToBeToldToReplaceIt() throws IOException {
    Path file = Files.writeString(folder.resolve("towels.json"), Files.readString(Path.of("imports/quay-towels.json")).replace("\"count\": 4", "\"count\": 3"));
    assertThat(run("plan", "add", file.toString())).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).startsWith("There is a plan Quay towels already that says something else");
    assertThat(run("plan", "add", file.toString(), "--replace")).isZero();
    assertThat(run("plan", "put-away", "Quay towels")).isZero();
    run("plan", "list", "--json");
    assertThat(json().get("plans")).hasSize(1);
  }

  private int run(String... words) {
    List<String> all = new ArrayList<>(List.of(words));
    all.addAll(List.of("--ledger", folder.resolve("book").toString(), "--author", "Ida"));
    return runExactly(all.toArray(String[]::new));
  }

  private JsonNode json() {
    try {
      return new ObjectMapper().readTree(out);
    } catch (IOException broken) {
      throw new AssertionError(out, broken);
    }
  }

  /** Without a ledger that is not named in the words. */
  private int runExactly(String... words) {
    StringWriter printed = new StringWriter();
    StringWriter complained = new StringWriter();
    LocalDate before = LocalDate.now(ZoneId.systemDefault());
    int code = CommandLineProgram.run(words, new PrintWriter(printed), new PrintWriter(complained), NO_WINDOW);
    out = withoutDay(printed.toString(), before);
    err = withoutDay(complained.toString(), before);
    return code;
  }

  /** A test that runs over midnight may meet yesterday and today. */
  private static String withoutDay(String text, LocalDate before) {
    return text.replace(before.toString(), "TODAY").replace(before.plusDays(1).toString(), "TODAY");
  }
}
