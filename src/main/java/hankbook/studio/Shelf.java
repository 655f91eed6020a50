package hankbook.studio;

import hankbook.ledger.Balances;
import hankbook.ledger.Holding;
import hankbook.measure.Length;
import hankbook.store.Remeasurement;
import hankbook.store.Session;
import hankbook.yarn.GristSample;
import hankbook.yarn.Skein;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What is on the shelf, and what of it is promised. */
public final class Shelf {
  private final Studio studio;

  public Shelf(Studio studio) {
    this.studio = studio;
  }

  /** The skeins in the house, by code. */
  public List<ShelfSkein> skeins() {
    return everySkein().stream().filter(skein -> !skein.isUsedUp()).toList();
  }

  /** Every skein there ever was, by code. */
  public List<ShelfSkein> everySkein() {
    return studio.read(Shelf::everySkein);
  }

  /** The codes of those that came to be by winding yarn off others, whose cost came with the yarn. */
  public Set<String> woundOff() {
    return studio.read(session -> session.balances().woundOnly());
  }

  /** The codes of measured skeins that are written down and in no place, since their receipts were all taken back: they may be received again. */
  public Set<String> takenBack() {
    return studio.read(session -> {
      Set<String> placed = session.balances().all().lengths().keySet().stream().map(Holding::skein).collect(Collectors.toCollection(HashSet::new));
      placed.addAll(session.balances().woundOnly());
      Map<String, GristSample> samples = session.gristSamples().all();
      return session.skeins().all().stream()
          .filter(skein -> !placed.contains(skein.code()) && skein.withSample(Optional.ofNullable(samples.get(skein.yarn().yarn()))).isMeasured())
          .map(Skein::code)
          .collect(Collectors.toUnmodifiableSet());
    });
  }

  /** One skein. */
  public Optional<ShelfSkein> skein(String code) {
    return studio.read(session -> skein(session, code));
  }

  static Optional<ShelfSkein> skein(Session session, String code) {
    return session.skeins().find(code)
        .map(skein -> ShelfSkein.of(
            skein,
            session.balances().ofSkein(code),
            session.remeasurements().of(code),
            session.gristSamples().of(skein.yarn().yarn()),
            session.balances().woundOnly().contains(code)));
  }

  static List<ShelfSkein> everySkein(Session session) {
    Map<String, Map<Holding, Length>> bySkein = new HashMap<>();
    session.balances().all().lengths().forEach(
        (holding, length) -> bySkein.computeIfAbsent(holding.skein(), code -> new HashMap<>()).put(holding, length));
    Map<String, List<Remeasurement>> again = session.remeasurements().all();
    Map<String, GristSample> samples = session.gristSamples().all();
    Set<String> woundOnly = session.balances().woundOnly();
    return session.skeins().all().stream()
        .map(skein -> ShelfSkein.of(
            skein,
            new Balances(bySkein.getOrDefault(skein.code(), Map.of())),
            again.getOrDefault(skein.code(), List.of()),
            Optional.ofNullable(samples.get(skein.yarn().yarn())),
            woundOnly.contains(skein.code())))
        .toList();
  }

  /** The skeins in the house, each with what of it a plan may use. */
  static List<Skein> freeFor(String plan, Session session) {
    return freeFor(plan, everySkein(session));
  }

  /** Every skein with what of it is free for a plan: what is on the shelf, and what is set aside for the plan itself. */
  public static List<Skein> freeFor(String plan, List<ShelfSkein> skeins) {
    return skeins.stream().filter(held -> !held.isUsedUp()).map(held -> held.skeinFor(plan)).toList();
  }
}
