package hankbook.desktop.say;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class EveryTextTest {
  private static final Pattern VALUE = Pattern.compile("\\{\\d}");

  private static TextsInCode all;

  @BeforeAll
  static void read() throws IOException {
    all = TextsInCode.under(Path.of("src/main/java/hankbook"));
  }

  @Test
  void one_thing_takes_no_value_that_many_do_not() {
    assertThat(all.counted()).allSatisfy((many, one) -> assertThat(values(many)).containsAll(values(one)));
  }

  @Test
  void no_text_is_both_counted_and_not() {
    Set<String> both = new TreeSet<>(all.counted().keySet());
    both.retainAll(all.texts());
    assertThat(both).isEmpty();
  }

  @Test
  void the_values_of_a_text_are_numbered_from_nought_without_a_gap() {
    assertThat(all.texts()).allSatisfy(text -> assertThat(List.copyOf(values(text))).isEqualTo(numbered(values(text).size())));
  }

  private static List<String> numbered(int count) {
    return IntStream.range(0, count).mapToObj(number -> "{" + number + "}").toList();
  }

  private static Set<String> values(String text) {
    return VALUE.matcher(text).results().map(MatchResult::group).collect(Collectors.toCollection(TreeSet::new));
  }
}
