package hankbook.desktop;

import hankbook.measure.Length;
import hankbook.yarn.Kept;
import hankbook.yarn.Measures;
import hankbook.yarn.Skein;
import hankbook.yarn.Weighing;
import java.util.Optional;

/** What the chosen skein's page says of it, in words. */
final class SkeinFacts {
  private SkeinFacts() {}

  /**
   * How its length is known, and since when.
   *
   * @param recount the last one that stands
   */
  static String known(SkeinRow row, Optional<SkeinEvent> recount) {
    String way = switch (row.known()) {
      case SAMPLED, WEIGHED -> "by its weight";
      case COUNTED -> "by its turns";
      case LABEL -> "by its label";
      case UNMEASURED -> "never measured";
    };
    boolean saysHow = row.skein().kept().flatMap(Kept::counted).isPresent();
    return recount.map(event -> saysHow ? way + ", " + event.date() : "length given " + event.date()).orElse(way);
  }

  /** What was read off it when it was last measured. */
  static void measures(Skein skein, FactList facts) {
    Measures measures = skein.measures();
    measures.weighing().ifPresent(weighing -> facts.add("Weight", weight(weighing)));
    measures.turns().ifPresent(turns -> facts.add("Turns", turns.count() + " of " + turns.reel()));
    measures.label().ifPresent(label -> facts.add("On the label", Wording.yarn(label)));
    facts.add("Grist", skein.grist().map(Object::toString).orElse(""));
    skein.sample().ifPresent(sample -> facts.add("Own grist", Wording.grist(sample, skein.fibre())));
  }

  /** What of it should be looked at, or empty. */
  static String doubtful(Skein skein) {
    if (skein.gristDisagrees()) {
      Length more = skein.toRecount();
      String difference = Wording.yarn(more.isNegative() ? more.negated() : more) + (more.isNegative() ? " less" : " more");
      return "By its yarn's own grist it held " + difference + " than the ledger took it for: weigh it again.";
    }
    if (skein.weightDisagrees()) {
      return "Its weight and its label are over a tenth apart.";
    }
    return skein.turnsDisagree() ? "Its turns are over a tenth off what it counts with." : "";
  }

  private static String weight(Weighing weighing) {
    String tare = weighing.tare().milligrams() == 0 ? "" : ", " + weighing.tare() + " of it not yarn";
    return weighing.gross() + tare + weighing.regain().map(regain -> ", moisture " + regain).orElse("");
  }
}
