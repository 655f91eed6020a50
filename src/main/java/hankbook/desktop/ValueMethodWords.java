package hankbook.desktop;

import hankbook.cost.ValueMethod;
import hankbook.desktop.say.Say;

/** The ways of valuing stock, as a weaver would say them. */
final class ValueMethodWords {
  private ValueMethodWords() {}

  /** The name of a method. */
  static String name(ValueMethod method) {
    return switch (method) {
      case IDENTIFIED -> Say.text("Identified cost");
      case FIFO -> Say.text("First in, first out");
      case AVERAGE -> Say.text("Weighted average");
    };
  }

  /** What it means, in one sentence. */
  static String meaning(ValueMethod method) {
    return switch (method) {
      case IDENTIFIED -> Say.text("Each skein is worth what was paid for it, by as much of it as is left.");
      case FIFO -> Say.text("The oldest metres of a yarn and colour count as used first, so what is left is worth what the newest cost.");
      case AVERAGE -> Say.text("All metres of a yarn and colour cost alike, reckoned anew each time some of it comes.");
    };
  }
}
