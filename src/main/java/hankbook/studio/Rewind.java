package hankbook.studio;

import hankbook.ledger.ChainedEntry;
import hankbook.yarn.OneLine;
import java.util.Optional;
import java.util.UUID;

/**
 * Winds yarn off one skein onto another. Only yarn that is free is wound off: what is reserved stays where it is. Its cost goes with it. In the ledger one entry
 * takes it off the one and puts it onto the other, so that it is all taken back together.
 */
public final class Rewind {
  private final Studio studio;

  public Rewind(Studio studio) {
    this.studio = studio;
  }

  /**
   * Winds some of a skein, or all of it, onto a package of its own.
   *
   * @param onto a new package, or one that was made so and is empty since that was taken back
   * @param note what the journal should say; may be empty
   * @return the entry; empty where the very same was entered before
   * @throws NotDone if there is no such skein, so much of it is not free, it is on order, or the new code is taken
   */
  public Optional<ChainedEntry> off(UUID id, String from, WoundOff much, NewPackage onto, String note) throws NotDone {
    String said = Note.of(note);
    return studio.write(session -> session.entries().entry(id).isPresent()
        ? Optional.empty()
        : enter(new Rewinding(studio, session, id, said), winding -> winding.ontoNew(OneLine.of(from), much, onto)));
  }

  /**
   * Winds some of a skein, or all of it, onto one of the same yarn and colour that has yarn on it. Until it is weighed or counted, its metres
   * are as unsure as the least sure of what it was measured by, what the other was, and a length of all that was only said.
   *
   * @param mixLots whether yarn of another dye lot may be wound onto it; its lot then names both
   * @param note what the journal should say; may be empty
   * @return the entry; empty where the very same was entered before
   * @throws NotDone if there is no such skein, they are not of one yarn, colour and grist, nor of one dye lot where that was not allowed, so much is not free, or
   *     one is on order or has nothing on it
   */
  public Optional<ChainedEntry> join(UUID id, String from, WoundOff much, String onto, boolean mixLots, String note) throws NotDone {
    String said = Note.of(note);
    return studio.write(session -> session.entries().entry(id).isPresent()
        ? Optional.empty()
        : enter(new Rewinding(studio, session, id, said), winding -> winding.joined(OneLine.of(from), much, OneLine.of(onto), mixLots)));
  }

  /**
   * What {@link #off} would come to; writes nothing.
   *
   * @throws NotDone as that does
   */
  public Rewound triedOff(String from, WoundOff much, NewPackage onto) throws NotDone {
    return tried(winding -> winding.ontoNew(OneLine.of(from), much, onto));
  }

  /**
   * What {@link #join} would come to; writes nothing.
   *
   * @throws NotDone as that does
   */
  public Rewound triedJoin(String from, WoundOff much, String onto, boolean mixLots) throws NotDone {
    return tried(winding -> winding.joined(OneLine.of(from), much, OneLine.of(onto), mixLots));
  }

  /** How a winding comes to be known. */
  private interface Reckoning {
    Rewinding.Winding of(Rewinding rewinding) throws NotDone;
  }

  private static Optional<ChainedEntry> enter(Rewinding rewinding, Reckoning reckoning) throws NotDone {
    return rewinding.enter(reckoning.of(rewinding));
  }

  private Rewound tried(Reckoning reckoning) throws NotDone {
    return studio.tried(session -> Rewound.of(session, reckoning.of(new Rewinding(studio, session, UUID.randomUUID(), ""))));
  }
}
