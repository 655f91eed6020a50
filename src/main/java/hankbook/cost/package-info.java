/** What yarn and work cost, and what the yarn in the house is worth: exact to the smallest coin. */
@NullMarked
package hankbook.cost;

import org.jspecify.annotations.NullMarked;
