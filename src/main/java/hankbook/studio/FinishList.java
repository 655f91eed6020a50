package hankbook.studio;

import hankbook.exchange.ActualsFile;
import hankbook.measure.Length;
import hankbook.store.ActualsVersion;
import hankbook.store.Session;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * The plans whose cloth is to be cut off, and those whose book is squared.
 *
 * @param waiting the plans that have yarn on a loom, by name
 * @param squared those whose book is squared, the newest first
 */
public record FinishList(List<Waiting> waiting, List<Closed> squared) {
  /** No plan was ever begun. */
  public static final FinishList NONE = new FinishList(List.of(), List.of());

  private static final Comparator<Closed> NEWEST_FIRST = Comparator.comparing(Closed::date).thenComparing(Closed::recorded).reversed().thenComparing(Closed::plan);

  public FinishList {
    waiting = List.copyOf(waiting);
    squared = List.copyOf(squared);
  }

  /**
   * A plan with yarn on a loom.
   *
   * @param plan its name
   * @param onLoom of all its skeins together, over zero
   * @param isBegun whether something that was found is filled in already
   */
  public record Waiting(String plan, Length onLoom, boolean isBegun) {}

  /**
   * A plan whose book is squared.
   *
   * @param plan its name
   * @param date when its cloth was cut off
   * @param author who squared it
   * @param recorded when that was written down
   * @param isBegun whether something is filled in to finish it again
   */
  public record Closed(String plan, LocalDate date, String author, Instant recorded, boolean isBegun) {}

  /** As it is now. */
  public static FinishList of(Studio studio) {
    return studio.read(FinishList::of);
  }

  static FinishList of(Session session) {
    Set<String> begun = new HashSet<>(session.actuals().drafted());
    Map<String, Length> onLoom = new TreeMap<>();
    Shelf.everySkein(session).forEach(skein -> skein.onLoom().forEach((plan, length) -> onLoom.merge(plan, length, Length::plus)));
    List<Waiting> waiting = onLoom.entrySet().stream()
        .filter(plan -> plan.getValue().isPositive())
        .map(plan -> new Waiting(plan.getKey(), plan.getValue(), begun.contains(plan.getKey())))
        .toList();
    List<Closed> squared = session.actuals().standing().values().stream().map(version -> closed(version, begun.contains(version.plan()))).sorted(NEWEST_FIRST).toList();
    return new FinishList(waiting, squared);
  }

  private static Closed closed(ActualsVersion version, boolean isBegun) {
    LocalDate recorded = version.recorded().atOffset(ZoneOffset.UTC).toLocalDate();
    LocalDate date = FinishedPlans.file(version).map(ActualsFile::actuals).flatMap(actuals -> actuals.date()).orElse(recorded);
    return new Closed(version.plan(), date, version.author(), version.recorded(), isBegun);
  }
}
