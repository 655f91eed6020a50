package hankbook.desktop.units;

import hankbook.measure.LengthUnit;

/** In what cloth and reeds are measured: one unit for what lies on the table, another for what is rolled up. */
public enum ClothUnit {
  CENTIMETRES(LengthUnit.CENTIMETRE, LengthUnit.METRE),
  INCHES(LengthUnit.INCH, LengthUnit.YARD);

  private final LengthUnit unit;
  private final LengthUnit longUnit;

  ClothUnit(LengthUnit unit, LengthUnit longUnit) {
    this.unit = unit;
    this.longUnit = longUnit;
  }

  /** For widths and for lengths up to three of the other. */
  public LengthUnit unit() {
    return unit;
  }

  /** For lengths beyond. */
  public LengthUnit longUnit() {
    return longUnit;
  }
}
