package hankbook.cost;

import java.time.Instant;

/**
 * A purchase as a ledger has it.
 *
 * @param number by which it is called for, counted from one
 * @param version how often something was said of it, counted from one
 * @param landed as it was last said
 * @param stands whether it holds; false after it was taken back
 * @param reason why it was corrected or taken back; may be empty
 * @param author who said it last
 * @param recorded when
 */
public record KeptPurchase(int number, int version, LandedPurchase landed, boolean stands, String reason, String author, Instant recorded) {}
