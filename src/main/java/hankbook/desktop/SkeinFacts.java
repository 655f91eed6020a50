package hankbook.desktop;

import hankbook.desktop.say.Say;
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
      case SAMPLED, WEIGHED -> Say.text("by its weight");
      case COUNTED -> Say.text("by its turns");
      case LABEL -> Say.text("by its label");
      case UNMEASURED -> Say.text("never measured");
    };
    boolean saysHow = row.skein().kept().flatMap(Kept::counted).isPresent();
    return recount.map(event -> saysHow ? Say.text("{0}, {1}", way, event.date()) : Say.text("length given {0}", event.date())).orElse(way);
  }

  /** What was read off it when it was last measured. */
  static void measures(Skein skein, FactList facts) {
    Measures measures = skein.measures();
    measures.weighing().ifPresent(weighing -> facts.add(Say.text("Weight"), weight(weighing)));
    measures.turns().ifPresent(turns -> facts.add(Say.text("Turns"), Say.text("{0} of {1}", turns.count(), turns.reel())));
    measures.label().ifPresent(label -> facts.add(Say.text("On the label"), Wording.metres(label)));
    facts.add(Say.text("Grist"), skein.grist().map(Object::toString).orElse(""));
    skein.sample().ifPresent(sample -> facts.add(Say.text("Own grist"), Wording.grist(sample, skein.fibre())));
  }

  /** What of it should be looked at, or empty. */
  static String doubtful(Skein skein) {
    if (skein.gristDisagrees()) {
      Length more = skein.toRecount();
      return more.isNegative()
          ? Say.text("By its yarn's own grist it held {0} less than the ledger took it for: weigh it again.", Wording.metres(more.negated()))
          : Say.text("By its yarn's own grist it held {0} more than the ledger took it for: weigh it again.", Wording.metres(more));
    }
    if (skein.weightDisagrees()) {
      return Say.text("Its weight and its label are over a tenth apart.");
    }
    return skein.turnsDisagree() ? Say.text("Its turns are over a tenth off what it counts with.") : "";
  }

  private static String weight(Weighing weighing) {
    String weight = weighing.tare().milligrams() == 0 ? weighing.gross().toString() : Say.text("{0}, {1} of it not yarn", weighing.gross(), weighing.tare());
    return weighing.regain().map(regain -> Say.text("{0}, moisture {1}", weight, regain)).orElse(weight);
  }
}
