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
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A plan finished on the command line; the numbers are those worked by hand in the test of the use case. */
class FinishCommandTest {
  private static final Window NO_WINDOW = (ledger, author) -> Optional.of("There is no window in a test.");

  @TempDir private Path folder;

  private String out = "";
  private String err = "";

  @BeforeEach
  void windTheScarf() throws IOException {
    Path stock = Files.writeString(folder.resolve("stock.csv"), "code,yarn,colour,fibre,grist,length\nA,Fjara,Ash,wool,tex 100,500 m\nB,Fjara,Moss,wool,tex 100,400 m\n");
    Path plan = Files.writeString(folder.resolve("scarf.json"), """
        { "format": "hankbook-plan/1", "name": "Scarf",
          "warp": {"sett": "5/cm", "ends": 100, "length": "3 m", "order": [{"yarn": "Fjara", "colour": "Ash", "ends": 100}]},
          "weft": [{"yarn": "Fjara", "colour": "Moss", "picks": "5/cm", "length": "2 m"}] }
        """);
    run("receive", "--csv", stock.toString());
    run("plan", "add", plan.toString());
    run("reserve", "Scarf");
    run("draw", "Scarf");
  }

  @Test
  void theFormIsFilledInLookedAtAndPosted() throws IOException {
    assertThat(run("finish", "Scarf", "--form")).isZero();
    String filled = out.replaceFirst("\"left\" : \"\"", "\"left\" : \"190 m\"").replaceFirst("\"left\" : \"\"", "\"left\" : \"220 m\"").replaceFirst("\"mass\" : \"\"", "\"mass\" : \"3.1 g\"");
    assertThat(run("finish", "Scarf", "--actuals", file(filled), "--preview")).isZero();
    assertThat(out.lines().skip(1)).containsExactly("""

        skein  yarn        drawn  taken more  back   used  samples  thrums  woven
        A      Fjara Ash   300 m        10 m        310 m             31 m  279 m
        B      Fjara Moss  200 m              20 m  180 m                   180 m

        yarn        planned   used       ±  unexplained  may stay
        Fjara Ash     300 m  310 m  26.6 m          0 m     9.3 m
        Fjara Moss    200 m  180 m  21.8 m          0 m     5.4 m
        """.lines().toArray(String[]::new));
    assertThat(run("finish", "Scarf", "--actuals", file(filled))).isZero();
    assertThat(out).endsWith("Scarf is finished: its loom is empty, and nothing is reserved for it.\n");
    run("plan", "list", "--json");
    assertThat(json().at("/plans/0/stands").asText()).isEqualTo("squared");
    run("plan", "list");
    assertThat(out).contains("Scarf           squared");
    assertThat(run("audit")).isZero();
  }

  @Test
  void asJsonItIsOneObject() throws IOException {
    String found = file("{\"format\": \"hankbook-actuals/1\", \"leftovers\": [{\"skein\": \"A\", \"left\": \"190 m\"}, {\"skein\": \"B\", \"left\": \"220 m\"}]}");
    run("finish", "Scarf", "--actuals", found, "--preview", "--json");
    assertThat(json().has("entries")).isFalse();
    assertThat(json().at("/movements/0").toString()).isEqualTo("{\"kind\":\"DRAW\",\"skein\":\"A\",\"from\":\"SHELF\",\"to\":\"LOOM(Scarf)\",\"lengthM\":10.0}");
    run("finish", "Scarf", "--actuals", found, "--json");
    assertThat(json().at("/entries").size()).isEqualTo(3);
    assertThat(json().at("/yarns/0/usedM").asText()).isEqualTo("310.0");
    assertThat(json().at("/skeins/1/returnedM").asText()).isEqualTo("20.0");
    run("finish", "Scarf", "--actuals", found, "--again", "the same again", "--json");
    assertThat(json().at("/entries").size()).as("the same yarn").isZero();
    run("finish", "Scarf", "--actuals", found, "--again", "the same again");
    assertThat(out).startsWith("The same yarn as before, so nothing was posted; what else was found is kept.\n");
    String other = file("{\"format\": \"hankbook-actuals/1\", \"leftovers\": [{\"skein\": \"A\", \"left\": \"190 m\"}, {\"skein\": \"B\", \"left\": \"221 m\"}]}");
    run("finish", "Scarf", "--actuals", other, "--again", "weighed again", "--json");
    assertThat(json().at("/entries").size()).isEqualTo(6);
    assertThat(run("finish", "Scarf", "--take-back", "not cut off yet", "--json")).isZero();
    assertThat(json().at("/entries/0/note").asText()).isEqualTo("not cut off yet");
  }

  @Test
  void badInputIsSaidOnOneLineAndNothingIsDone() throws IOException {
    String unsaid = file("{\"format\": \"hankbook-actuals/1\", \"leftovers\": [{\"skein\": \"A\", \"left\": \"190 m\"}]}");
    assertThat(run("finish", "Scarf", "--actuals", unsaid)).isEqualTo(2);
    assertThat(err).isEqualTo("It is not said what is left of B, which was drawn. Nothing was posted.\n");
    String other = file("{\"format\": \"hankbook-actuals/1\", \"plan\": \"Shawl\"}");
    assertThat(run("finish", "Scarf", "--actuals", other)).isEqualTo(2);
    assertThat(err).endsWith("found.json, plan: found 'Shawl', wanted Scarf, or none\n");
    String allUsed = file("{\"format\": \"hankbook-actuals/1\", \"leftovers\": [{\"skein\": \"A\", \"usedUp\": \"yes\"}, {\"skein\": \"B\", \"left\": \"220 m\"}]}");
    assertThat(run("finish", "Scarf", "--actuals", allUsed)).isEqualTo(2);
    assertThat(err).startsWith("What was used cannot be explained without a reason: Fjara Ash 148 m more than explained, and 15 m may stay so.");
    assertThat(run("finish", "Scarf", "--actuals", allUsed, "--preview")).isZero();
    assertThat(out).endsWith("A reason is asked for: give it with --reason, or in the file.\n");
    assertThat(run("finish", "Scarf", "--take-back", "x")).isEqualTo(2);
    assertThat(run("finish", "Scarf")).isEqualTo(2);
    assertThat(err).contains("--actuals").doesNotContain("\tat ");
    assertThat(run("finish", "Shawl", "--form")).isEqualTo(2);
    assertThat(err).startsWith("Shawl: found no plan of this name in the ledger");
    run("journal", "--json");
    assertThat(json().at("/entries").size()).isEqualTo(4);
    assertThat(run("finish", "Scarf", "--actuals", allUsed, "--reason", "the cat had it")).isZero();
  }

  private String file(String text) throws IOException {
    return Files.writeString(folder.resolve("found.json"), text).toString();
  }

  private JsonNode json() throws IOException {
    return new ObjectMapper().readTree(out);
  }

  private int run(String... args) {
    StringWriter written = new StringWriter();
    StringWriter failed = new StringWriter();
    List<String> all = new ArrayList<>(List.of(args));
    all.addAll(List.of("--ledger", folder.resolve("book").toString(), "--author", "Ida"));
    int code = CommandLineProgram.run(all.toArray(String[]::new), new PrintWriter(written), new PrintWriter(failed), NO_WINDOW);
    out = written.toString().replace(System.lineSeparator(), "\n");
    err = failed.toString().replace(System.lineSeparator(), "\n");
    return code;
  }
}
