package hankbook.studio;

import hankbook.allot.Cover;
import hankbook.allot.Judgement;
import hankbook.allot.Verdict;
import hankbook.exchange.BadInput;
import hankbook.exchange.PlanFile;
import hankbook.gear.Gear;
import hankbook.measure.Length;
import hankbook.reckon.Findings;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** How every plan of the ledger stands, each on its own against what is free for it. */
public final class PlanStandings {
  private final Studio studio;

  public PlanStandings(Studio studio) {
    this.studio = studio;
  }

  private record Kept(String name, String text, Means means, Length reserved, Length onLoom, boolean isBeingFinished, boolean isFinished) {}

  /** In the order of the plans' names. */
  public List<PlanStanding> all() {
    List<Kept> kept = studio.read(session -> {
      List<ShelfSkein> skeins = Shelf.everySkein(session);
      Judgement judgement = Settings.judgement(session);
      Gear gear = OwnGear.of(session);
      Findings learnt = studio.learnt().findings(session);
      Set<String> drafted = session.actuals().drafted();
      Set<String> finished = session.actuals().squared();
      return Plans.texts(session).entrySet().stream()
          .map(plan -> kept(
              plan.getKey(), plan.getValue(), new Means(Shelf.freeFor(plan.getKey(), skeins), judgement, gear, learnt), skeins, drafted.contains(plan.getKey()),
              finished.contains(plan.getKey())))
          .toList();
    });
    return kept.stream().map(PlanStandings::standing).toList();
  }

  private static Kept kept(String name, String text, Means means, List<ShelfSkein> skeins, boolean isBeingFinished, boolean isFinished) {
    return new Kept(name, text, means, sum(skeins, name, ShelfSkein::reserved), sum(skeins, name, ShelfSkein::onLoom), isBeingFinished, isFinished);
  }

  private static Length sum(List<ShelfSkein> skeins, String plan, Function<ShelfSkein, Map<String, Length>> where) {
    return skeins.stream().map(skein -> where.apply(skein).getOrDefault(plan, Length.ZERO)).reduce(Length.ZERO, Length::plus);
  }

  private static PlanStanding standing(Kept kept) {
    try {
      Answer answer = Answer.of(kept.name(), PlanFile.read(kept.name(), kept.text()), kept.means());
      Optional<Verdict> worst = answer.check().covers().stream().map(Cover::verdict).max(Comparator.naturalOrder());
      return standing(kept, worst, worst.isPresent() ? "" : kept.name() + " asks for no yarn");
    } catch (BadInput unfinished) {
      return standing(kept, Optional.empty(), String.join("; ", unfinished.faults()));
    }
  }

  private static PlanStanding standing(Kept kept, Optional<Verdict> verdict, String unfinished) {
    return new PlanStanding(kept.name(), verdict, unfinished, kept.reserved(), kept.onLoom(), kept.isBeingFinished(), kept.isFinished());
  }
}
