package hankbook.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.entry;

import hankbook.measure.Unreadable;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SuccessionTest {
  /** Counted by hand: 12 × 6 + 6 = 78 of Chalk, 12 × 2 = 24 of Woad. */
  @Test
  void anOrderIsCountedAndReadBackInWords() {
    Succession order = Succession.parse("12 x (6 Chalk, 2 Woad), 6 Chalk");
    assertThat(order.threads()).isEqualTo(102);
    assertThat(order.counts()).containsExactly(entry("Chalk", 78L), entry("Woad", 24L));
    assertThat(order.words()).isEqualTo("12 times: 6 Chalk, 2 Woad; then 6 Chalk");
    assertThat(order.sumInWords("ends")).isEqualTo("102 ends, 78 Chalk and 24 Woad");
    assertThat(order).hasToString("12 x (6 Chalk, 2 Woad), 6 Chalk");
  }

  /** Written out by hand. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      6 Chalk                                        | CCCCCC
      Chalk, Woad                                    | CW
      2 x (2 Chalk, Woad)                            | CCWCCW
      2 times (2 Chalk, Woad)                        | CCWCCW
      (2 Chalk, Woad) x 2                            | CCWCCW
      2x(2 Chalk,Woad),3Madder                       | CCWCCWMMM
      2 × (Chalk, 2 * (Woad, Madder))                | CWMWMCWMWM
      2 x 2 x (Chalk, Woad)                          | CWCWCWCW
      mirror (2 Chalk, Woad)                         | CCWWCC
      there and back (2 Chalk, 2 Woad)               | CCWWCC
      (2 Chalk, Woad, 3 Madder) and back             | CCWMMMWCC
      there and back (Chalk)                         | C
      mirror (Chalk)                                 | CC
      2 x mirror (Chalk, Woad)                       | CWWCCWWC
      2 x there and back (Chalk, Woad), Madder       | CWCCWCM
      (Chalk, Woad) and back x 2                     | CWCCWC
      there and back (Chalk, 2 x (Woad, Madder))     | CWMWMWMWC
      there and back (Chalk, 3 x (2 Woad))           | CWWWWWWC
      mirror (there and back (Chalk, Woad), Madder)  | CWCMMCWC
      there and back (mirror (Woad, Chalk), 2 Madder, mirror (Chalk, 2 Woad)) | WCCWMMCWWWWCWWWWCMMWCCW
      (Chalk, Woad), Madder                          | CWM
      MIRROR (Chalk, Woad)                           | CWWC
      """)
  void whatIsWrittenComesInItsOrder(String text, String threads) {
    Succession order = Succession.parse(text);
    StringBuilder each = new StringBuilder();
    for (long i = 0; i < order.threads(); i++) {
      each.append(order.at(i).charAt(0));
    }
    assertThat(each).hasToString(threads.strip());
    assertThat(written(order.runs(Integer.MAX_VALUE))).isEqualTo(threads.strip());
    assertThat(Succession.parse(order.toString())).isEqualTo(order);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '\u0001', textBlock = """
      6 "2/8 Chalk"             | 6 "2/8 Chalk"        | 2/8 Chalk
      6 Deep Woad 3             | 6 Deep Woad 3        | Deep Woad 3
      "x"                       | 1 "x"                | x
      6 "a ""fine"" one"        | 6 "a ""fine"" one"   | a "fine" one
      2 "Woad (old), washed"    | 2 "Woad (old), washed" | Woad (old), washed
      "Chalk"                   | 1 Chalk              | Chalk
      xenon                     | 1 xenon              | xenon
      6 "mirror"                | 6 "mirror"           | mirror
      """)
  void aMarkMayHaveSpacesAndDigitsAndAnythingInQuotes(String text, String form, String mark) {
    Succession order = Succession.parse(text);
    assertThat(order.marks()).containsExactly(mark);
    assertThat(order).hasToString(form.strip());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '\u0001', textBlock = """
      6 Chalk,                  | found nothing, wanted a mark such as Chalk at character 9 of the order
      12 x (6 Chalk, 2 Woad     | found nothing, wanted a comma or a closing bracket at character 22 of the order
      6 Chalk), 2 Woad          | found '), 2 Woad', wanted no closing bracket, as none is open, at character 8 of the order
      12 x 6 Chalk, 2 Woad      | found '6 Chalk, 2 Woad', wanted brackets round what comes 12 times, at character 6 of the order
      12 x Chalk                | found 'Chalk', wanted brackets round what comes 12 times, at character 6 of the order
      2,5 Chalk                 | found ',5 Chalk', wanted a mark such as Chalk at character 2 of the order
      2.5 Chalk                 | found '.5 Chalk', wanted a whole count and a mark such as 6 Chalk at character 2 of the order
      2 + 3 Chalk               | found '+ 3 Chalk', wanted a whole count and a mark such as 6 Chalk at character 3 of the order
      0 Chalk                   | found '0 Chalk', wanted a count from 1 to 1000000000000 at character 1 of the order
      99999999999999 Chalk      | found '99999999999999 Chalk', wanted a count from 1 to 1000000000000 at character 1 of the order
      6 Chalk (2 Woad)          | found '(2 Woad)', wanted a comma at character 9 of the order
      mirror 6 Chalk, 2 Woad    | found '6 Chalk, 2 Woad', wanted brackets round what comes there and back, at character 8 of the order
      12 x ()                   | found ')', wanted a mark such as Chalk at character 7 of the order
      6 "Chalk                  | found '"Chalk', wanted a mark such as Chalk at character 3 of the order
      6                         | found nothing, wanted a mark such as Chalk at character 2 of the order
      (6 Chalk) x               | found 'x', wanted a comma at character 11 of the order
      """)
  void whatCannotBeReadIsShownWhereItStands(String text, String message) {
    assertThatThrownBy(() -> Succession.parse(text)).isInstanceOf(Unreadable.class).hasMessage(message);
  }

  @Test
  void nothingAtAllAndLineEndsAreRefused() {
    assertThatThrownBy(() -> Succession.parse(" ")).hasMessage("found nothing, wanted an order such as 12 x (6 Chalk, 2 Woad), 6 Chalk");
    assertThatThrownBy(() -> Succession.parse("6 Chalk\n2 Woad")).hasMessage("found '2 Woad', wanted a comma at character 9 of the order");
    assertThat(Succession.parse("6 Chalk,\n2 Woad").threads()).isEqualTo(8);
  }

  @Test
  void anOrderOfTooManyThreadsIsRefusedAndOneOfManyIsNotWrittenOut() {
    assertThatThrownBy(() -> Succession.parse("1000000000 x (1000000000 x (Chalk, Woad))"))
        .isInstanceOf(Unreadable.class)
        .hasMessageContaining("an order of at most 1000000000000 threads");
    assertThatThrownBy(() -> Succession.parse("mirror (600000000000 Chalk)")).hasMessageContaining("an order of at most 1000000000000 threads");
    Succession many = Succession.parse("1000000 x (100000 x (2 Chalk, Woad), 1000000000 x (Chalk), 3 Madder)".replace("1000000000 x", "1000 x"));
    assertThat(many.threads()).isEqualTo(1_000_000L * (300_000 + 1000 + 3));
    assertThat(many.at(many.threads() - 1)).isEqualTo("Madder");
    assertThat(many.runs(3)).containsExactly(new Run(2, "Chalk"), new Run(1, "Woad"), new Run(2, "Chalk"));
    assertThat(Succession.parse("1000000000 x (Chalk), Woad").runs(10)).containsExactly(new Run(1_000_000_000L, "Chalk"), new Run(1, "Woad"));
    String deep = String.join("", Collections.nCopies(40, "2 x (")) + "Chalk" + String.join("", Collections.nCopies(40, ")"));
    assertThatThrownBy(() -> Succession.parse(deep)).hasMessageContaining("wanted brackets at most 30 deep at character 155 of the order");
  }

  /** 8 picks of each repeat: 3 of Woad; 20 picks are 2 repeats and the first 4 of the third, which are 4 Chalk. */
  @Test
  void anOrderIsRepeatedAsOftenAsTheLengthTakes() {
    Succession order = Succession.parse("5 Chalk, 3 Woad");
    assertThat(order.countsOver(20)).containsExactly(entry("Chalk", 14L), entry("Woad", 6L));
    assertThat(order.countsOver(22).get("Woad")).isEqualTo(7);
    assertThat(order.countsOver(0)).isEmpty();
  }

  @Test
  void theWordsSayWhereAStretchTurns() {
    assertThat(Succession.parse("2 x (mirror (6 Chalk, 2 Woad), 1 Madder)").words())
        .isEqualTo("2 times: (mirrored, the middle doubled: 6 Chalk, 2 Woad; then 1 Madder)");
    assertThat(Succession.parse("there and back (6 Chalk, 2 Woad, 3 Madder)").words()).isEqualTo("there and back, turning on 3 Madder: 6 Chalk, 2 Woad, 3 Madder");
    assertThat(Succession.parse("4 Chalk, 2 x (Chalk)").sumInWords("picks")).isEqualTo("6 picks, all Chalk");
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      CCW CCW CCW CC              | 3 x (2 Chalk, 1 Woad), 2 Chalk
      CWMWC                       | there and back (1 Chalk, 1 Woad, 1 Madder)
      CWCWCWM CWCWCWM CWCWCWM     | 3 x (3 x (1 Chalk, 1 Woad), 1 Madder)
      CWM                         | 1 Chalk, 1 Woad, 1 Madder
      CWC                         | 1 Chalk, 1 Woad, 1 Chalk
      CCCC                        | 4 Chalk
      CWMWCCCWMWCCCWMWC           | there and back (1 Chalk, 1 Woad, there and back (1 Madder, 1 Woad, 3 Chalk))
      """)
  void aShortFormIsFoundForWhatRepeatsAndComesBack(String threads, String form) {
    Succession found = Succession.of(runs(threads.replace(" ", "")));
    assertThat(written(found.runs(Integer.MAX_VALUE))).isEqualTo(threads.replace(" ", ""));
    assertThat(found).hasToString(form);
  }

  static List<Run> runs(String threads) {
    return threads.chars().mapToObj(sign -> new Run(1, sign == 'C' ? "Chalk" : sign == 'W' ? "Woad" : "Madder")).toList();
  }

  private static String written(List<Run> runs) {
    StringBuilder each = new StringBuilder();
    runs.forEach(run -> each.repeat(run.mark().charAt(0), (int) run.count()));
    return each.toString();
  }
}
