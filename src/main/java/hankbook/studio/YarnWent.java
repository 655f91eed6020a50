package hankbook.studio;

import hankbook.exchange.BadInput;
import hankbook.reckon.Made;
import hankbook.reckon.Reckoning;
import hankbook.yarn.OneLine;
import java.util.Optional;

/** Where the yarn of finished plans went. */
public final class YarnWent {
  private final Studio studio;

  public YarnWent(Studio studio) {
    this.studio = studio;
  }

  /** Which version of a plan what was used is held against. */
  public enum Against {
    /** As its yarn was taken for it. */
    RESERVED("as its yarn was taken for it"),
    /** As it was last edited. */
    EDITED("as it was last edited");

    private final String words;

    Against(String words) {
      this.words = words;
    }

    /** Which that is. */
    public String words() {
      return words;
    }
  }

  /**
   * Where the yarn of one plan went.
   *
   * @param finished the plan
   * @param against which version of it
   * @param made that version, and what was found
   * @param reckoning yarn by yarn and cause by cause
   */
  public record Went(FinishedPlan finished, Against against, Made made, Reckoning reckoning) {
    /** Whether the plan was edited since its yarn was taken. */
    public boolean isEdited() {
      return finished.asEdited().filter(edited -> edited.plan().equals(finished.asReserved().plan())).isEmpty();
    }
  }

  /**
   * Holds what a plan used against what it was to use.
   *
   * @throws BadInput if there is no such plan, or what was found does not go with it
   * @throws NotDone if it was not finished, or does not add up as it was last edited
   */
  public Went of(String plan, Against against) throws BadInput, NotDone {
    String name = OneLine.of(plan);
    FinishedPlan finished = finished(name);
    Optional<Made> made = against == Against.RESERVED ? Optional.of(finished.asReserved()) : finished.asEdited();
    if (made.isEmpty()) {
      throw NotDone.because("{0} does not add up as it was last edited; mend it, or hold what was used against it as its yarn was taken for it.", name);
    }
    return new Went(finished, against, made.get(), Answer.reckoned(name, () -> Reckoning.of(made.get())));
  }

  private FinishedPlan finished(String name) throws BadInput, NotDone {
    Optional<FinishedPlan> finished = new FinishedPlans(studio).named(name);
    if (finished.isPresent()) {
      return finished.get();
    }
    if (studio.read(session -> Plans.text(session, name)).isEmpty()) {
      throw CheckPlan.noSuchPlan(name);
    }
    throw NotDone.because("{0} is not finished, so it is not known what it used; finish it first.", name);
  }
}
