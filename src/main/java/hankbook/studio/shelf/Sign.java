package hankbook.studio.shelf;

/** How an amount is held against another. */
public enum Sign {
  OVER(">"),
  UNDER("<"),
  AT_LEAST(">="),
  AT_MOST("<=");

  private final String written;

  Sign(String written) {
    this.written = written;
  }

  String written() {
    return written;
  }

  /** Whether something holds that compares so with what is asked. */
  boolean holds(int comparison) {
    return switch (this) {
      case OVER -> comparison > 0;
      case UNDER -> comparison < 0;
      case AT_LEAST -> comparison >= 0;
      case AT_MOST -> comparison <= 0;
    };
  }
}
