package hankbook.allot;

import hankbook.measure.Phrase;
import hankbook.yarn.YarnColour;
import java.util.Optional;

/**
 * Something the weaver should know before she winds.
 *
 * @param code what kind of thing
 * @param yarn the yarn it is about; none where it is about loom or reed
 * @param phrase in the weaver's words
 */
public record Warning(Code code, Optional<YarnColour> yarn, Phrase phrase) {
  /** A warning about a yarn. */
  public Warning(Code code, YarnColour yarn, Phrase phrase) {
    this(code, Optional.of(yarn), phrase);
  }

  /** A warning about loom or reed. */
  public static Warning ofGear(Code code, Phrase phrase) {
    return new Warning(code, Optional.empty(), phrase);
  }

  /** The same in English. */
  public String text() {
    return phrase.english();
  }

  /** The kinds of warning; the names are those of the answer file. */
  public enum Code {
    SHORT,
    TIGHT,
    BROKEN_ENDS,
    MIXED_LOTS,
    UNKNOWN_YARN,
    UNMEASURED,
    WEIGHT_DISAGREES,
    TURNS_DISAGREE,
    GRIST_DISAGREES,
    WINDING,
    WARP_TOO_SHORT,
    /** The choice of skeins is good, but was not proven the best. */
    UNPROVEN,
    WIDER_IN_REED,
    /** Wider in the reed than the loom weaves, or than the reed is. */
    TOO_WIDE,
    /** The weave takes more shafts than the loom has. */
    SHAFTS,
    /** No reed gives the sett, or the plan's does not. */
    SETT,
    /** The loom wastes more warp than the plan allows for. */
    LOOM_WASTE,
    /** The plan names a loom or reed that the ledger does not know. */
    UNKNOWN_GEAR
  }
}
