package hankbook.studio;

import hankbook.gear.Loom;
import hankbook.store.Session;
import hankbook.yarn.OneLine;
import java.util.List;

/** The looms of the studio. Whatever was ever said of one stays in the ledger. */
public final class Looms {
  private final Studio studio;

  public Looms(Studio studio) {
    this.studio = studio;
  }

  /** Those that are not put away, by name. */
  public List<Loom> all() {
    return studio.read(session -> session.looms().all());
  }

  /**
   * Enters a loom.
   *
   * @param replace whether it may take the place of another of its name
   * @throws NotDone if there is another of its name, and it may not be replaced
   */
  public void add(Loom loom, boolean replace) throws NotDone {
    studio.write(session -> {
      if (!replace && session.looms().find(loom.name()).filter(there -> !there.equals(loom)).isPresent()) {
        throw NotDone.because("There is a loom {0} already that is another; replace it outright, or give this one another name.", loom.name());
      }
      keep(session, loom, false);
      return loom;
    });
  }

  /**
   * Takes a loom off the list; one of its name may be entered again.
   *
   * @throws NotDone if there is none of that name
   */
  public void putAway(String name) throws NotDone {
    String loom = OneLine.of(name);
    studio.write(session -> {
      keep(session, session.looms().find(loom).orElseThrow(() -> NotDone.because("There is no loom {0}; loom list shows those there are.", loom)), true);
      return loom;
    });
  }

  private void keep(Session session, Loom loom, boolean putAway) {
    session.looms().keep(loom, putAway, studio.author(), studio.now());
  }
}
