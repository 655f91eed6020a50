package hankbook.studio;

import hankbook.cost.Alternatives;
import hankbook.cost.Contender;
import hankbook.cost.CostWish;
import hankbook.exchange.BadInput;
import hankbook.plan.Plan;
import hankbook.store.Session;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Lays plans side by side that might be woven one in the place of another. Each is held against the shelf by itself: what is reserved for one of the others counts as
 * free, what is on its loom does not.
 */
public final class ComparePlans {
  private final Studio studio;

  public ComparePlans(Studio studio) {
    this.studio = studio;
  }

  /**
   * One of them, reckoned or not.
   *
   * @param contender empty where it cannot be reckoned
   * @param why it cannot; null where it can be
   */
  public record Reckoned(Alternative alternative, Optional<Contender> contender, Optional<BadInput> why) {}

  /**
   * What was found.
   *
   * @param all in the order in which they were asked for
   */
  public record Compared(List<Reckoned> all) {
    public Compared {
      all = List.copyOf(all);
    }

    /** Those that can be reckoned, side by side; empty where none can. */
    public Optional<Alternatives> alternatives() {
      List<Contender> reckoned = all.stream().flatMap(one -> one.contender().stream()).toList();
      return reckoned.isEmpty() ? Optional.empty() : Optional.of(Alternatives.of(reckoned));
    }
  }

  /** Reckons each for itself, so that one that is unfinished does not hide the others. */
  public Compared of(List<Alternative> wanted) {
    Found found = found(wanted);
    return new Compared(wanted.stream().map(one -> reckoned(one, found)).toList());
  }

  /**
   * Reckons all of them.
   *
   * @throws BadInput if there are fewer than two or more than {@link Alternatives#MOST}, two of one name, or one that cannot be reckoned
   */
  public Alternatives all(List<Alternative> wanted) throws BadInput {
    if (wanted.size() < 2 || wanted.size() > Alternatives.MOST) {
      throw new BadInput("compare: found " + wanted.size() + (wanted.size() == 1 ? " plan" : " plans") + ", wanted two to " + Alternatives.MOST + ", variants counted");
    }
    Set<String> names = wanted.stream().map(Alternative::name).collect(Collectors.toSet());
    if (names.size() < wanted.size()) {
      throw new BadInput("compare: found a plan named twice, wanted each once");
    }
    List<Contender> contenders = new ArrayList<>();
    Found found = found(wanted);
    for (Alternative one : wanted) {
      contenders.add(contender(one, found));
    }
    return Alternatives.of(contenders);
  }

  private static Reckoned reckoned(Alternative one, Found found) {
    try {
      return new Reckoned(one, Optional.of(contender(one, found)), Optional.empty());
    } catch (BadInput unfinished) {
      return new Reckoned(one, Optional.empty(), Optional.of(unfinished));
    }
  }

  private static Contender contender(Alternative one, Found found) throws BadInput {
    Ground ground = found.grounds().getOrDefault(one.plan(), Ground.NONE);
    Plan plan = CheckPlan.plan(one.plan(), ground.text());
    Plan varied = Answer.reckoned(one.name(), () -> one.variation().of(plan));
    CostedPlan costed = CostedPlan.of(one.name(), Answer.of(one.name(), varied, ground.means()), ground.costs(), CostWish.AS_SET);
    return new Contender(one.name(), costed.answer().check(), costed.cost());
  }

  private Found found(List<Alternative> wanted) {
    Set<String> plans = wanted.stream().map(Alternative::plan).collect(Collectors.toSet());
    return studio.read(session -> {
      Map<String, Ground> grounds = new LinkedHashMap<>();
      plans.forEach(plan -> grounds.put(plan, Ground.of(studio, session, plan, plans)));
      return new Found(grounds);
    });
  }

  /** What each plan of the ledger is reckoned by. */
  private record Found(Map<String, Ground> grounds) {}

  private record Ground(Optional<String> text, Means means, CostMeans costs) {
    static final Ground NONE = new Ground(Optional.empty(), Means.of(List.of()), CostMeans.of(List.of()));

    static Ground of(Studio studio, Session session, String plan, Set<String> all) {
      return new Ground(Plans.text(session, plan), Means.among(studio, session, plan, all), CostMeans.of(session, plan, all));
    }
  }
}
