package hankbook.yarn;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

/** Fibres that take dye, water and wear much alike, so that one may stand beside another in a cloth; the grouping is common practice. */
public enum FibreFamily {
  /** The hair of sheep and of other animals. */
  WOOL("wool merino lambswool alpaca llama mohair cashmere camel yak angora"),
  SILK("silk tussah noil"),
  COTTON("cotton"),
  /** The fibres of stems. */
  BAST("linen flax hemp ramie jute nettle"),
  /** Spun from dissolved wood or other plants. */
  REGENERATED("viscose rayon lyocell modal cupro bamboo acetate"),
  SYNTHETIC("acrylic nylon polyamide polyester elastane polypropylene");

  private final String fibres;

  FibreFamily(String fibres) {
    this.fibres = fibres;
  }

  /** What they are called. */
  public String words() {
    return name().toLowerCase(Locale.ROOT);
  }

  private boolean has(String fibre) {
    return Arrays.asList(fibres.split(" ")).contains(fibre);
  }

  /** The families of the fibres that a text such as {@code wool 70 linen 30} names; empty where it names none that is known. */
  public static Set<FibreFamily> of(String fibre) {
    Set<FibreFamily> families = EnumSet.noneOf(FibreFamily.class);
    for (String word : words(fibre)) {
      Arrays.stream(values()).filter(family -> family.has(word)).forEach(families::add);
    }
    return families;
  }

  /**
   * Whether two yarns are spun of fibres of the same families: every one that either names, or, where no fibre in either is known, the
   * same words.
   */
  public static boolean same(String one, String other) {
    Set<FibreFamily> families = of(one);
    if (!families.isEmpty() || !of(other).isEmpty()) {
      return families.equals(of(other));
    }
    return !words(one).isEmpty() && new TreeSet<>(words(one)).equals(new TreeSet<>(words(other)));
  }

  private static List<String> words(String fibre) {
    List<String> words = new ArrayList<>(Arrays.asList(fibre.toLowerCase(Locale.ROOT).split("[^\\p{L}]+")));
    words.removeIf(String::isEmpty);
    return words;
  }
}
