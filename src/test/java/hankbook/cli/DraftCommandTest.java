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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A draft that was drawn elsewhere, from its file to a plan that can be checked. */
class DraftCommandTest {
  private static final Window NO_WINDOW = (ledger, author) -> Optional.of("There is no window in a test.");
  private static final String SCARF = "imports/heron-scarf.wif";

  @TempDir private Path folder;

  private String out = "";
  private String err = "";

  @Test
  void aDraftIsShownWithItsOrderAndTheNearestYarns() {
    assertThat(run("draft", SCARF, "--stock", "imports/stock.csv")).isZero();
    assertThat(out).isEqualTo("""
        Heron scarf

        Warp: 180 ends, 12/cm as the draft spaces them
          there and back, turning on 4 C: (16 A; then 6 times: 4 B, 8 A; then 4 C)
        Weft: 32 picks to the repeat, 12/cm as the draft spaces them
          24 A, 2 C, 4 B, 2 C
        Loom: 8 shafts, 8 treadles
          heddles: 23 on 1, 23 on 2, 23 on 3, 23 on 4, 22 on 5, 22 on 6, 22 on 7, 22 on 8

           colour   ends  picks  nearest on the shelf
        A  #8e8a82   128     24  Fjara 2/20 Ash (0.6), Holm 40/2 Flaxen (18.1), Skerry 16/2 Moss (20.1)
        B  #a6332e    48      4  Fjara 2/20 Madder (0.5), Skerry 16/2 Rust (9.0), Tussock Peat (23.1)
        C  #d9b53d     4      4  Fjara 2/20 Weld (1.2), Gorse Gold (8.8), Holm 40/2 Flaxen (13.2)

        In brackets, how far off a yarn's colour looks (CIEDE2000): 1 can just be told apart, black lies 100 from white.

        To begin a plan of it, add --plan NAME and a --match 'A=YARN, COLOUR' for each colour, or --nearest for the rest.
        """);
  }

  @Test
  void theAnswerIsOneJsonObject() throws IOException {
    run("draft", SCARF, "--stock", "imports/stock.csv", "--yarn", "skerry 16/2", "--json");
    JsonNode answer = new ObjectMapper().readTree(out);
    assertThat(answer.at("/warp/order").asText()).isEqualTo("there and back (16 A, 6 x (4 B, 8 A), 4 C)");
    assertThat(answer.at("/warp/ends").asInt()).isEqualTo(180);
    assertThat(answer.at("/colours/1/nearest/0").toString()).isEqualTo("{\"yarn\":\"Skerry 16/2\",\"colour\":\"Rust\",\"hex\":\"#9a4a2b\",\"difference\":9.0,\"heldM\":3200.0}");
  }

