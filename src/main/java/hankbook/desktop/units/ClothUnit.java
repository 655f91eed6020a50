package hankbook.desktop.units;

import hankbook.measure.Length;
import hankbook.measure.LengthUnit;

/** In what cloth and reeds are measured: one unit for what lies on the table, another for what is rolled up. */
public enum ClothUnit {
  CENTIMETRES(LengthUnit.CENTIMETRE, LengthUnit.METRE, 1),
  INCHES(LengthUnit.INCH, LengthUnit.YARD, 2);

  private final LengthUnit unit;
  private final LengthUnit longUnit;
  private final int longFrom;

  ClothUnit(LengthUnit unit, LengthUnit longUnit, int longFrom) {
    this.unit = unit;
    this.longUnit = longUnit;
    this.longFrom = longFrom;
  }

  /** For widths and for short lengths. */
  public LengthUnit unit() {
    return unit;
  }

  /** For long lengths. */
  public LengthUnit longUnit() {
    return longUnit;
  }

  /** From where on a length is long. */
  Length longFrom() {
    return Length.of(longFrom, longUnit);
  }
}
