package hankbook.studio;

import hankbook.exchange.BadInput;
import hankbook.ledger.Balances;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.plan.Plan;
import hankbook.reckon.DrawnSkein;
import hankbook.store.PlanVersion;
import hankbook.store.Session;
import hankbook.yarn.OneLine;
import hankbook.yarn.PackageForm;
import hankbook.yarn.YarnColour;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What there is to be said of a plan whose cloth is cut off, as though it had not been finished before.
 *
 * @param plan as its yarn was taken for it
 * @param skeins that it has on its loom, then every other of the same yarns, each by code
 * @param tares what packages of each form are wound on, as the ledger has it most often
 * @param finish the version of what was found that squares its book; 0 where it is not squared
 */
public record ToFinish(Plan plan, List<Taken> skeins, Map<PackageForm, Mass> tares, int finish) {
  public ToFinish {
    skeins = List.copyOf(skeins);
    tares = Map.copyOf(tares);
  }

  /** Whether its book is squared, so that finishing it takes that back. */
  public boolean isSquared() {
    return finish > 0;
  }

  /**
   * A skein that the plan took, or may have been taken for it.
   *
   * @param held what is known of it
   * @param drawn as the book has it for the plan
   */
  public record Taken(ShelfSkein held, DrawnSkein drawn) {
    /** Whether it must be said what is left of it. */
    public boolean isDrawn() {
      return drawn.onLoom().isPositive();
    }
  }

  /**
   * What there is to be said of a plan.
   *
   * @throws BadInput if there is no such plan, or it cannot be read
   * @throws NotDone if nothing is on its loom and its book is not squared
   */
  public static ToFinish of(Studio studio, String plan) throws BadInput, NotDone {
    String name = OneLine.of(plan);
    return studio.tried(session -> of(session, name));
  }

  private static ToFinish of(Session session, String name) throws BadInput, NotDone {
    Optional<FormerFinish> former = FormerFinish.of(session, name);
    Balances balances = former.isPresent() ? former.get().before() : session.balances().all();
    Optional<PlanVersion> version = former.isPresent() ? former.get().planVersion() : TakenFor.of(session, name).version(session);
    FinishGround ground = FinishGround.of(session, name, version, balances);
    Set<YarnColour> yarns = ground.skeins(Map.of()).stream().map(DrawnSkein::yarn).collect(Collectors.toSet());
    List<ShelfSkein> shelf = Shelf.everySkein(session);
    Map<String, ShelfSkein> held = shelf.stream()
        .filter(skein -> yarns.contains(skein.skein().yarn()))
        .collect(Collectors.toMap(skein -> skein.skein().code(), Function.identity()));
    List<Taken> all = ground.skeins(held.keySet().stream().collect(Collectors.toMap(Function.identity(), _ -> Length.ZERO))).stream()
        .flatMap(drawn -> Optional.ofNullable(held.get(drawn.code())).map(skein -> new Taken(skein, drawn)).stream())
        .toList();
    if (all.stream().noneMatch(Taken::isDrawn)) {
      throw NotDone.because("Nothing is on the loom for {0}; draw its yarn first.", name);
    }
    List<Taken> drawnFirst = all.stream().sorted((one, other) -> Boolean.compare(other.isDrawn(), one.isDrawn())).toList();
    return new ToFinish(ground.plan(), drawnFirst, tares(shelf), former.map(before -> before.version().number()).orElse(0));
  }

  private static Map<PackageForm, Mass> tares(List<ShelfSkein> shelf) {
    Map<PackageForm, Map<Mass, Long>> counted = new EnumMap<>(PackageForm.class);
    for (ShelfSkein held : shelf) {
      held.skein().measures().weighing().ifPresent(weighing ->
          counted.computeIfAbsent(held.skein().form(), _ -> new TreeMap<>()).merge(weighing.tare(), 1L, Long::sum));
    }
    Map<PackageForm, Mass> tares = new EnumMap<>(PackageForm.class);
    counted.forEach((form, each) -> each.entrySet().stream().max(Map.Entry.comparingByValue()).ifPresent(most -> tares.put(form, most.getKey())));
    return tares;
  }
}
