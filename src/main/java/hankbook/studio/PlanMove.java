package hankbook.studio;

/**
 * A plan that is to take its yarn sooner or later.
 *
 * @param plan the one that is moved
 * @param beside the one it comes to stand beside
 * @param before whether it takes its yarn just before that one, rather than just after
 */
public record PlanMove(String plan, String beside, boolean before) {}
