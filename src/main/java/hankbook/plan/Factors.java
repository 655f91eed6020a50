package hankbook.plan;

import hankbook.measure.Percentage;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** What percentages make of the number they are of: factors that explain themselves. */
final class Factors {
  private static final Because ALL = Because.given(Term.WHOLE, new Amount.Factor(BigFraction.ONE));

  private Factors() {}

  /** 1 − p. */
  static Because left(Term term, Term of, Percentage percentage) {
    return Because.made(term, Amount.Factor::new, Combined.DIFFERENCE, ALL, part(of, percentage));
  }

  /** 1 + p. */
  static Because grown(Term term, Term of, Percentage percentage) {
    return Because.made(term, Amount.Factor::new, Combined.SUM, ALL, part(of, percentage));
  }

  /** 1 + p, or 1 / (1 − p) where it is said to be of the yarn. */
  static Because yarnPerCloth(Term term, Term of, Percentage percentage) {
    if (percentage.base() != Percentage.Base.YARN) {
      return grown(term, of, percentage);
    }
    return Because.made(term, "", Amount.Factor::new, Combined.QUOTIENT, List.of(ALL, left(Term.YARN_LEFT_BY_TAKE_UP, of, percentage)));
  }

  private static Because part(Term of, Percentage percentage) {
    return Because.given(of, new Amount.Factor(percentage.fraction()));
  }
}
