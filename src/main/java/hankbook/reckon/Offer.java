package hankbook.reckon;

import hankbook.plan.Allowances;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
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
  public String reason() {
    String from = finding.count() == 1 ? "from one plan only, " + finding.group().words() : "from " + finding.plans() + grown() + ", " + finding.range();
    return from + odd();
  }

  /** All of it in words: {@code 7.4 % of cloth, from 5 plans in 2/2 twill of wool, 5.9 to 8.9 %}. */
  public String words() {
    return text() + ", " + reason();
  }

  private String grown() {
    return finding.mean().signum() < 0 ? ", " + which().unit().print(finding.mean()) + " on average" : "";
  }

  private String odd() {
    List<Lesson> odd = finding.odd();
    return odd.isEmpty() ? "" : "; odd among them: " + odd.stream().map(lesson -> lesson.plan() + " with " + which().unit().print(lesson.value())).collect(Collectors.joining(", "));
  }

  /** What a plan says of it now, in the same unit; empty where it is a time. */
  public Optional<BigFraction> said(Allowances allowances) {
    return LearntAllowance.in(allowances, which());
  }
}
