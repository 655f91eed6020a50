package hankbook.desktop.units;

import hankbook.measure.LengthUnit;

/** In what yarn is measured. */
public enum YarnUnit {
  METRES(LengthUnit.METRE),
  YARDS(LengthUnit.YARD);

  private final LengthUnit unit;

  YarnUnit(LengthUnit unit) {
    this.unit = unit;
  }

  public LengthUnit unit() {
    return unit;
  }
}
