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

/** The commands on what was paid. */
class PurchaseCommandsTest {
  private static final Window NO_WINDOW = (ledger, author) -> Optional.of("There is no window in a test.");
  private static final String BILL = """
      { "format": "hankbook-purchase/1", "date": "2026-03-01", "from": "the fair", "currency": "EUR",
        "lines": [{"words": "Two skeins", "price": "20.00", "skeins": ["A1", "A2"]}, {"words": "A cone", "price": "20.00", "skeins": ["B1"]}],
        "carriage": "10.00", "carriageBy": "mass", "duty": "4.00" }
      """;

  @TempDir private Path folder;

  private String out = "";
  private String err = "";

  @BeforeEach
  void receive() throws IOException {
    Path stock = Files.writeString(folder.resolve("stock.csv"), """
        code,yarn,colour,grist,form,length,gross,tare,cost
        A1,Skerry 16/2,Chalk,tex 100,skein,1000 m,,,9.00 EUR
        A2,Skerry 16/2,Chalk,tex 100,skein,1000 m,,,9.00 EUR
        B1,Fjara,Ash,tex 400,cone,,1000 g,200 g,
        """);
    assertThat(run("receive", "--csv", stock.toString())).isZero();
  }

  @Test
  void aPurchaseIsEnteredShownAndTakenBack() throws IOException {
    assertThat(run("purchase", "list")).isZero();
    assertThat(out).isEqualTo("No purchase yet; purchase add enters one.\n");
    assertThat(run("purchase", "add", bill(BILL))).isZero();
    String page = out;
    assertThat(page).isEqualTo("""
        Purchase 1, 2026-03-01, from the fair, entered by Ida

                    price  carriage  duty  discount   cost  a metre    a kg
        Two skeins  20.00      2.00  2.00            24.00  0.01200  120.00
          A1                                         12.00  0.01200  120.00
          A2                                         12.00  0.01200  120.00
        A cone      20.00      8.00  2.00            30.00  0.01500   37.50
          B1                                         30.00  0.01500   37.50

        In all 54.00 EUR: the skeins' costs sum to it.
        Shared over the lines: carriage by mass, duty by value.
        Whether duty or tax counts as cost, and whether any of it can be claimed back, is for your local rules and a licensed adviser to say.
        """);
    assertThat(run("purchase", "show", "1")).isZero();
    assertThat(out).isEqualTo(page);
    assertThat(run("purchase", "take-back", "1", "--reason", "sent back")).isZero();
    assertThat(out).contains("Taken back: sent back. Its skeins cost again what was said before it.");
    assertThat(run("purchase", "list")).isZero();
    assertThat(out).isEqualTo("""
        no.  date        from      skeins      goods     in all
          1  2026-03-01  the fair       3  40.00 EUR  54.00 EUR  taken back: sent back
        """);
  }

  @Test
  void whatIsShownAsAFileIsCorrectedAndEnteredAgain() throws IOException {
    run("purchase", "add", bill(BILL));
    assertThat(run("purchase", "show", "1", "--as-file")).isZero();
    String corrected = out.replace("\"20.00 EUR\"", "\"30.00 EUR\"");
    assertThat(run("purchase", "correct", "1", bill(corrected), "--reason", "misread", "--json")).isZero();
    JsonNode json = new ObjectMapper().readTree(out);
    assertThat(json.get("version").asInt()).isEqualTo(2);
    assertThat(json.get("reason").asText()).isEqualTo("misread");
    assertThat(json.get("landed").asText()).isEqualTo("74.00 EUR");
    assertThat(json.at("/lines/0/skeins/1").toString()).isEqualTo("{\"skein\":\"A2\",\"cost\":\"17.00 EUR\",\"before\":\"9.00 EUR\",\"perMetre\":0.017,\"perKilogram\":170.0}");
    assertThat(json.at("/lines/1/perMetre").asText()).isEqualTo("0.02");
    run("purchase", "list", "--json");
    assertThat(new ObjectMapper().readTree(out).at("/purchases/0/goods").asText()).isEqualTo("60.00 EUR");
  }

  /** By mass 5.175 and 1.725 of 6.90, the half coin to the first; by value 2.97 and 1.07 of 4.04; 1600 m of 8 x 840 yd to the pound are 118.108 g. */
  @Test
  void theBillOfTheSampleStudioIsEntered() {
    assertThat(run("receive", "--csv", "imports/stock.csv")).isZero();
    assertThat(run("purchase", "add", "imports/spring-fair-bill.json")).isZero();
    assertThat(out).contains("""
        Skerry 16/2 Chalk, three cones  59.40      5.18           -2.97  61.61  0.01284  173.88
          S001                                                           20.54  0.01284  173.91
          S002                                                           20.54  0.01284  173.91
          S003                                                           20.53  0.01283  173.82
        Skerry 16/2 Woad, one cone      21.40      1.72           -1.07  22.05  0.01378  186.69
        """).contains("In all 83.66 EUR").doesNotContain("local rules");
  }

  @Test
  void badInputIsSaidInOneLineAndNothingIsDone() throws IOException {
    refused(List.of("purchase", "add", bill(BILL.replace("\"duty\"", "\"tax\""))), folder.resolve("bill.json") + ", tax: found 'tax', wanted one of carriage, carriageBy, ");
    refused(List.of("purchase", "add", bill(BILL.replace("\"duty\": \"4.00\"", "\"discount\": \"40.01\""))), folder.resolve("bill.json") + ", purchase: found '40.01 EUR', wanted a discount");
    refused(List.of("purchase", "add", bill(BILL.replace("\"EUR\"", "\"SEK\""))), folder.resolve("bill.json") + ": found nothing, wanted rate and rateDate");
    refused(List.of("purchase", "add", folder.resolve("none.json").toString()), folder.resolve("none.json") + ": found no such file, wanted a file to read");
    refused(List.of("purchase", "show", "7"), "There is no purchase 7; purchase list shows those there are.");
    refused(List.of("purchase", "show", "first"), "Invalid value for positional parameter at index 0 (NUMBER): 'first' is not an int.");
    refused(List.of("purchase", "take-back", "1"), "Missing required option: '--reason=TEXT'.");
    refused(List.of("purchase", "correct", "7", bill(BILL)), "There is no purchase 7; purchase list shows those there are.");
    assertThat(run("purchase", "list", "--json")).isZero();
    assertThat(out).contains("\"purchases\" : [ ]");
  }

  private void refused(List<String> words, String message) {
    assertThat(run(words.toArray(String[]::new))).as(words.toString()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).startsWith(message);
    assertThat(err.lines()).hasSize(1);
    assertThat(out).isEmpty();
  }

  private String bill(String text) throws IOException {
    return Files.writeString(folder.resolve("bill.json"), text).toString();
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
}