  @Test
  void aPlanIsBegunInAFileThatIsNeverOverwritten() throws IOException {
    Path plan = folder.resolve("plan.json");
    String[] begin = {
      "draft", SCARF, "--stock", "imports/stock.csv", "--plan", "Heron scarf", "--match", "A=fjara 2/20, ash", "--match", "weft c=Gorse, Gold", "--match", "#A6332E=Loft, Brick", "--nearest", "--out",
      plan.toString()
    };
    assertThat(run(begin)).as(err).isZero();
    assertThat(out).isEqualTo("Wrote the plan Heron scarf into " + plan + ".\n" + """
           colour    threads  yarn             off
        A  #8e8a82  128 ends  Fjara 2/20 Ash   0.6
        B  #a6332e   48 ends  Loft Brick            not on the shelf
        C  #d9b53d    4 ends  Fjara 2/20 Weld  1.2
        A  #8e8a82  24 picks  Fjara 2/20 Ash   0.6
        B  #a6332e   4 picks  Loft Brick            not on the shelf
        C  #d9b53d   4 picks  Gorse Gold       8.8

        Still to be entered before it can be checked: pieces.
        """);
    String written = Files.readString(plan);
    assertThat(run(begin)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo(plan + ": found a file here already, wanted a name that is free\n");
    assertThat(Files.readString(plan)).isEqualTo(written);
  }

  @Test
  void withItsPiecesThePlanIsChecked() throws IOException {
    Path plan = folder.resolve("plan.json");
    run("draft", SCARF, "--stock", "imports/stock.csv", "--plan", "Heron scarf", "--nearest", "--out", plan.toString(), "--json");
    assertThat(new ObjectMapper().readTree(out).toString()).isEqualTo("{\"plan\":\"Heron scarf\",\"file\":\"" + plan + "\",\"wanting\":[\"pieces\"]}");
    Files.writeString(plan, Files.readString(plan).replaceFirst("\\{", "{\"pieces\": [{\"length\": \"180 cm\", \"width\": \"15 cm\"}],"));
    assertThat(run("check", plan.toString(), "--stock", "imports/stock.csv")).isEqualTo(ExitCode.DONE);
    assertThat(out).contains("Warp: 180 ends, 15 cm in the reed, each 1.8 m");
  }

  @Test
  void aPlanIsBegunInTheLedgerUnlessItsNameIsTaken() {
    String ledger = folder.resolve("book").toString();
    run("receive", "--csv", "imports/stock.csv", "--ledger", ledger);
    assertThat(run("draft", SCARF, "--plan", "Heron scarf", "--nearest", "--ledger", ledger)).isZero();
    assertThat(out).startsWith("Kept the plan Heron scarf.\n");
    run("plan", "show", "Heron scarf", "--ledger", ledger);
    assertThat(out).contains("\"succession\" : \"there and back (16 Ash, 6 x (4 Madder, 8 Ash), 4 Weld)\"");
    assertThat(run("draft", SCARF, "--plan", " Heron scarf", "--nearest", "--ledger", ledger)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("There is a plan Heron scarf already; give this one another name.\n");
  }

  @Test
  void everyColourWithoutAYarnIsNamed() {
    assertThat(run("draft", SCARF, "--stock", "imports/stock.csv", "--plan", "P", "--match", "A=Loft, Oatmeal", "--match", "warp B=Loft, Brick")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.lines()).containsExactly(
        SCARF + ", warp: found no yarn for C (#d9b53d), wanted --match for each colour, or --nearest for the rest",
        SCARF + ", weft: found no yarn for B (#a6332e), wanted --match for each colour, or --nearest for the rest",
        SCARF + ", weft: found no yarn for C (#d9b53d), wanted --match for each colour, or --nearest for the rest");
    assertThat(run("draft", "src/test/resources/drafts/bare.wif", "--stock", "imports/stock.csv", "--plan", "P", "--nearest")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("src/test/resources/drafts/bare.wif, warp: found no yarn for A (no colour), wanted --match for what no yarn of the shelf comes near\n");
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '\u0001', textBlock = """
      D=Loft, Oatmeal           | found 'D', wanted one of the draft's colours, A (#ffffff), B (#000000)
      #123456=Loft, Oatmeal     | found '#123456', wanted one of the draft's colours, A (#ffffff), B (#000000)
      A=Loft                    | found 'A=Loft', wanted a colour of the draft and a yarn with its colour, such as 'A=Skerry 16/2, Woad' or 'weft A=Skerry 16/2, Chalk'
      A Loft, Oatmeal           | found 'A Loft, Oatmeal', wanted a colour of the draft and a yarn with its colour, such as 'A=Skerry 16/2, Woad' or 'weft A=Skerry 16/2, Chalk'
      A=Loft,                   | found nothing, wanted the colour's name
      A=, Oatmeal               | found nothing, wanted the yarn's name
      weft A=Loft, Oatmeal      | found 'weft A', wanted a colour that comes in the weft
      """)
  void aMatchThatCannotBeTakenIsNamed(String match, String message) {
    assertThat(run("draft", "src/test/resources/drafts/lift-plan.wif", "--stock", "imports/stock.csv", "--plan", "P", "--match", match)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("--match '" + match + "': " + message + "\n");
  }

  @Test
  void aColourMatchedTwiceIsRefused() {
    run("draft", SCARF, "--stock", "imports/stock.csv", "--plan", "P", "--match", "A=Loft, Oatmeal", "--match", "#8e8a82=Loft, Grey");
    assertThat(err).isEqualTo("--match '#8e8a82=Loft, Grey': found '#8e8a82=Loft, Grey', wanted each colour matched once\n");
  }

  @Test
  void whatDoesNotGoTogetherIsSaid() {
    assertThat(run("draft", SCARF, "--stock", "imports/stock.csv", "--nearest")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("--plan: found nothing, wanted a name for the plan beside --match, --nearest and --out\n");
    run("draft", SCARF, "--stock", "imports/stock.csv", "--plan", " ");
    assertThat(err).isEqualTo("--plan: found nothing, wanted a name for the plan\n");
    run("draft", SCARF, "--stock", "imports/stock.csv", "--yarn", "Lofty");
    assertThat(err).startsWith("--yarn: found 'Lofty', wanted a yarn of the shelf: Barrow 8/2, Fjara 2/20, ");
    run("draft", SCARF, "--ledger", folder.resolve("nowhere").toString());
    assertThat(err).contains("found no ledger here");
    run("draft", "nowhere.wif", "--stock", "imports/stock.csv");
    assertThat(err).isEqualTo("nowhere.wif: found no such file, wanted a file to read\n");
    run("draft", "imports/quay-towels.json", "--stock", "imports/stock.csv");
    assertThat(err).isEqualTo("imports/quay-towels.json, line 1: found '{', wanted a section in square brackets such as [WARP]\n");
  }

  private int run(String... args) {
    StringWriter answer = new StringWriter();
    StringWriter errors = new StringWriter();
    int code = CommandLineProgram.run(args, new PrintWriter(answer), new PrintWriter(errors), NO_WINDOW);
    out = answer.toString();
    err = errors.toString();
    return code;
  }
}
