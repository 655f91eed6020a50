package hankbook.studio.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.yarn.Tint;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

class ShelfQuestionTest {
  private static final ShelfWords GERMAN =
      new ShelfWords(
          Map.of("Partie", ShelfField.LOT, "Farbe", ShelfField.COLOUR), Map.of("angebrochen", ShelfState.OPENED, "am Webstuhl", ShelfState.LOOM),
          Map.of("blau", Tint.BLUE, "grün", Tint.GREEN), Map.of("über", Sign.OVER), Map.of("Kone", "cone"), LengthUnit.METRE, ',');

  @Test
  void everyWordMustBeAnswered() {
    assertThat(codes("cotton woad")).containsExactlyElementsOf(where(skein -> skein.shelf().skein().fibre().equals("cotton") && skein.shelf().skein().yarn().colour().equals("Woad")));
    assertThat(codes("cotton nowhere")).isEmpty();
  }

  @Test
  void aWordIsFoundAtTheStartOfAWordInAnyField() {
    assertThat(codes("left")).isNotEmpty().isEqualTo(where(skein -> skein.shelf().skein().location().startsWith("Left")));
    assertThat(codes("16/2")).isNotEmpty().isEqualTo(where(skein -> skein.shelf().skein().yarn().yarn().contains("16/2")));
    assertThat(codes("s005")).containsExactly("S005");
    assertThat(codes("quay")).isNotEmpty().isEqualTo(where(skein -> skein.shelf().reserved().containsKey("Quay towels")));
    assertThat(codes("hest")).isEmpty();
  }

  @Test
  void aColourWordFindsWhatLooksSoWhateverItIsCalled() {
    assertThat(codes("blue")).contains("S004").doesNotContain("S001", "S013");
    assertThat(codes("red")).contains("S013");
    assertThat(codes("colour:blue")).isEqualTo(codes("blue"));
  }

  @Test
  void lengthsInAnyUnitAreHeldAgainstWhatIsFree() {
    List<String> over = where(skein -> skein.shelf().free().compareTo(Length.metres(1500)) > 0);
    assertThat(codes(">1500 m")).isNotEmpty().isEqualTo(over);
    assertThat(codes(">1500m")).isEqualTo(over);
    assertThat(codes("> 1500 m")).isEqualTo(over);
    assertThat(codes(">1 500 m")).isEqualTo(over);
    assertThat(codes("over 1500 m")).isEqualTo(over);
    assertThat(codes("more than 1500 m cone")).isEqualTo(codes("cone >1500 m"));
    assertThat(codes(">1500")).isEqualTo(over);
    assertThat(codes(">=1749.7812773403 yd")).isEqualTo(codes(">=1600 m"));
  }

  @Test
  void massesAreHeldAgainstWhatIsFree() {
    assertThat(codes("<100 g")).isNotEmpty().isEqualTo(where(skein -> skein.mass().filter(mass -> mass.milligrams() < 100_000).isPresent()));
  }

  @Test
  void statesAreSaidInAWordOrThree() {
    assertThat(codes("opened")).isNotEmpty().isEqualTo(where(skein -> skein.shelf().skein().opened()));
    assertThat(codes("new")).isEqualTo(where(skein -> !skein.shelf().skein().opened()));
    List<String> onLoom = where(skein -> skein.shelf().allOnLoom().isPositive());
    assertThat(codes("on the loom")).isNotEmpty().isEqualTo(onLoom);
    assertThat(codes("on loom")).isEqualTo(onLoom);
    assertThat(codes("reserved")).isNotEmpty().isEqualTo(where(skein -> skein.shelf().allReserved().isPositive()));
  }

  @Test
  void lotSeventeenIsNotLotOneHundredAndSeventy() {
    assertThat(codes("lot:17")).isNotEmpty().isEqualTo(where(skein -> skein.shelf().skein().lot().equals("17")));
    assertThat(codes("lot:1")).isNotEmpty().isEqualTo(where(skein -> skein.shelf().skein().lot().matches("(.*\\D)?1(\\D.*)?")));
    assertThat(codes("lot:k")).isEqualTo(where(skein -> skein.shelf().skein().lot().startsWith("K")));
  }

  @Test
  void aDashMeansNotAndQuotationMarksKeepWordsTogether() {
    assertThat(codes("-cotton")).isEqualTo(where(skein -> !skein.shelf().skein().fibre().startsWith("cotton")));
    assertThat(codes("place:\"left shelf\"")).isEqualTo(codes("\"left shelf\""));
    assertThat(codes("\"shelf left\"")).isEmpty();
    assertThat(codes("-\"left shelf\" cotton")).isEqualTo(codes("cotton -place:\"left shelf\""));
  }

  @Test
  void whatIsNotUnderstoodIsToldAndTheRestStillAsked() {
    ShelfQuestion question = ShelfQuestion.of("cotton >many shade:4 lot:", ShelfWords.ENGLISH);
    assertThat(question.faults()).containsExactly(
        new NotUnderstood(">many", NotUnderstood.Wanted.AMOUNT), new NotUnderstood("shade:", NotUnderstood.Wanted.FIELD));
    assertThat(codes("cotton >many shade:4 lot:")).isEqualTo(codes("cotton"));
    assertThat(ShelfQuestion.of(">1,5 m", ShelfWords.ENGLISH).faults()).hasSize(1);
  }

  @Test
  void theWordsOfALanguageAreUnderstoodBesideTheEnglish() {
    assertThat(codes("Partie:17 blaue", GERMAN)).isEqualTo(codes("lot:17 blue"));
    assertThat(codes("über 1500 m Kone", GERMAN)).isNotEmpty().isEqualTo(codes("over 1500 m cone"));
    assertThat(codes(">1,5 m >1000,5 m", GERMAN)).isEqualTo(codes(">1000.5 m"));
    assertThat(codes("am webstuhl", GERMAN)).isEqualTo(codes("on the loom"));
    assertThat(codes("farbe:grun angebrochen", GERMAN)).isEqualTo(codes("green opened"));
  }

  @Test
  void theWordThatExcludedAllIsNamed() {
    assertThat(ShelfQuestion.of("cotton puce", ShelfWords.ENGLISH).whyNone(Shelves.SAMPLE).unanswered()).containsExactly("puce");
    ShelfQuestion.Why why = ShelfQuestion.of("cotton chest", ShelfWords.ENGLISH).whyNone(Shelves.SAMPLE);
    assertThat(why.unanswered()).isEmpty();
    assertThat(why.without()).containsExactly(
        new ShelfQuestion.Without("cotton", codes("chest").size()), new ShelfQuestion.Without("chest", codes("cotton").size()));
  }

  private static List<String> codes(String asked) {
    return codes(asked, ShelfWords.ENGLISH);
  }

  private static List<String> codes(String asked, ShelfWords words) {
    return where(ShelfQuestion.of(asked, ShelfWords.ENGLISH.and(words))::holds);
  }

  private static List<String> where(Predicate<SoughtSkein> holds) {
    return Shelves.SAMPLE.stream().filter(holds).map(skein -> skein.shelf().skein().code()).toList();
  }
}
