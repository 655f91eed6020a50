package hankbook.studio;

import hankbook.reckon.Made;
import java.time.Instant;
import java.util.Optional;

/**
 * A plan whose cloth was cut off and whose book is squared.
 *
 * @param plan its name
 * @param number which version of what was found stands, counted from one
 * @param asReserved the plan as its yarn was taken for it, and what it really used
 * @param asEdited the same against the plan as it was last edited; empty where it cannot be reckoned as it is now
 * @param reason why it was finished again; blank where it was not
 * @param author who finished it
 * @param recorded when
 */
public record FinishedPlan(String plan, int number, Made asReserved, Optional<Made> asEdited, String reason, String author, Instant recorded) {}
