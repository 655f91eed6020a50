package hankbook.desktop.say;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Holds the German and the Swedish texts to what the window says. */
class TranslationsTest {
  private static final Pattern VALUE = Pattern.compile("\\{\\d}");

  /** What is the same in a language as in English, such as a loan word, besides what has no letters of its own. */
  private static final Set<String> SAME_IN_BOTH = Set.of(
      "Denier", "Deutsch", "English", "Esc", "Form", "Hankbook", "Hex", "Journal", "Plan",
      "Plan {0}", "RGB", "Svenska", "Tex", "Weaving Information File", "orange", "{0} min", "{0} min {1} s");

  private static final Map<Language, Set<String>> SAME = Map.of(
      Language.GERMAN, Set.of("1 {0} in {1}", "Name", "Yards", "in {0}"),
      Language.SWEDISH, Set.of("Ctrl", "Shift", "Tab, Shift+Tab", "Variant {0}", "form", "per kg", "per m", "plan", "position {0}", "under"));

  private static Set<String> keys;
  private static TextsInCode code;

  @BeforeAll
  static void read() throws IOException {
    code = TextsInCode.under(Path.of("src/main/java/hankbook"));
    keys = new TreeSet<>(code.keys());
    keys.addAll(WordsBelow.all());
  }

  @ParameterizedTest
  @EnumSource(value = Language.class, mode = EnumSource.Mode.EXCLUDE, names = "ENGLISH")
  void every_text_has_its_translation_and_no_translation_is_of_a_text_that_is_gone(Language language) {
    Catalogue catalogue = Catalogue.of(language);
    Set<String> there = new TreeSet<>(catalogue.texts());
    there.addAll(catalogue.counted());
    assertThat(there).containsExactlyInAnyOrderElementsOf(keys);
  }

  @ParameterizedTest
  @EnumSource(value = Language.class, mode = EnumSource.Mode.EXCLUDE, names = "ENGLISH")
  void what_is_counted_has_two_forms_and_nothing_else_has(Language language) {
    assertThat(Catalogue.of(language).counted()).containsExactlyInAnyOrderElementsOf(code.counted().keySet());
  }

  @ParameterizedTest
  @EnumSource(value = Language.class, mode = EnumSource.Mode.EXCLUDE, names = "ENGLISH")
  void a_translation_has_the_values_of_its_text(Language language) {
    Catalogue catalogue = Catalogue.of(language);
    assertThat(catalogue.texts()).allSatisfy(text -> assertThat(values(catalogue.text(text))).as(text).isEqualTo(values(text)));
    assertThat(catalogue.counted()).allSatisfy(many -> {
      Catalogue.Forms forms = catalogue.counted(many, many);
      assertThat(values(forms.many())).as(many).isEqualTo(values(many));
      assertThat(values(many)).as(many).containsAll(values(forms.one()));
      Set<String> without = new TreeSet<>(values(many));
      without.remove("{0}");
      assertThat(values(forms.one())).as(many).containsAll(without);
    });
  }

  @ParameterizedTest
  @EnumSource(value = Language.class, mode = EnumSource.Mode.EXCLUDE, names = "ENGLISH")
  void no_translation_is_the_english_itself(Language language) {
    Catalogue catalogue = Catalogue.of(language);
    Map<String, String> same = new TreeMap<>();
    catalogue.texts().stream()
        .filter(text -> catalogue.text(text).equals(text) && VALUE.matcher(text).replaceAll("").codePoints().filter(Character::isLetter).count() > 1)
        .filter(text -> !SAME_IN_BOTH.contains(text) && !SAME.getOrDefault(language, Set.of()).contains(text))
        .forEach(text -> same.put(text, catalogue.text(text)));
    assertThat(same).isEmpty();
  }

  private static Set<String> values(String text) {
    return VALUE.matcher(text).results().map(MatchResult::group).collect(Collectors.toCollection(TreeSet::new));
  }
}
