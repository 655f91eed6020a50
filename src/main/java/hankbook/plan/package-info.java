/** The yardage of a plan: width, ends, warp length and the yarn it needs. */
@NullMarked
package hankbook.plan;

import org.jspecify.annotations.NullMarked;
