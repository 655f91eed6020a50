package hankbook.plan;

import hankbook.measure.Phrase;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A figure that explains itself: what it is, and the figures it is made of, which make exactly this number.
 *
 * @param term what it is and how it is reckoned, in words
 * @param of whose it is where there are several, such as a yarn, a skein or a piece; else empty
 * @param amount the figure
 * @param how its parts make it
 * @param parts in the order they are read; none of what is given
 */
public record Because(Term term, Phrase of, Amount amount, Combined how, List<Because> parts) {
  public Because {
    parts = List.copyOf(parts);
    if (!how.makes(amount.exact(), exact(parts))) {
      throw new IllegalArgumentException(term + " of '" + of + "' is " + amount + ", which is not the " + how + " of " + parts.stream().map(Because::amount).toList());
    }
  }

  /** Of something that has a name of its own, or of nothing in particular. */
  public Because(Term term, String of, Amount amount, Combined how, List<Because> parts) {
    this(term, Phrase.just(of), amount, how, parts);
  }

  /** A figure that was entered, measured or read, of what is said in words. */
  public static Because given(Term term, Phrase of, Amount amount) {
    return new Because(term, of, amount, Combined.GIVEN, List.of());
  }

  /** A figure that was entered, measured or read. */
  public static Because given(Term term, String of, Amount amount) {
    return new Because(term, of, amount, Combined.GIVEN, List.of());
  }

  /** A figure that was entered, measured or read, and of which there is but one. */
  public static Because given(Term term, Amount amount) {
    return given(term, "", amount);
  }

  /**
   * A figure made of others.
   *
   * @param kind makes the amount of the number that the parts make
   */
  public static Because made(Term term, String of, Function<BigFraction, Amount> kind, Combined how, List<Because> parts) {
    return new Because(term, of, kind.apply(how.of(exact(parts))), how, parts);
  }

  /** A figure made of others, of which there is but one. */
  public static Because made(Term term, Function<BigFraction, Amount> kind, Combined how, Because... parts) {
    return made(term, "", kind, how, List.of(parts));
  }

  /** A sum; where it is of one part alone, that part under the sum's name. */
  public static Because sum(Term term, String of, Function<BigFraction, Amount> kind, List<Because> parts) {
    return parts.size() == 1 ? parts.getFirst().as(term, of) : made(term, of, kind, Combined.SUM, parts);
  }

  /** The same figure under another name. */
  public Because as(Term other, String whose) {
    return new Because(other, whose, amount, how, parts);
  }

  /** Whether it is one of several, and says of which. */
  public boolean isOfOne() {
    return !of.english().isEmpty();
  }

  /** Whether there is anything to tell of it. */
  public boolean isMade() {
    return how != Combined.GIVEN;
  }

  /** It and all it is made of, from the top. */
  public Stream<Because> all() {
    return Stream.concat(Stream.of(this), parts.stream().flatMap(Because::all));
  }

  /** What it is read as: of a number that was rounded to the smallest unit, the exact number, since the two are written alike. */
  public Because read() {
    boolean onlyRounded = how == Combined.NEAREST || how == Combined.UP;
    return onlyRounded && parts.getFirst().isMade() ? parts.getFirst() : this;
  }

  private static List<BigFraction> exact(List<Because> parts) {
    return parts.stream().map(part -> part.amount().exact()).toList();
  }
}
