package hankbook.desktop.units;

import hankbook.measure.Length;
import hankbook.measure.LengthUnit;

/** To what length ends and picks are counted. */
public enum SettUnit {
  PER_CENTIMETRE(Length.of(1, LengthUnit.CENTIMETRE), 2),
  PER_TEN_CENTIMETRES(Length.of(10, LengthUnit.CENTIMETRE), 1),
  PER_INCH(Length.of(1, LengthUnit.INCH), 1);

  @SuppressWarnings("ImmutableEnumChecker") // A length is a value.
  private final Length span;
  private final int places;

  SettUnit(Length span, int places) {
    this.span = span;
    this.places = places;
  }

  /** The length that the threads lie in. */
  public Length span() {
    return span;
  }

  /** To how many decimal places a sett of another unit is rounded. */
  int places() {
    return places;
  }
}
