package hankbook.studio.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class ShelfQuestionProperties {
  @Property(tries = 500)
  void any_text_is_a_question_and_faults_name_parts_of_it(@ForAll String text) {
    ShelfQuestion question = ShelfQuestion.of(text, ShelfWords.ENGLISH);
    answers(question);
    assertThat(question.faults()).allSatisfy(fault -> assertThat(Folded.of(text)).contains(Folded.of(fault.found())));
  }

  @Property(tries = 300)
  void a_word_and_its_opposite_part_the_shelf(@ForAll("words") String word) {
    List<SoughtSkein> both = new ArrayList<>(answers(ask(word)));
    both.addAll(answers(ask("-" + word)));
    assertThat(both).containsExactlyInAnyOrderElementsOf(Shelves.SAMPLE);
  }

  @Property(tries = 300)
  void the_order_of_the_words_does_not_matter(@ForAll("questions") List<String> words, @ForAll Random random) {
    List<String> shuffled = new ArrayList<>(words);
    Collections.shuffle(shuffled, random);
    assertThat(answers(ask(String.join(" ", shuffled)))).isEqualTo(answers(ask(String.join("  ", words))));
  }

  @Property(tries = 300)
  void another_word_never_finds_more(@ForAll("questions") List<String> words, @ForAll("words") String another) {
    assertThat(answers(ask(String.join(" ", words)))).containsAll(answers(ask(String.join(" ", words) + " " + another)));
  }

  @Property(tries = 300)
  void what_is_in_the_way_is_truly_in_the_way(@ForAll("questions") List<String> words) {
    ShelfQuestion question = ask(String.join(" ", words));
    ShelfQuestion.Why why = question.whyNone(Shelves.SAMPLE);
    assertThat(why.unanswered()).allSatisfy(word -> assertThat(answers(ask(word))).isEmpty());
    if (answers(question).isEmpty()) {
      assertThat(why.without()).allSatisfy(without -> {
        List<String> rest = new ArrayList<>(words);
        rest.remove(without.words());
        assertThat(answers(ask(String.join(" ", rest)))).hasSize((int) without.answers());
      });
    }
  }

  @Property(tries = 200)
  void over_and_at_most_part_what_is_measured(@ForAll("lengths") String length) {
    List<SoughtSkein> both = new ArrayList<>(answers(ask(">" + length)));
    both.addAll(answers(ask("<=" + length)));
    assertThat(both).containsExactlyInAnyOrderElementsOf(Shelves.SAMPLE.stream().filter(skein -> skein.shelf().skein().isMeasured()).toList());
  }

  @Provide
  Arbitrary<String> words() {
    return Arbitraries.of(
        "wool", "cotton", "linen", "blue", "green", "grey", "brown", "opened", "new", "reserved", "loom", "free", ">200 m", "<900 yd", ">=100 g", "lot:17", "lot:k", "place:chest",
        "form:cone", "known:weighed", "colour:woad", "16/2", "\"left shelf\"", "code:s01", "fibre:silk", "puce");
  }

  @Provide
  Arbitrary<List<String>> questions() {
    return words().list().ofMinSize(1).ofMaxSize(4).uniqueElements();
  }

  @Provide
  Arbitrary<String> lengths() {
    Arbitrary<Integer> numbers = Arbitraries.integers().between(0, 3000);
    return numbers.flatMap(number -> Arbitraries.of("m", "yd", "ft", "cm", "").map(unit -> number + " " + unit));
  }

  private static ShelfQuestion ask(String question) {
    return ShelfQuestion.of(question, ShelfWords.ENGLISH);
  }

  private static List<SoughtSkein> answers(ShelfQuestion question) {
    return Shelves.SAMPLE.stream().filter(question::holds).toList();
  }
}
