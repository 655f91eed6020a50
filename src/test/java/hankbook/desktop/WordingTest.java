package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class WordingTest {
  @Test
  void metresHaveOneDecimalAndThousandsStandApart() {
    assertThat(Wording.yarn(Length.parse("1354.6895 m"))).isEqualTo("1\u202F354.7 m");
    assertThat(Wording.yarn(Length.parse("4 cm"))).isEqualTo("0.0 m");
    assertThat(Wording.yarn(Length.parse("55.5 m").negated())).isEqualTo("-55.5 m");
  }

  @Test
  void aPlanThatStaysTheSameIsSaidOnce() {
    Length some = Length.metres(1);
    assertThat(Wording.way(new Transfer("S1", new Place.Reserved("Quay towels"), new Place.Loom("Quay towels"), some)))
        .isEqualTo("reserved → loom, Quay towels");
    assertThat(Wording.way(new Transfer("S1", new Place.Loom("Quay towels"), new Place.Shelf(), some))).isEqualTo("loom, Quay towels → shelf");
  }

  @Test
  void everyWordOfASearchMustBeFoundSomewhere() {
    assertThat(PlainWords.all("  woad S0 ")).accepts(PlainWords.of("S004", "Skerry", "Woad")).rejects(PlainWords.of("S004", "Skerry", "Rust"));
    assertThat(PlainWords.all("")).accepts(PlainWords.of("S004"));
  }

  @Test
  void theNextCodeGoesOnAsTheOwnerNumbered() {
    assertThat(NextCode.after(List.of())).isEqualTo("S001");
    assertThat(NextCode.after(List.of("S009", "S010", "L-7", "odd"))).isEqualTo("S011");
    assertThat(NextCode.after(List.of("99", "98"))).isEqualTo("100");
  }
}
