/** What a plan really used, why that was more or less than planned, and what is learnt from it. */
@NullMarked
package hankbook.reckon;

import org.jspecify.annotations.NullMarked;
