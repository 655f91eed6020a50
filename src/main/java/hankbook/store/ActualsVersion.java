package hankbook.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;

/**
 * One version of what was found after the cloth of a plan was cut off.
 *
 * @param plan its name
 * @param number counted from one
 * @param deed what was done with it
 * @param act the id that whoever did it gave it; empty for a draft
 * @param planVersion the version of the plan that its yarn was taken for; only where the book was squared
 * @param body an actuals file, of a draft perhaps half filled; blank where the last was taken back
 * @param reason why it was done again or taken back; may be blank
 * @param entries that it posted, in their order; none also where it left those of the version before it as they were
 * @param author who did it
 * @param recorded when
 */
public record ActualsVersion(
    String plan, int number, Deed deed, Optional<UUID> act, OptionalInt planVersion, String body, String reason, List<UUID> entries, String author, Instant recorded) {
  public ActualsVersion {
    entries = List.copyOf(entries);
  }

  /** The same with the entries of another, which it left as they were. */
  ActualsVersion withEntries(List<UUID> left) {
    return new ActualsVersion(plan, number, deed, act, planVersion, body, reason, left, author, recorded);
  }

  /** What was done with it. */
  public enum Deed {
    /** It was kept, to be filled in further. */
    DRAFT,
    /** The book was squared by it. */
    SQUARED,
    /** What squared the book before was taken back. */
    TAKEN_BACK
  }
}
