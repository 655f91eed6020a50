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

/** The commands that make metres surer and say how sure they are, on the sample studio. */
class MeasuringCommandsTest {
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
  void aWeighedSampleIsSaidWithWhatItMeansForTheShelf() {
    assertThat(run("grist", "Skerry 16/2", "--length", "10 m", "--mass", "0.70 g")).isZero();
    assertThat(out).isEqualTo("""
        Skerry 16/2 is 70 tex ± 0.65 %, by 10 m that weighed 0.7 g.
        Its yarn number, 16/2 cotton, says 73.818 tex; it is 5.2 % finer.
        The ledger's metres stay as they are until you recount. By this grist, what was weighed came to:
          S005 (Woad): 771.4 m, and the ledger took 731.5 m
        Weigh again what is left of each, then, for one: recount S005 --gross '92 g' --tare '38 g'.
        """);
    run("shelf", "woad");
    assertThat(out).isEqualTo("""
        code  yarn              lot    form     free       ±  known by  reserved  on loom  where
        S004  Skerry 16/2 Woad  K-290  cone   1600 m  41.6 m  label                        Left shelf 1
        S005  Skerry 16/2 Woad  K-290  cone  731.5 m  40.6 m  weight                       Left shelf 1

        2 skeins: 2331.5 m free, 0 m reserved, 0 m on the loom.
        By the grist that was weighed these hold other metres, weigh them again and recount: S005.
        """);
    assertThat(run("recount", "S005", "--gross", "92 g", "--tare", "38 g")).isZero();
    run("shelf", "S005", "--json");
    assertThat(json().at("/skeins/0/freeM").asText()).isEqualTo("771.4286");
    assertThat(json().at("/skeins/0/uncertaintyM").asText()).isEqualTo("7.6951");
    assertThat(json().at("/skeins/0/recount").asBoolean()).isFalse();
    assertThat(json().at("/skeins/0/knownBy").asText()).isEqualTo("weight");
  }

  @Test
  void aSkeinThatWasWeighedBeforeItsGristIsSaidToBeRecounted() throws IOException {
    Path more = Files.writeString(folder.resolve("more.csv"), "code,yarn,colour,gross,tare\nN1,Skerry 16/2,Woad,70 g,0 g\n");
    run("receive", "--csv", more.toString());
    run("grist", "Skerry 16/2", "--length", "10 m", "--mass", "0.70 g");
    assertThat(out).contains("\nN1 (Woad) was weighed when no grist was known and counts as nothing; it would be 1000 m: recount it by weight.\n");
    run("grist", "Skerry 16/2", "--json");
    assertThat(json().at("/grists/0/unmeasured").toString()).isEqualTo("[{\"skein\":\"N1\",\"lengthM\":1000.0}]");
    run("check", "Quay towels");
    assertThat(out).contains("skein N1 was weighed when no grist of it was known; it counts as nothing.");
  }

  @Test
  void theGristsAreListedAndASampleIsForgotten() {
    run("grist", "Tussock", "--length", "20 m", "--mass", "1.13 g", "--division", "5 mg", "--within", "2 cm", "--json");
    assertThat(json().at("/grists/0").toString()).startsWith(
        "{\"yarn\":\"Tussock\",\"yarnNumbers\":[\"5.5 run\"],\"sample\":{\"lengthM\":20.0,\"massG\":1.13,\"divisionG\":0.005,\"withinM\":0.02,\"tex\":56.5,\"uncertainty\":0.001896}");
    run("grist");
    assertThat(out).contains("Tussock      5.5 run          56.5  0.19 %  20 m that weighed 1.13 g\n").contains("Gorse        tex 100           100          its yarn number\n");
    run("grist", "Tussock", "--forget");
    assertThat(out).isEqualTo("Tussock is 5.5 run by its yarn number, 56.4 tex; no sample of it rules.\n");
  }

