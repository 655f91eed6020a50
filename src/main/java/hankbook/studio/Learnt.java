package hankbook.studio;

import hankbook.exchange.BadInput;
import hankbook.reckon.Finding;
import hankbook.reckon.Findings;
import hankbook.reckon.Manner;
import hankbook.store.Session;
import java.util.List;

/** What the finished plans of the ledger taught. It is offered to plans to come and put into none by itself. */
public final class Learnt {
  private final Studio studio;

  public Learnt(Studio studio) {
    this.studio = studio;
  }

  /** All of it. */
  public Findings all() {
    return studio.read(Learnt::findings);
  }

  /** Of each thing what each of its most telling groups within a group says. */
  public List<Finding> within(Manner group) {
    return all().within(group);
  }

  /**
   * What is proposed for a plan of the ledger, beside what it says itself.
   *
   * @throws BadInput if there is none of that name, it is not finished, or it does not add up
   */
  public Answer forPlan(String name) throws BadInput {
    return new CheckPlan(studio).named(name);
  }

  static Findings findings(Session session) {
    return Findings.NONE;
  }
}
