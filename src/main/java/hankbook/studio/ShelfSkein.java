package hankbook.studio;

import hankbook.ledger.Balances;
import hankbook.ledger.Holding;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.store.Remeasurement;
import hankbook.yarn.Doubts;
import hankbook.yarn.GristSample;
import hankbook.yarn.Kept;
import hankbook.yarn.Measures;
import hankbook.yarn.Skein;
import hankbook.yarn.Uncertainty;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A skein and where its yarn is now.
 *
 * @param skein as it came, with what of it is in the house
 * @param free on the shelf and promised to nothing
 * @param reserved for each plan, by name
 * @param onLoom for each plan, by name
 */
public record ShelfSkein(Skein skein, Length free, Map<String, Length> reserved, Map<String, Length> onLoom) {
  public ShelfSkein {
    reserved = Collections.unmodifiableSortedMap(new TreeMap<>(reserved));
    onLoom = Collections.unmodifiableSortedMap(new TreeMap<>(onLoom));
  }

  /** Where yarn goes that has come off the skein. */
  private static final Set<Place.Kind> OFF_THE_SKEIN =
      Set.of(Place.Kind.LOOM, Place.Kind.CLOTH, Place.Kind.THRUMS, Place.Kind.SAMPLE, Place.Kind.AWAY, Place.Kind.REWOUND);

  /**
   * A skein as the balances say.
   *
   * @param balances of this skein alone
   * @param again what it was measured to hold since it came, the oldest first
   * @param sample of its yarn
   * @param woundOnly whether it came to be by winding yarn off another, so that where nothing of it is anywhere there is none
   */
  static ShelfSkein of(Skein skein, Balances balances, List<Remeasurement> again, Optional<GristSample> sample, boolean woundOnly) {
    SortedMap<String, Length> reserved = new TreeMap<>();
    SortedMap<String, Length> onLoom = new TreeMap<>();
    boolean begun = skein.opened();
    for (Map.Entry<Holding, Length> balance : balances.lengths().entrySet()) {
      Place place = balance.getKey().place();
      begun |= OFF_THE_SKEIN.contains(place.kind()) && balance.getValue().isPositive();
      switch (place) {
        case Place.Reserved(String plan) -> reserved.put(plan, balance.getValue());
        case Place.Loom(String plan) -> onLoom.put(plan, balance.getValue());
        default -> {}
      }
    }
    Length free = balances.at(new Holding(skein.code(), new Place.Shelf()));
    Length held = free.plus(sum(reserved)).plus(sum(onLoom));
    boolean everCounted = woundOnly || !balances.lengths().isEmpty() || skein.isMeasured();
    return new ShelfSkein(everCounted ? skein.withSample(sample).withKept(kept(skein.code(), balances, held, again), begun) : skein, free, reserved, onLoom);
  }

  private static Kept kept(String code, Balances balances, Length held, List<Remeasurement> again) {
    Optional<Measures> measures = again.stream().filter(measured -> measured.saysHow() || measured.rewound()).reduce((_, later) -> later).map(Remeasurement::measures);
    return new Kept(held, counted(code, balances, again), measures);
  }

  /** By how much of it the ledger was last brought into agreement with a measurement; nothing where only a length was given since. */
  private static Optional<Length> counted(String code, Balances balances, List<Remeasurement> again) {
    if (!again.isEmpty()) {
      return Optional.of(again.getLast()).filter(Remeasurement::saysHow).map(Remeasurement::found);
    }
    boolean recounted = !balances.at(new Holding(code, new Place.Recount())).isZero();
    return Optional.of(balances.at(new Holding(code, new Place.Maker())).negated()).filter(received -> received.isPositive() && !recounted);
  }

  /** After some of it was reserved for a plan or released. */
  ShelfSkein after(Transfer transfer) {
    Map<String, Length> promised = new TreeMap<>(reserved);
    Length now = switch (transfer) {
      case Transfer(String _, Place.Shelf _, Place.Reserved(String plan), Length length) -> {
        promised.merge(plan, length, Length::plus);
        yield free.minus(length);
      }
      case Transfer(String _, Place.Reserved(String plan), Place.Shelf _, Length length) -> {
        promised.merge(plan, length.negated(), Length::plus);
        yield free.plus(length);
      }
      default -> throw new IllegalArgumentException(transfer + " neither reserves nor releases");
    };
    return new ShelfSkein(skein, now, promised, onLoom);
  }

  /** As though nothing were set aside for some plans. */
  ShelfSkein released(Set<String> plans) {
    Map<String, Length> kept = new TreeMap<>(reserved);
    kept.keySet().removeAll(plans);
    return new ShelfSkein(skein, free.plus(sum(reserved)).minus(sum(kept)), kept, onLoom);
  }

  /** The skein with what of it a plan may use. */
  Skein skeinFor(String plan) {
    return skein.isMeasured() ? skein.withLeft(freeFor(plan), skein.opened()) : skein;
  }

  /** What of it a plan may use: what is free, and what that plan has already. */
  public Length freeFor(String plan) {
    return free.plus(reserved.getOrDefault(plan, Length.ZERO)).plus(onLoom.getOrDefault(plan, Length.ZERO));
  }

  /** How surely what there is of it is known: as it was last measured, whatever was taken off it since. */
  public Length uncertainty(Doubts doubts) {
    return Uncertainty.of(List.of(skein), doubts).combined();
  }

  /** What is set aside for plans. */
  public Length allReserved() {
    return sum(reserved);
  }

  /** What is on looms. */
  public Length allOnLoom() {
    return sum(onLoom);
  }

  /** Whether each of some words, whatever their case, stands somewhere in what is known of it. */
  public boolean mentions(String words) {
    String known =
        String.join(
                "\n",
                skein.code(),
                skein.yarn().toString(),
                skein.fibre(),
                skein.grist().map(Object::toString).orElse(""),
                skein.form().toString(),
                skein.lot(),
                skein.location(),
                String.join("\n", reserved.keySet()),
                String.join("\n", onLoom.keySet()))
            .toLowerCase(Locale.ROOT);
    return Arrays.stream(words.toLowerCase(Locale.ROOT).split("\\s+")).allMatch(known::contains);
  }

  /** Whether nothing of it is in the house any more. A skein that was never measured may still be there. */
  public boolean isUsedUp() {
    return skein.isMeasured() && skein.holds().isZero();
  }

  private static Length sum(Map<String, Length> lengths) {
    return lengths.values().stream().reduce(Length.ZERO, Length::plus);
  }
}
