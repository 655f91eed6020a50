package hankbook.desktop.units;

import hankbook.measure.MassUnit;

/** In what yarn is weighed. */
public enum WeightUnit {
  GRAMS(MassUnit.GRAM),
  /** And pounds where it is much. */
  OUNCES(MassUnit.OUNCE);

  private final MassUnit unit;

  WeightUnit(MassUnit unit) {
    this.unit = unit;
  }

  public MassUnit unit() {
    return unit;
  }
}
