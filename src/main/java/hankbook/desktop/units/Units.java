package hankbook.desktop.units;

import java.util.Locale;

/**
 * In what whoever sits before the window measures. What is in the ledger does not depend on it: lengths are kept in tenths of a millimetre, masses in milligrams.
 *
 * @param yarn on skeins and in warps
 * @param cloth and width in the reed
 * @param weight of yarn
 * @param sett of warp and weft
 * @param numbers of yarns by their fibres
 */
public record Units(YarnUnit yarn, ClothUnit cloth, WeightUnit weight, SettUnit sett, YarnNumbers numbers) {
  public static final Units METRIC = new Units(YarnUnit.METRES, ClothUnit.CENTIMETRES, WeightUnit.GRAMS, SettUnit.PER_CENTIMETRE, YarnNumbers.TEX);
  public static final Units IMPERIAL = new Units(YarnUnit.YARDS, ClothUnit.INCHES, WeightUnit.OUNCES, SettUnit.PER_INCH, YarnNumbers.BY_TRADE);

  /** Those of a place: imperial in the United States, metric elsewhere (Unicode CLDR, measurement systems by territory). */
  public static Units of(Locale place) {
    return place.getCountry().equals("US") ? IMPERIAL : METRIC;
  }

  /** The same with yarn measured otherwise. */
  public Units withYarn(YarnUnit other) {
    return new Units(other, cloth, weight, sett, numbers);
  }

  /** The same with cloth measured otherwise. */
  public Units withCloth(ClothUnit other) {
    return new Units(yarn, other, weight, sett, numbers);
  }

  /** The same with yarn weighed otherwise. */
  public Units withWeight(WeightUnit other) {
    return new Units(yarn, cloth, other, sett, numbers);
  }

  /** The same with threads counted to another length. */
  public Units withSett(SettUnit other) {
    return new Units(yarn, cloth, weight, other, numbers);
  }

  /** The same with yarns numbered otherwise. */
  public Units withNumbers(YarnNumbers other) {
    return new Units(yarn, cloth, weight, sett, other);
  }
}
