package hankbook.desktop;

import hankbook.cost.Pricing;
import hankbook.desktop.say.Say;
import hankbook.measure.Percentage;

/** The two ways from a cost to a price. */
enum PriceWay {
  MARGIN,
  MARKUP;

  String words() {
    return switch (this) {
      case MARGIN -> Say.text("Margin");
      case MARKUP -> Say.text("Markup");
    };
  }

  /** What its percentage is a part of. */
  String part() {
    return switch (this) {
      case MARGIN -> Say.text("Part of the price");
      case MARKUP -> Say.text("Part of the cost");
    };
  }

  /** @throws hankbook.measure.Unreadable if there is no price by so much */
  Pricing of(Percentage percentage) {
    return switch (this) {
      case MARGIN -> new Pricing.Margin(percentage);
      case MARKUP -> new Pricing.Markup(percentage);
    };
  }
}
