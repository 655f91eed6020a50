package hankbook.studio.shelf;

import hankbook.measure.LengthUnit;
import hankbook.yarn.Tint;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The words that mean something in a question, in one or several languages. A word may be a phrase, such as {@code on the loom}.
 *
 * @param fields the names of what can be asked for, as in {@code lot:7}
 * @param states what can be said of a skein
 * @param tints words for colours
 * @param signs words for more and less
 * @param same words for those that skeins are kept under, such as another language's for {@code cone}
 * @param unit in which lengths are that are given without one
 * @param mark the decimal mark
 */
public record ShelfWords(
    Map<String, ShelfField> fields, Map<String, ShelfState> states, Map<String, Tint> tints, Map<String, Sign> signs, Map<String, String> same, LengthUnit unit,
    char mark) {
  /** The English words, which are always understood. */
  public static final ShelfWords ENGLISH = english();

  /** How many words a phrase has at most. */
  static final int LONGEST = 3;

  /** The fewest letters of a word that count as its beginning. */
  private static final int BEGINNING = 3;

  public ShelfWords {
    fields = folded(fields);
    states = folded(states);
    tints = folded(tints);
    signs = folded(signs);
    same = folded(same);
  }

  private static ShelfWords english() {
    Map<String, ShelfField> fields = new HashMap<>(Map.of("color", ShelfField.COLOUR, "fiber", ShelfField.FIBRE));
    Arrays.stream(ShelfField.values()).forEach(field -> fields.put(field.name(), field));
    Map<String, ShelfState> states =
        new HashMap<>(Map.of("new", ShelfState.UNOPENED, "on loom", ShelfState.LOOM, "on the loom", ShelfState.LOOM, "on a loom", ShelfState.LOOM));
    Arrays.stream(ShelfState.values()).forEach(state -> states.put(state.name(), state));
    Map<String, Tint> tints = new HashMap<>(Map.of("gray", Tint.GREY, "violet", Tint.PURPLE));
    Arrays.stream(Tint.values()).forEach(tint -> tints.put(tint.toString(), tint));
    Map<String, Sign> signs = new HashMap<>(Map.of(
        "over", Sign.OVER, "more than", Sign.OVER, "under", Sign.UNDER, "less than", Sign.UNDER, "at least", Sign.AT_LEAST, "at most", Sign.AT_MOST, "≥",
        Sign.AT_LEAST, "≤", Sign.AT_MOST));
    Arrays.stream(Sign.values()).forEach(sign -> signs.put(sign.written(), sign));
    return new ShelfWords(fields, states, tints, signs, Map.of(), LengthUnit.METRE, '.');
  }

  private static <T> Map<String, T> folded(Map<String, T> words) {
    Map<String, T> folded = new LinkedHashMap<>();
    words.forEach((word, meaning) -> folded.put(Folded.of(word.strip()), meaning));
    folded.remove("");
    return Collections.unmodifiableMap(folded);
  }

  /** These words and others; of one word with two meanings these hold. Unit and mark are the other's. */
  public ShelfWords and(ShelfWords other) {
    return new ShelfWords(
        both(other.fields, fields), both(other.states, states), both(other.tints, tints), both(other.signs, signs), both(other.same, same), other.unit, other.mark);
  }

  private static <T> Map<String, T> both(Map<String, T> weaker, Map<String, T> stronger) {
    Map<String, T> both = new HashMap<>(weaker);
    both.putAll(stronger);
    return both;
  }

  /** The colours whose word a word is, begins, or bends, as {@code blaue} does {@code blau}. */
  Set<Tint> tintsOf(String word) {
    return tints.entrySet().stream().filter(tint -> begins(word, tint.getKey()) || bends(word, tint.getKey())).map(Map.Entry::getValue).collect(Collectors.toUnmodifiableSet());
  }

  /** The states whose word a word is or begins. */
  Set<ShelfState> statesOf(String word) {
    return states.entrySet().stream().filter(state -> begins(word, state.getKey())).map(Map.Entry::getValue).collect(Collectors.toUnmodifiableSet());
  }

  /** The words that skeins are kept under whose other word a word is or begins. */
  Set<String> sameAs(String word) {
    return same.entrySet().stream().filter(other -> begins(word, other.getKey())).map(Map.Entry::getValue).map(Folded::of).collect(Collectors.toUnmodifiableSet());
  }

  private static boolean begins(String word, String whole) {
    return word.equals(whole) || (word.length() >= BEGINNING && whole.startsWith(word));
  }

  private static boolean bends(String word, String whole) {
    return whole.length() >= BEGINNING && word.startsWith(whole) && word.length() <= whole.length() + 2;
  }
}