  @Test
  void aSampleThatCannotBeIsRefusedAndNothingChanges() {
    assertThat(run("grist", "Tussock", "--length", "10 m", "--mass", "1 g")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("grist: found '1 g on a balance of 1 g', wanted a longer sample or a finer balance: the grist would be known to 41 % only\n");
    assertThat(run("grist", "Tussok", "--length", "10 m", "--mass", "0.56 g")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).startsWith("There is no skein of the yarn Tussok in the ledger; give the yarn's name alone");
    assertThat(run("grist", "--length", "10 m", "--mass", "0.56 g")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(run("grist", "Tussock", "--length", "10 m")).isEqualTo(ExitCode.BAD_INPUT);
    run("grist", "Tussock", "--json");
    assertThat(json().at("/grists/0/sample").isNull()).isTrue();
  }

  @Test
  void aSampleFarFromTheYarnNumberIsDoubted() {
    run("grist", "Gorse", "--length", "10 m", "--mass", "0.500 g");
    assertThat(out).contains("Its yarn number, tex 100, says 100 tex; it is 50 % finer. That is much: see that length, mass and yarn number are right.");
  }

  @Test
  void settingsAreListedSetAndPutBack() {
    run("settings");
    assertThat(out).startsWith("""
        key                     value  default  what it is
        label                     3 %           uncertainty of a length that is only printed, with no mass to judge it by
        """);
    assertThat(run("settings", "riskLimit", "15%")).isZero();
    assertThat(out).isEqualTo("riskLimit is 15 %, the risk of running short over which a yarn is tight; the default is 5 %.\n");
    run("check", "Ash blanket", "--json");
    assertThat(json().at("/cover/0/verdict").asText()).isEqualTo("COVERED");
    run("settings", "riskLimit", "default");
    run("check", "Ash blanket", "--json");
    assertThat(json().at("/cover/0/verdict").asText()).isEqualTo("TIGHT");
    run("settings", "--json");
    assertThat(json().at("/settings/4").toString()).startsWith("{\"key\":\"riskLimit\",\"value\":\"5 %\",\"default\":\"5 %\"");
  }

  @Test
  void aSettingThatCannotBeIsRefused() {
    assertThat(run("settings", "riskLimit", "60 %")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("riskLimit: found '60 %', wanted from 0.01 % to 50 %\n");
    assertThat(run("settings", "remnant", "3 %")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(run("settings", "luck")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).startsWith("KEY: found 'luck', wanted one of label, balance,");
  }

  @Test
  void aCheckSaysTheRiskInWordsAndWhatMakesItSo() {
    run("check", "Ash blanket", "--why");
    assertThat(out).contains("TIGHT, about 1 in 9\n").contains("""
        Fjara 2/20 Ash: ± 45 m, as the root of the squares of
                 45 m  labels, 3 skeins
          Risk of running short: about 1 in 9 (10.9 %).
        """);
    run("check", "Ash blanket", "--json");
    assertThat(json().at("/cover/0/riskWords").asText()).isEqualTo("about 1 in 9");
    assertThat(json().at("/cover/0/uncertaintyParts").toString()).isEqualTo("[{\"cause\":\"labels\",\"skeins\":3,\"uncertaintyM\":45.0}]");
  }

  @Test
  void whatIsTypedIsRefusedWithTheOptionItStoodAt() {
    assertThat(run("grist", "Tussock", "--length", "10", "--mass", "1 g")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).startsWith("--length: found '10', wanted a length");
    assertThat(run("recount", "S005", "--gross", "92", "--tare", "0 g")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).startsWith("--gross: found '92', wanted");
    assertThat(run("recount", "S005", "--turns", "many", "--reel", "2 m")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).startsWith("--turns: found 'many', wanted");
    assertThat(run("recount", "S005", "far")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).startsWith("LENGTH: found 'far', wanted");
  }

  @Test
  void aRecountFarFromTheBookSaysSoAndHowItIsTakenBack() {
    assertThat(run("recount", "S005", "--gross", "920 g", "--tare", "38 g")).isZero();
    assertThat(out).contains("S005 holds 11948.4 m now, and the book had 731.5 m: 11216.8 m more.\nIf that is a slip, reverse ").endsWith(" --reason 'a slip' takes it back.\n");
    assertThat(run("recount", "S005", "731.5323 m", "--json")).isZero();
    assertThat(json().at("/farOff/bookM").asText()).startsWith("11948.");
    assertThat(json().at("/farOff/labelM").isNull()).isTrue();
    assertThat(run("recount", "S004", "1700 m")).isZero();
    assertThat(out).doesNotContain("slip");
    assertThat(run("recount", "S004", "1800 m", "--json")).isZero();
    assertThat(json().at("/farOff/bookM").isNull()).isTrue();
    assertThat(json().at("/farOff/labelM").asText()).isEqualTo("1600.0");
  }

  @Test
  void aRecountWantsOneWayOfMeasuring() {
    assertThat(run("recount", "S005", "--turns", "350", "--reel", "2 m")).isZero();
    assertThat(run("recount", "S005", "700 m")).isZero();
    assertThat(out).startsWith("Nothing to change");
    assertThat(run("recount", "S005")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(run("recount", "S005", "700 m", "--gross", "92 g", "--tare", "38 g")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(run("recount", "S005", "--gross", "92 g")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(run("recount", "S005", "--gross", "92 g", "--tare", "93 g")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).isEqualTo("--gross and --tare: found '93 g', wanted a tare of at most the gross, 92 g\n");
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
