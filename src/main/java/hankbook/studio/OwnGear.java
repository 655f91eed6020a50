package hankbook.studio;

import hankbook.gear.Gear;
import hankbook.store.Session;

/** The looms and reeds of the studio together. */
public final class OwnGear {
  private final Studio studio;

  public OwnGear(Studio studio) {
    this.studio = studio;
  }

  /** Those that are not put away, by name. */
  public Gear all() {
    return studio.read(OwnGear::of);
  }

  static Gear of(Session session) {
    return new Gear(session.looms().all(), session.reeds().all());
  }
}
