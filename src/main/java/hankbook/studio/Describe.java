package hankbook.studio;

import hankbook.store.Session;
import hankbook.yarn.OneLine;
import hankbook.yarn.Skein;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;

/** Mends what is said of skeins beside their yarn and their metres: dye lot, place, cost and the day they came. What was said before is kept. */
public final class Describe {
  private final Studio studio;

  public Describe(Studio studio) {
    this.studio = studio;
  }

  /**
   * Says something of skeins, of all or of none.
   *
   * @return how many were described otherwise until now
   * @throws NotDone if there is no such skein, a purchase says its cost, or the cost is in another currency than the ledger's, or it would have come on a day to come or while it is on order
   */
  public int skeins(List<String> codes, SkeinFacts facts) throws NotDone {
    facts.refuseWhatIsYetToCome(studio.today());
    return studio.write(session -> {
      int changed = 0;
      CostSaid costs = new CostSaid(session);
      for (String given : new LinkedHashSet<>(codes)) {
        Skein skein = known(session, OneLine.of(given), facts);
        costs.refuse(skein.code(), Optional.of(skein), facts.cost());
        changed += session.skeins().describe(facts.of(skein), studio.author(), studio.now()) ? 1 : 0;
      }
      return changed;
    });
  }

  private static Skein known(Session session, String code, SkeinFacts facts) throws NotDone {
    Optional<Skein> known = session.skeins().find(code);
    if (known.isEmpty()) {
      throw NotDone.because("There is no skein {0} in the ledger; nothing was changed.", code);
    }
    if (facts.received().isPresent() && ExpectedYarn.isOnOrder(session, code)) {
      throw NotDone.because("{0} is still on order and has not come on any day; say that it arrived.", code);
    }
    return known.get();
  }
}
