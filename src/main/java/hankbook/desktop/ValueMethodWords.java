package hankbook.desktop;

import hankbook.cost.ValueMethod;

/** The ways of valuing stock, as a weaver would say them. */
final class ValueMethodWords {
  private ValueMethodWords() {}

  /** The name of a method. */
  static String name(ValueMethod method) {
    return switch (method) {
      case IDENTIFIED -> "Identified cost";
      case FIFO -> "First in, first out";
      case AVERAGE -> "Weighted average";
    };
  }

  /** What it means, in one sentence. */
  static String meaning(ValueMethod method) {
    return switch (method) {
      case IDENTIFIED -> "Each skein is worth what was paid for it, by as much of it as is left.";
      case FIFO -> "The oldest metres of a yarn and colour count as used first, so what is left is worth what the newest cost.";
      case AVERAGE -> "All metres of a yarn and colour cost alike, reckoned anew each time some of it comes.";
    };
  }
}
