package hankbook.reckon;

/** Carries a refusal out of the reckoning that met it. */
final class Refusing extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient Unsquared why;

  Refusing(Unsquared why) {
    super(why.message());
    this.why = why;
  }

  Unsquared why() {
    return why;
  }
}
