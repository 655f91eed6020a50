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

class CheckCommandTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private static final Window NO_WINDOW = (ledger, author) -> Optional.of("There is no window in a test.");

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({"quay-towels, 0, COVERED, ''", "ash-blanket, 0, TIGHT, TIGHT", "gorse-shawl, 3, SHORT, SHORT", "linen-runner, 3, SHORT, BROKEN_ENDS"})
  void theSamplePlansGetTheirVerdicts(String plan, int code, String verdict, String warning) throws IOException {
    assertThat(run("check", "imports/" + plan + ".json", "--stock", "imports/stock.csv", "--json")).isEqualTo(code);
    JsonNode answer = new ObjectMapper().readTree(out.toString());
    assertThat(answer.at("/cover/0/verdict").asText()).isEqualTo(verdict);
    assertThat(answer.at("/warnings/0/code").asText()).isEqualTo(warning);
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void thePartsOfTheAnswerSumToTheWarpAndTheAllotmentToTheNeed() throws IOException {
    run("check", "imports/quay-towels.json", "--stock", "imports/stock.csv", "--json");
    JsonNode answer = new ObjectMapper().readTree(out.toString());
    double parts = 0;
    for (JsonNode part : answer.at("/warp/parts")) {
      parts += part.get("lengthM").asDouble();
    }
    assertThat(Math.round(parts * 10_000)).isEqualTo(Math.round(answer.at("/warp/lengthM").asDouble() * 10_000));
    double needs = 0;
    double shares = 0;
    for (JsonNode need : answer.get("needs")) {
      needs += need.get("lengthM").asDouble();
    }
    for (JsonNode share : answer.get("allotment")) {
      shares += share.get("lengthM").asDouble();
    }
    assertThat(Math.round(shares * 10_000)).isEqualTo(Math.round(needs * 10_000));
  }

  @Test
  void aYarnThatIsNotOnTheShelfIsSaid() throws IOException {
    Path stock = Files.writeString(folder.resolve("stock.csv"), "code,yarn,colour\n1,Skerry 16/2,Chalk\n");
    assertThat(run("check", "imports/quay-towels.json", "--stock", stock.toString())).isEqualTo(ExitCode.SHORT);
    assertThat(out.toString())
        .contains("Skerry 16/2 Woad: no skein of this yarn and colour is on the shelf.")
        .contains("skein 1 has no length, nor a weight with a grist");
  }

  @Test
  void filesThatBeginWithAByteOrderMarkAreRead() throws IOException {
    Path plan = Files.writeString(folder.resolve("plan.json"), "\uFEFF" + Files.readString(Path.of("imports/quay-towels.json")));
    Path stock = Files.writeString(folder.resolve("stock.csv"), "\uFEFF" + Files.readString(Path.of("imports/stock.csv")));
    assertThat(run("check", plan.toString(), "--stock", stock.toString())).isEqualTo(ExitCode.DONE);
  }

  @Test
  void aShortPlanIsSentToFitWhichNamesWhatWouldMakeItFit() throws IOException {
    run("check", "imports/linen-runner.json", "--stock", "imports/stock.csv");
    assertThat(out.toString()).contains("What would make it fit: see fit.");
    assertThat(run("fit", "imports/linen-runner.json", "--stock", "imports/stock.csv")).isEqualTo(ExitCode.SHORT);
    assertThat(out.toString())
        .contains("Longest warp for its 530 ends: 5.2 m, 0.02 m less than planned")
        .contains("  Wind a warp of 5.2 m instead of 5.22 m. (0.4 %)")
        .contains("Holm 40/2 Flaxen for Holm 40/2 Bleached: 7590.16 m free, colour difference 19.1, covers it");
  }

  @Test
  void aPlanThatIsCoveredIsToldWhatMoreTheShelfAllows() throws IOException {
    assertThat(run("fit", "imports/quay-towels.json", "--stock", "imports/stock.csv")).isEqualTo(ExitCode.DONE);
    assertThat(out.toString()).contains("6.46 m, 1.79 m more than planned").contains("Longest piece: 88 cm, planned 70 cm").doesNotContain("What would make it fit");
  }

  @Test
  void theFitKeepsItsKeysAndAddsRemediesAndStandIns() throws IOException {
    run("fit", "imports/gorse-shawl.json", "--stock", "imports/stock.csv", "--json");
    JsonNode fit = new ObjectMapper().readTree(out.toString()).get("fit");
    assertThat(fit.at("/longestWarpM").decimalValue()).isEqualByComparingTo("0");
    assertThat(fit.at("/warpAloneM").decimalValue()).isEqualByComparingTo("2.68");
    assertThat(fit.at("/mostEnds").asInt()).isEqualTo(255);
    assertThat(fit.at("/mostPieces").asInt()).isZero();
    assertThat(fit.at("/buy/0/putUps").asInt()).isEqualTo(4);
    assertThat(fit.at("/buy/0/total").asText()).isEqualTo("76.00 EUR");
    assertThat(fit.at("/closestSett").isNull()).isTrue();
    assertThat(fit.at("/remedies/0/remedy").asText()).isEqualTo("narrower");
    assertThat(fit.at("/standIns/0/colour").asText()).isEqualTo("Pearl");
    assertThat(fit.at("/standIns/0/covers").asBoolean()).isFalse();
  }

  @Test
  void aWarpThatWasGivenTooShortForItsPiecesIsWarnedOf() throws IOException {
    String text = Files.readString(Path.of("imports/quay-towels.json")).replace("\"sett\": \"10/cm\"", "\"sett\": \"10/cm\", \"length\": \"0.5 m\"");
    Path plan = Files.writeString(folder.resolve("plan.json"), text);
    run("check", plan.toString(), "--stock", "imports/stock.csv");
    assertThat(out.toString()).contains("Skerry 16/2 Chalk: the warp of 0.5 m is 4.16 m shorter than its pieces, waste and sampling take.");
  }

  @Test
  void aConeThatWasWeighedNeedsTheWeightOfTheEmptyCone() throws IOException {
    Path stock = Files.writeString(folder.resolve("stock.csv"), "code,yarn,colour,grist,form,gross\n1,Skerry,Chalk,Nm 10,cone,140 g\n");
    assertThat(run("check", "imports/quay-towels.json", "--stock", stock.toString())).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString().strip()).isEqualTo(stock + ", row 2, tare: found nothing, wanted the weight of the empty cone, 0 g where there is none");
  }

  @Test
  void badInputIsOneLineAFaultAndNoAnswer() throws IOException {
    Path stock = Files.writeString(folder.resolve("stock.csv"), "code,yarn,colour,length\n1,Skerry,Chalk,five\n");
    assertThat(run("check", "imports/quay-towels.json", "--stock", stock.toString(), "--json")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString().strip()).isEqualTo(stock + ", row 2, length: found 'five', wanted a length such as 70 cm or 2 x 70 cm + 5 cm (mm, cm, m, in, ft or yd)");
  }

  @Test
  void sharesThatDoNotSumAreSaid() throws IOException {
    String text = Files.readString(Path.of("imports/quay-towels.json")).replace("0.8", "0.7");
    Path plan = Files.writeString(folder.resolve("plan.json"), text);
    assertThat(run("check", plan.toString(), "--stock", "imports/stock.csv")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString().strip()).isEqualTo(plan + ": found '0.9', wanted shares of the warp's order that sum to 1");
  }

  @Test
  void aMissingFileAndAMisspeltOptionAreSaid() {
    assertThat(run("check", "nowhere.json", "--stock", "imports/stock.csv")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString().strip()).isEqualTo("nowhere.json: found no such file, wanted a file to read");
    assertThat(run("check", "imports/quay-towels.json", "--shelf", "x")).isEqualTo(ExitCode.BAD_INPUT);
  }

  private int run(String... args) {
    return CommandLineProgram.run(args, new PrintWriter(out), new PrintWriter(err), NO_WINDOW);
  }
}
