package hankbook.desktop.units;

import hankbook.measure.NumberingSystem;
import hankbook.yarn.FibreFamily;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * By which numbering system the grist of a yarn is said, by what it is spun of.
 *
 * @param of each family of fibres; one that is left out goes by {@code other}
 * @param other of yarn of several families, or of none that is known
 */
public record YarnNumbers(Map<FibreFamily, NumberingSystem> of, NumberingSystem other) {
  public static final YarnNumbers TEX = all(NumberingSystem.TEX);

  /** The counts that the spinning trades of the British Isles and North America keep apart; for fibres younger than they, that of cotton, as is common practice. */
  public static final YarnNumbers BY_TRADE = new YarnNumbers(
      new EnumMap<>(Map.of(
          FibreFamily.WOOL, NumberingSystem.WORSTED, FibreFamily.SILK, NumberingSystem.SPUN_SILK, FibreFamily.COTTON, NumberingSystem.COTTON,
          FibreFamily.BAST, NumberingSystem.LINEN, FibreFamily.REGENERATED, NumberingSystem.COTTON, FibreFamily.SYNTHETIC, NumberingSystem.COTTON)),
      NumberingSystem.YARDS_PER_POUND);

  public YarnNumbers {
    of = Map.copyOf(of);
  }

  /** One system for every yarn. */
  public static YarnNumbers all(NumberingSystem system) {
    return new YarnNumbers(Arrays.stream(FibreFamily.values()).collect(Collectors.toMap(Function.identity(), _ -> system)), system);
  }

  /** The system of a family. */
  public NumberingSystem of(FibreFamily family) {
    return of.getOrDefault(family, other);
  }

  /** The system of a yarn by a text that names its fibres, such as {@code wool 70 silk 30}. */
  public NumberingSystem ofFibre(String fibre) {
    Set<FibreFamily> families = FibreFamily.of(fibre);
    Iterator<FibreFamily> family = families.iterator();
    return families.size() == 1 ? of(family.next()) : other;
  }

  /** The same with another system for a family. */
  public YarnNumbers with(FibreFamily family, NumberingSystem system) {
    Map<FibreFamily, NumberingSystem> changed = new EnumMap<>(FibreFamily.class);
    Arrays.stream(FibreFamily.values()).forEach(each -> changed.put(each, each == family ? system : of(each)));
    return new YarnNumbers(changed, other);
  }

  /** The same with another system for yarn of several families or of none that is known. */
  public YarnNumbers withOther(NumberingSystem system) {
    return new YarnNumbers(of, system);
  }
}
