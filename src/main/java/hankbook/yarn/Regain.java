package hankbook.yarn;

import hankbook.measure.Exact;
import hankbook.measure.Mass;
import hankbook.measure.Percentage;
import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The moisture in a yarn, as a part of its dry mass. The standard ones are the agreed allowances of Regulation (EU) No 1007/2011, Annex IX:
 * 8.5 % for cotton, 17 % for carded wool and 6.25 % for staple polyamide as published, the others from memory. Wool of which no more is said
 * counts as carded.
 */
public final class Regain {
  private static final Map<String, String> STANDARD = new TreeMap<>(
      Map.ofEntries(
          Map.entry("cotton", "8.5 %"), Map.entry("wool", "17 %"), Map.entry("polyamide", "6.25 %"), Map.entry("nylon", "6.25 %"), Map.entry("combed wool", "18.25 %"),
          Map.entry("silk", "11 %"), Map.entry("linen", "12 %"), Map.entry("flax", "12 %"), Map.entry("hemp", "12 %"), Map.entry("mercerised cotton", "10.5 %"),
          Map.entry("viscose", "13 %"), Map.entry("acrylic", "2 %"), Map.entry("polyester", "1.5 %")));

  /** {@code wool 70 linen 30} and {@code 70 % wool, 30 % linen}, with or without per cent signs and commas. */
  private static final List<Pattern> PARTS = List.of(
      Pattern.compile("\\G\\s*(?<fibre>[\\p{L} ]*\\p{L})\\s+(?<percent>\\d{1,3})\\s*%?\\s*,?"),
      Pattern.compile("\\G\\s*(?<percent>\\d{1,3})\\s*%?\\s+(?<fibre>[\\p{L} ]*\\p{L})\\s*,?"));

  private Regain() {}

  /** Fibres of which the standard regain is known, in order. */
  public static String fibres() {
    return String.join(", ", STANDARD.keySet());
  }

  /** The standard regain of a fibre or of a blend such as {@code wool 70 linen 30}; empty where the fibre is not known or the parts do not make 100. */
  public static Optional<Percentage> standard(String fibre) {
    String name = fibre.strip().toLowerCase(Locale.ROOT);
    String alone = STANDARD.get(name);
    return alone == null ? PARTS.stream().flatMap(part -> ofBlend(name, part.matcher(name)).stream()).findFirst() : Optional.of(Percentage.parse(alone));
  }

  /** A fibre's part of a blend is declared with its own allowance in it, so the dry masses are p / (1 + r) and the blend's water is the rest. */
  private static Optional<Percentage> ofBlend(String blend, Matcher part) {
    int end = 0;
    int hundred = 0;
    BigFraction dry = BigFraction.ZERO;
    while (part.find()) {
      String regain = STANDARD.get(part.group("fibre").strip());
      if (regain == null) {
        return Optional.empty();
      }
      int percent = Integer.parseInt(part.group("percent"));
      hundred += percent;
      dry = dry.add(BigFraction.of(percent).divide(Percentage.parse(regain).growth()));
      end = part.end();
    }
    boolean whole = hundred == 100 && end == blend.length();
    return whole ? Optional.of(new Percentage(BigFraction.of(100).divide(dry).subtract(BigFraction.ONE), Percentage.Base.UNSAID)) : Optional.empty();
  }

  /**
   * The standard regain of a fibre.
   *
   * @throws Unreadable if it is not known
   */
  static Percentage known(String fibre) {
    return standard(fibre).orElseThrow(() -> new Unreadable(fibre, Phrase.of("a fibre whose standard regain is known ({0}, or a blend such as wool 70 linen 30)", fibres())));
  }

  static void refuseUnlessPossible(Percentage regain) {
    if (regain.base() != Percentage.Base.UNSAID || regain.fraction().compareTo(BigFraction.ONE) > 0) {
      throw new Unreadable(regain.toString(), "a regain from 0 % to 100 %, of the dry mass");
    }
  }

  /** The mass that yarn has at its standard regain: mass × (1 + standard) / (1 + now), to the milligram. */
  public static Mass atStandard(Mass mass, Percentage now, Percentage standard) {
    BigFraction milligrams = BigFraction.of(mass.milligrams()).multiply(standard.growth()).divide(now.growth());
    return new Mass(Exact.whole(milligrams, RoundingMode.HALF_UP));
  }
}
