package hankbook.cost;

import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.Unreadable;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What is known of the skeins that a purchase paid for, by which its charges are shared and its prices derived.
 *
 * @param skeins by their codes; each of the purchase's
 */
public record Parcel(Map<String, Received> skeins) {
  public Parcel {
    skeins = Map.copyOf(skeins);
  }

  /**
   * How heavy the yarn of some skeins is together.
   *
   * @throws Unreadable naming those whose mass is not known
   */
  BigFraction massToShareBy(List<String> codes) {
    List<String> unknown = codes.stream().filter(code -> received(code).mass().isEmpty()).toList();
    if (!unknown.isEmpty()) {
      throw new Unreadable(
          String.join(", ", unknown), "skeins whose mass is known, by a weighing or by their grist and length, to share by mass; weigh them, or share by value");
    }
    return BigFraction.of(mass(codes).orElseThrow().milligrams());
  }

  /**
   * By what a line is shared over its skeins: by the lengths printed on them, as they were sold; where one has none, by the lengths that came, so that a metre
   * of one line costs the same on each; where one is not known, by mass; else equally.
   */
  List<BigFraction> weights(List<String> codes) {
    return known(codes, skein -> skein.label().map(Length::exactTenths))
        .or(() -> known(codes, skein -> skein.length().map(Length::exactTenths)))
        .or(() -> known(codes, skein -> skein.mass().map(mass -> BigFraction.of(mass.milligrams()))))
        .orElseGet(() -> codes.stream().map(_ -> BigFraction.ONE).toList());
  }

  /** The length that came of some skeins together; empty where that of one is not known. */
  public Optional<Length> length(List<String> codes) {
    return known(codes, Received::length).map(lengths -> lengths.stream().reduce(Length.ZERO, Length::plus));
  }

  /** The mass of some skeins together; empty where that of one is not known. */
  public Optional<Mass> mass(List<String> codes) {
    return known(codes, Received::mass).map(masses -> new Mass(masses.stream().mapToLong(Mass::milligrams).sum()));
  }

  private <T> Optional<List<T>> known(List<String> codes, Function<Received, Optional<T>> amount) {
    List<T> known = codes.stream().map(this::received).map(amount).flatMap(Optional::stream).toList();
    return known.size() == codes.size() ? Optional.of(known) : Optional.empty();
  }

  private Received received(String code) {
    return skeins.getOrDefault(code, new Received(Optional.empty(), Optional.empty(), Optional.empty()));
  }
}
