package hankbook.store;

/**
 * One version of a plan.
 *
 * @param number counted from one
 * @param body the text kept
 * @param author who kept it
 */
public record PlanVersion(int number, String body, String author) {}
