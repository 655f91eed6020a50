package hankbook.studio;

import hankbook.exchange.ActualsFile;
import hankbook.ledger.Balances;
import hankbook.ledger.Entry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Holding;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.measure.Phrase;
import hankbook.reckon.Actuals;
import hankbook.store.ActualsVersion;
import hankbook.store.PlanVersion;
import hankbook.store.RecordedEntry;
import hankbook.store.Session;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What squares the book of a plan already, where it is to be finished again or that is to be taken back.
 *
 * @param version that stands
 */
record FormerFinish(Session session, ActualsVersion version) {
  private static final Place SHELF = new Place.Shelf();

  static Optional<FormerFinish> of(Session session, String plan) {
    return session.actuals().standing(plan).map(version -> new FormerFinish(session, version));
  }

  /** The version of the plan that its yarn was taken for. */
  Optional<PlanVersion> planVersion() {
    return session.plans().numbered(version.plan(), version.planVersion().orElse(0));
  }

  /** The day on which the cloth was cut off. */
  Optional<LocalDate> date() {
    return FinishedPlans.file(version).map(ActualsFile::actuals).flatMap(Actuals::date);
  }

  /** What is to be taken back of it, in that order: each entry, or what brought it back after it was taken back. */
  List<Entry> standing() {
    List<Entry> standing = new ArrayList<>();
    version.entries().reversed().forEach(id -> session.entries().standing(id).ifPresent(standing::add));
    return standing;
  }

  /**
   * The balances that what was found is held against: those before the book was first squared, since what is left of a skein was left on that day, whatever
   * was taken off it afterwards. A skein that was not in the house then counts as it is now.
   */
  Balances before() {
    Balances now = session.balances().all();
    List<Entry> since = session.actuals().firstEntry(version.plan()).map(first -> session.entries().since(first)).orElse(List.of()).stream().map(RecordedEntry::entry).toList();
    Map<Holding, Length> before = new HashMap<>(now.without(since).lengths());
    Set<String> inHouse = before.keySet().stream().filter(FormerFinish::isInHouse).map(Holding::skein).collect(Collectors.toSet());
    now.without(standing()).lengths().forEach((holding, length) -> {
      if (!inHouse.contains(holding.skein())) {
        before.put(holding, length);
      }
    });
    return new Balances(before);
  }

  private static boolean isInHouse(Holding holding) {
    return !(holding.place() instanceof Place.Maker || holding.place() instanceof Place.Ordered);
  }

  /** Whether finishing it again would move no yarn but the same, on the same day, by the same leftovers. */
  boolean isSquaredBy(Finishing finishing, Actuals actuals) {
    Map<EntryKind, List<Transfer>> moved = new LinkedHashMap<>();
    boolean untouched = true;
    for (Entry entry : version.entries().stream().flatMap(id -> session.entries().entry(id).stream()).toList()) {
      moved.put(entry.kind(), entry.transfers());
      untouched &= entry.date().equals(finishing.date()) && !session.entries().isReversed(entry.id());
    }
    boolean sameLeftovers = FinishedPlans.file(version).map(ActualsFile::actuals).filter(kept -> kept.leftovers().equals(actuals.leftovers())).isPresent();
    return untouched && sameLeftovers && moved.equals(finishing.squared().movements());
  }

  /** Refuses where what it put on the shelf is there no more. */
  void refuseIfGone() throws NotDone {
    for (Map.Entry<String, Length> came : onShelf(standing()).entrySet()) {
      Length gone = came.getValue().minus(session.balances().ofSkein(came.getKey()).at(came.getKey(), SHELF));
      if (gone.isPositive() && came.getValue().isPositive()) {
        throw NotDone.because("{0} of what came back on {1} have since gone elsewhere; return them to the shelf first. Nothing was changed.", words(gone), came.getKey());
      }
    }
  }

  /** Refuses also where what another squaring would take more is there no more. */
  void refuseIfGone(Finishing finishing) throws NotDone {
    refuseIfGone();
    Map<String, Length> came = onShelf(standing());
    for (Map.Entry<String, Length> comes : onShelf(finishing.squared().movements().values().stream().flatMap(List::stream)).entrySet()) {
      String skein = comes.getKey();
      Length free = session.balances().ofSkein(skein).at(skein, SHELF).minus(came.getOrDefault(skein, Length.ZERO));
      Length lacks = free.plus(comes.getValue()).negated();
      if (lacks.isPositive()) {
        throw NotDone.because("{0} of what {1} used of {2} by that have since gone elsewhere; return them to the shelf first, or "
          + "measure again. Nothing was changed.", words(lacks), version.plan(), skein);
      }
    }
  }

  private static Map<String, Length> onShelf(List<Entry> entries) {
    return onShelf(entries.stream().flatMap(entry -> entry.transfers().stream()));
  }

  private static Map<String, Length> onShelf(Stream<Transfer> transfers) {
    Map<String, Length> came = new LinkedHashMap<>();
    transfers.forEach(transfer -> {
      Length in = transfer.to().equals(SHELF) ? transfer.length() : Length.ZERO;
      came.merge(transfer.skein(), transfer.from().equals(SHELF) ? in.minus(transfer.length()) : in, Length::plus);
    });
    return came;
  }

  private static Phrase.As words(Length length) {
    return Phrase.yarn(length, 1);
  }
}
