package hankbook.yarn;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The families are common practice. */
class FibreFamilyTest {
  @ParameterizedTest
  @CsvSource({
    "wool, Merino, true",
    "wool, 60 % mohair 40 % lambswool, true",
    "linen, hemp, true",
    "wool, cotton, false",
    "linen, cotton, false",
    "wool 70 linen 30, linen 20/wool 80, true",
    "wool 70 linen 30, wool, false",
    "wool 50 silk 50, silk, false",
    "paper, Paper, true",
    "paper, cotton, false",
    "'', wool, false",
    "'', '', false",
    "70, 70, false"
  })
  void yarnsAreOfTheSameFamilyWhereTheirFibresAre(String one, String other, boolean same) {
    assertThat(FibreFamily.same(one, other)).isEqualTo(same);
    assertThat(FibreFamily.same(other, one)).isEqualTo(same);
  }

  @Test
  void aBlendIsOfEachOfItsFamilies() {
    assertThat(FibreFamily.of("Wool 70%, linen 30%")).containsExactly(FibreFamily.WOOL, FibreFamily.BAST);
  }
}
