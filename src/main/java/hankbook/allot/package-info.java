/** Which skeins serve a plan, and whether they cover it. */
@NullMarked
package hankbook.allot;

import org.jspecify.annotations.NullMarked;
