package hankbook.studio;

import hankbook.allot.Cover;
import hankbook.allot.Verdict;
import hankbook.exchange.BadInput;
import hankbook.exchange.PlanFile;
import hankbook.ledger.Place;
import hankbook.measure.Length;
import hankbook.yarn.Skein;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** How every plan of the ledger stands, each on its own against what is free for it. */
public final class PlanStandings {
  private final Studio studio;

  public PlanStandings(Studio studio) {
    this.studio = studio;
  }

  private record Kept(String name, String text, List<Skein> stock, Length reserved, Length onLoom) {}

  /** In the order of the plans' names. */
  public List<PlanStanding> all() {
    List<Kept> kept = studio.read(session -> {
      List<ShelfSkein> skeins = Shelf.everySkein(session);
      return session.plans().names().stream()
          .filter(name -> Plans.text(session, name).isPresent())
          .map(name -> new Kept(
              name, Plans.text(session, name).orElseThrow(), Shelf.freeFor(name, skeins), sum(skeins, name, Place.Kind.RESERVED), sum(skeins, name, Place.Kind.LOOM)))
          .toList();
    });
    return kept.stream().map(PlanStandings::standing).toList();
  }

  private static Length sum(List<ShelfSkein> skeins, String plan, Place.Kind where) {
    return skeins.stream()
        .map(skein -> (where == Place.Kind.RESERVED ? skein.reserved() : skein.onLoom()).getOrDefault(plan, Length.ZERO))
        .reduce(Length.ZERO, Length::plus);
  }

  private static PlanStanding standing(Kept kept) {
    try {
      Answer answer = Answer.of(kept.name(), PlanFile.read(kept.name(), kept.text()), kept.stock());
      Optional<Verdict> worst = answer.check().covers().stream().map(Cover::verdict).max(Comparator.naturalOrder());
      return new PlanStanding(kept.name(), worst, worst.isPresent() ? "" : kept.name() + " asks for no yarn", kept.reserved(), kept.onLoom());
    } catch (BadInput unfinished) {
      return new PlanStanding(kept.name(), Optional.empty(), String.join("; ", unfinished.faults()), kept.reserved(), kept.onLoom());
    }
  }
}
