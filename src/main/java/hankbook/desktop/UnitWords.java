package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.desktop.units.ClothUnit;
import hankbook.desktop.units.SettUnit;
import hankbook.desktop.units.WeightUnit;
import hankbook.desktop.units.YarnUnit;
import hankbook.measure.NumberingSystem;
import hankbook.yarn.FibreFamily;

/** What units, ways of numbering yarn and families of fibres are called where one chooses among them. */
final class UnitWords {
  private UnitWords() {}

  static String of(YarnUnit unit) {
    return switch (unit) {
      case METRES -> Say.text("Metres");
      case YARDS -> Say.text("Yards");
    };
  }

  static String of(ClothUnit unit) {
    return switch (unit) {
      case CENTIMETRES -> Say.text("Centimetres, metres");
      case INCHES -> Say.text("Inches, yards");
    };
  }

  static String of(WeightUnit unit) {
    return switch (unit) {
      case GRAMS -> Say.text("Grams");
      case OUNCES -> Say.text("Ounces, pounds");
    };
  }

  static String of(SettUnit unit) {
    return switch (unit) {
      case PER_CENTIMETRE -> Say.text("To the centimetre");
      case PER_TEN_CENTIMETRES -> Say.text("To ten centimetres");
      case PER_INCH -> Say.text("To the inch");
    };
  }

  static String of(NumberingSystem system) {
    return switch (system) {
      case METRIC -> Say.text("Metric number, Nm");
      case COTTON -> Say.text("Cotton count");
      case WORSTED -> Say.text("Worsted count");
      case LINEN -> Say.text("Linen lea");
      case SPUN_SILK -> Say.text("Spun silk count");
      case WOOLLEN_RUN -> Say.text("Woollen run");
      case WOOLLEN_CUT -> Say.text("Woollen cut");
      case TEX -> Say.text("Tex");
      case DENIER -> Say.text("Denier");
      case YARDS_PER_POUND -> Say.text("Yards to the pound");
      case METRES_PER_GRAM -> Say.text("Metres to the gram");
    };
  }

  static String of(FibreFamily family) {
    return switch (family) {
      case WOOL -> Say.text("Wool and hair");
      case SILK -> Say.text("Silk");
      case COTTON -> Say.text("Cotton");
      case BAST -> Say.text("Linen and other stem fibres");
      case REGENERATED -> Say.text("Viscose and its like");
      case SYNTHETIC -> Say.text("Synthetic fibres");
    };
  }
}
