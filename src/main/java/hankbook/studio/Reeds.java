package hankbook.studio;

import hankbook.gear.Reed;
import hankbook.store.Session;
import hankbook.yarn.OneLine;
import java.util.List;

/** The reeds of the studio. Whatever was ever said of one stays in the ledger. */
public final class Reeds {
  private final Studio studio;

  public Reeds(Studio studio) {
    this.studio = studio;
  }

  /** Those that are not put away, by name. */
  public List<Reed> all() {
    return studio.read(session -> session.reeds().all());
  }

  /**
   * Enters a reed.
   *
   * @param replace whether it may take the place of another of its name
   * @throws NotDone if there is another of its name, and it may not be replaced
   */
  public void add(Reed reed, boolean replace) throws NotDone {
    studio.write(session -> {
      if (!replace && session.reeds().find(reed.name()).filter(there -> !there.equals(reed)).isPresent()) {
        throw NotDone.because("There is a reed {0} already that is another; replace it outright, or give this one a name of its own.", reed.name());
      }
      keep(session, reed, false);
      return reed;
    });
  }

  /**
   * Takes a reed off the list; one of its name may be entered again.
   *
   * @throws NotDone if there is none of that name
   */
  public void putAway(String name) throws NotDone {
    String reed = OneLine.of(name);
    studio.write(session -> {
      keep(session, session.reeds().find(reed).orElseThrow(() -> NotDone.because("There is no reed {0}; reed list shows those there are.", reed)), true);
      return reed;
    });
  }

  private void keep(Session session, Reed reed, boolean putAway) {
    session.reeds().keep(reed, putAway, studio.author(), studio.now());
  }
}
