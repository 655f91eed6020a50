package hankbook.desktop.find;

import hankbook.desktop.say.Say;

/** Of which sort something is that can be found. */
public enum Sort {
  ACT,
  SCREEN,
  SKEIN,
  PLAN,
  GEAR,
  PURCHASE,
  ENTRY;

  String words() {
    return switch (this) {
      case ACT -> Say.text("Do");
      case SCREEN -> Say.text("Screens");
      case SKEIN -> Say.text("Skeins");
      case PLAN -> Say.text("Plans");
      case GEAR -> Say.text("Looms and reeds");
      case PURCHASE -> Say.text("Purchases");
      case ENTRY -> Say.text("Journal");
    };
  }
}
