package hankbook.studio;

import hankbook.ledger.ChainEnd;
import hankbook.ledger.Holding;
import hankbook.ledger.Place;
import hankbook.measure.Length;
import hankbook.measure.Unreadable;
import hankbook.plan.Plan;
import hankbook.reckon.Actuals;
import hankbook.reckon.Findings;
import hankbook.reckon.Lesson;
import hankbook.reckon.Lessons;
import hankbook.reckon.Made;
import hankbook.reckon.YarnUsed;
import hankbook.store.ActualsVersion;
import hankbook.store.Session;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What the finished plans of a ledger taught, worked out anew only where something was entered, finished or described since: a screen asks for it at every
 * keystroke. Safe to be used by several threads.
 */
final class LearntSoFar {
  private volatile Kept kept = new Kept(Optional.empty(), Findings.NONE);

  /** How the ledger stood. */
  private record Stamp(ChainEnd end, int finishes, int descriptions) {
    static Stamp of(Session session) {
      return new Stamp(session.entries().end(), session.actuals().count(), session.skeins().descriptions());
    }
  }

  private record Kept(Optional<Stamp> when, Findings findings) {}

  Findings findings(Session session) {
    Optional<Stamp> now = Optional.of(Stamp.of(session));
    Kept known = kept;
    if (known.when().equals(now)) {
      return known.findings();
    }
    Findings findings = now.get().finishes() == 0 ? Findings.NONE : new Findings(lessons(session));
    kept = new Kept(now, findings);
    return findings;
  }

  private static List<Lesson> lessons(Session session) {
    Map<String, Map<YarnColour, YarnUsed>> used = new HashMap<>();
    Map<String, Skein> skeins = session.skeins().all().stream().collect(Collectors.toMap(Skein::code, Function.identity()));
    session.balances().all().lengths().forEach((holding, length) -> Optional.ofNullable(skeins.get(holding.skein())).ifPresent(skein -> add(used, skein, holding, length)));
    List<Lesson> lessons = new ArrayList<>();
    for (ActualsVersion version : session.actuals().standing().values()) {
      Optional<Plan> plan = session.plans().numbered(version.plan(), version.planVersion().orElse(0)).flatMap(body -> FinishedPlans.plan(version.plan(), body));
      Optional<Actuals> actuals = FinishedPlans.file(version).map(file -> file.actuals());
      List<YarnUsed> yarns = List.copyOf(used.getOrDefault(version.plan(), Map.of()).values());
      plan.ifPresent(taken -> actuals.ifPresent(found -> lessons.addAll(lessons(new Made(taken, found, yarns)))));
    }
    lessons.sort(Comparator.comparing((Lesson lesson) -> lesson.date().map(Object::toString).orElse("")).thenComparing(Lesson::plan));
    return lessons;
  }

  /** A finish that does not add up teaches nothing; the page of that plan says why. */
  private static List<Lesson> lessons(Made made) {
    try {
      return Lessons.of(made);
    } catch (Unreadable | ArithmeticException never) {
      return List.of();
    }
  }

  private static void add(Map<String, Map<YarnColour, YarnUsed>> used, Skein skein, Holding holding, Length length) {
    switch (holding.place()) {
      case Place.Cloth(String plan) -> add(used, plan, skein, length, Length.ZERO, Length.ZERO);
      case Place.Thrums(String plan) -> add(used, plan, skein, length, length, Length.ZERO);
      case Place.Sample(String plan) -> add(used, plan, skein, length, Length.ZERO, length);
      default -> {}
    }
  }

  private static void add(Map<String, Map<YarnColour, YarnUsed>> used, String plan, Skein skein, Length all, Length thrums, Length sampled) {
    YarnUsed more = new YarnUsed(skein.yarn(), skein.fibre(), skein.knownGrist(), all, thrums, sampled, Length.ZERO);
    used.computeIfAbsent(plan, _ -> new LinkedHashMap<>()).merge(skein.yarn(), more, LearntSoFar::sum);
  }

  private static YarnUsed sum(YarnUsed one, YarnUsed other) {
    String fibre = one.fibre().isEmpty() ? other.fibre() : one.fibre();
    return new YarnUsed(
        one.yarn(), fibre, one.grist(), one.used().plus(other.used()), one.thrums().plus(other.thrums()), one.sampled().plus(other.sampled()), Length.ZERO);
  }
}
