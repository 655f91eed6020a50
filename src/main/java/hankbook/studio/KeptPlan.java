package hankbook.studio;

/**
 * A plan as it is kept in the ledger.
 *
 * @param name the plan
 * @param text of a plan file, finished or not
 * @param version counted from one; each change makes the next
 * @param author who kept this version
 */
public record KeptPlan(String name, String text, int version, String author) {}
