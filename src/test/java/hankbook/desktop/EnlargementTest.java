package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class EnlargementTest {
  private final Remembered remembered = Remembered.nothing();

  @Test
  void everythingGrowsAndShrinksStepByStepAndNoFurtherThanTheLastStep() {
    Enlargement enlargement = new Enlargement(remembered);
    assertThat(enlargement.times()).isEqualTo(1);
    enlargement.smaller();
    assertThat(enlargement.percentProperty().get()).isEqualTo(100);
    Enlargement.STEPS.forEach(_ -> enlargement.larger());
    assertThat(enlargement.percentProperty().get()).isEqualTo(200);
    enlargement.smaller();
    assertThat(enlargement.percentProperty().get()).isEqualTo(175);
    enlargement.ownSize();
    assertThat(enlargement.percentProperty().get()).isEqualTo(100);
  }

  @Test
  void theSizeIsRememberedAndOneThatIsNotOfferedIsTakenForTheNearest() {
    new Enlargement(remembered).set(150);
    assertThat(new Enlargement(remembered).percentProperty().get()).isEqualTo(150);
    remembered.put("size of everything", 5000);
    assertThat(new Enlargement(remembered).percentProperty().get()).isEqualTo(200);
    remembered.put("size of everything", 1);
    assertThat(new Enlargement(remembered).percentProperty().get()).isEqualTo(100);
    remembered.put("size of everything", "huge");
    assertThat(new Enlargement(remembered).percentProperty().get()).isEqualTo(100);
  }
}
