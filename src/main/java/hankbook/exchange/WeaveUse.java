package hankbook.exchange;

import hankbook.plan.Need.Role;

/**
 * A colour of a draft on one of its sides: what a yarn is chosen for.
 *
 * @param role warp or weft
 * @param colour of the draft
 */
public record WeaveUse(Role role, WeaveColour colour) {}
