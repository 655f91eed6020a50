/** Pages to be printed, as PDF. */
@NullMarked
package hankbook.print;

import org.jspecify.annotations.NullMarked;
