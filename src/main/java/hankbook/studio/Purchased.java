package hankbook.studio;

import hankbook.cost.KeptPurchase;
import hankbook.cost.LandedLine;
import hankbook.cost.LandedSkein;
import hankbook.cost.Parcel;
import hankbook.cost.UnitPrice;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * A purchase of the ledger, with what is known now of the skeins it paid for, from which its unit prices are derived.
 *
 * @param kept as it was last said
 * @param parcel its skeins as they came
 */
public record Purchased(KeptPurchase kept, Parcel parcel) {
  /** What a metre of a line cost; empty where the length of one of its skeins is not known. */
  public Optional<UnitPrice> perMetre(LandedLine line) {
    return perMetre(line.line().skeins(), line.landed());
  }

  /** What a kilogram of a line cost; empty where the mass of one of its skeins is not known. */
  public Optional<UnitPrice> perKilogram(LandedLine line) {
    return perKilogram(line.line().skeins(), line.landed());
  }

  /** What a metre of a skein cost, by the length that came. */
  public Optional<UnitPrice> perMetre(LandedSkein skein) {
    return perMetre(List.of(skein.skein()), skein.cost());
  }

  /** What a kilogram of a skein cost. */
  public Optional<UnitPrice> perKilogram(LandedSkein skein) {
    return perKilogram(List.of(skein.skein()), skein.cost());
  }

  private Optional<UnitPrice> perMetre(List<String> skeins, Money paid) {
    return parcel.length(skeins).map(length -> UnitPrice.ofMetre(paid, length));
  }

  private Optional<UnitPrice> perKilogram(List<String> skeins, Money paid) {
    return parcel.mass(skeins).map(mass -> UnitPrice.ofKilogram(paid, mass));
  }
}
