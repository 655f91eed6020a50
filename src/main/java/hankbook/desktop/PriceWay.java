package hankbook.desktop;

import hankbook.cost.Pricing;
import hankbook.desktop.say.Say;
import hankbook.measure.Percentage;

/** The two ways from a cost to a price. */
enum PriceWay {
  MARGIN("Margin", "Part of the price"),
  MARKUP("Markup", "Part of the cost");

  private final String words;
  private final String part;

  PriceWay(String words, String part) {
    this.words = words;
    this.part = part;
  }

  String words() {
    return Say.known(words);
  }

  /** What its percentage is a part of. */
  String part() {
    return Say.known(part);
  }

  /** @throws hankbook.measure.Unreadable if there is no price by so much */
  Pricing of(Percentage percentage) {
    return switch (this) {
      case MARGIN -> new Pricing.Margin(percentage);
      case MARKUP -> new Pricing.Markup(percentage);
    };
  }
}
