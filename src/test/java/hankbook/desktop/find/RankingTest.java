package hankbook.desktop.find;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class RankingTest {
  private static final Thing S1 = skein("S1", "Fell wool 2/9, Moss", 1);
  private static final Thing S10 = skein("S10", "Harbour cotton 8/2, Coral", 5);
  private static final Thing S11 = skein("S11", "Harbour cotton 8/2, Slate", 9);
  private static final Thing TOWELS = thing(Sort.PLAN, "Quay towels", "");
  private static final Thing SHELF = thing(Sort.SCREEN, "Shelf", "Ctrl+1");
  private static final List<Thing> ALL = List.of(S10, S11, S1, TOWELS, SHELF);

  @Test
  void theExactCodeStandsFirstThenWhatBeginsSoTheLaterTouchedFirst() {
    assertThat(Ranking.best(ALL, "s1", 6)).containsExactly(S1, S11, S10);
  }

  @Test
  void everyWordMustBeFoundSomewhereInWhateverCaseAndOrder() {
    assertThat(Ranking.best(ALL, "CORAL harbour", 6)).containsExactly(S10);
    assertThat(Ranking.best(ALL, "coral wool", 6)).isEmpty();
  }

  @Test
  void theBeginningOfAWordCountsMoreThanLettersWithinOne() {
    Thing within = thing(Sort.PLAN, "Bowls", "");
    Thing begins = thing(Sort.PLAN, "Window owl", "");
    assertThat(Ranking.best(List.of(within, begins), "owl", 6)).containsExactly(begins, within);
  }

  @Test
  void sortsStayTogetherAndTheOneWithTheBestStandsFirst() {
    Thing screen = thing(Sort.SCREEN, "Slate", "");
    Thing lately = skein("S2", "slate", 99);
    assertThat(Ranking.best(List.of(lately, S11, screen), "slate", 6)).containsExactly(screen, lately, S11);
  }

  @Test
  void ofOneSortNoMoreAreToldThanWereAskedFor() {
    List<Thing> many = IntStream.range(0, 40).mapToObj(number -> skein("S" + number, "", 0)).toList();
    assertThat(Ranking.best(many, "s", 6)).hasSize(6);
  }

  private static Thing skein(String code, String detail, long recency) {
    return new Thing(Sort.SKEIN, code, detail, "", recency, () -> {});
  }

  private static Thing thing(Sort sort, String title, String detail) {
    return Thing.of(sort, title, detail, () -> {});
  }
}
