/** Numbers on the screens that say, where they stand, how they were reckoned. */
@NullMarked
package hankbook.desktop.why;

import org.jspecify.annotations.NullMarked;
