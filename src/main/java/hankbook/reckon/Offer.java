package hankbook.reckon;

import hankbook.measure.Phrase;
import hankbook.plan.Allowances;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What finished plans propose for the next one, with its reason. It is never put into a plan by itself.
 *
 * @param finding of the most telling group that has enough plans
 */
public record Offer(Finding finding) {
  /** What it is about. */
  public Learnable which() {
    return finding.which();
  }

  /** In what {@link Learnable#unit} says: the mean, and nothing where that is less than nothing. */
  public BigFraction value() {
    return which().unit().within(finding.mean());
  }

  /** As a plan's file takes it, or a time in words: {@code 7.4 % of cloth}, {@code 68.3 cm}, {@code 12.4 s an end}. */
  public String text() {
    return which().unit().printInFull(value());
  }

  /** The allowances with this one as it is told; as they were where it is a time. */
  public Allowances in(Allowances allowances) {
    return LearntAllowance.with(allowances, which(), which().unit().told(value()));
  }

  /** Why: {@code from 5 plans in 2/2 twill of wool, 5.9 to 8.9 %}. */
  public Phrase reason() {
    List<Lesson> odd = finding.odd();
    return odd.isEmpty() ? from() : Phrase.of("{0}; odd among them: {1}", from(), Phrase.list(odd.stream().map(this::with).toList()));
  }

  /** All of it in words: {@code 7.4 % of cloth, from 5 plans in 2/2 twill of wool, 5.9 to 8.9 %}. */
  public Phrase words() {
    return Phrase.of("{0}, {1}", which().unit().inFull(value()), reason());
  }

  private Phrase from() {
    if (finding.count() == 1) {
      return Phrase.of("from one plan only, {0}", finding.group().phrase());
    }
    Phrase range = finding.scatter().orElseThrow();
    return finding.mean().signum() < 0
        ? Phrase.of("from {0}, {1} on average, {2}", finding.plans(), which().unit().phrase(finding.mean()), range)
        : Phrase.of("from {0}, {1}", finding.plans(), range);
  }

  private Phrase with(Lesson lesson) {
    return Phrase.of("{0} with {1}", lesson.plan(), which().unit().phrase(lesson.value()));
  }

  /** What a plan says of it now, in the same unit; empty where it is a time. */
  public Optional<BigFraction> said(Allowances allowances) {
    return LearntAllowance.in(allowances, which());
  }
}
