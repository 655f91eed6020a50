/** The window: screens and what stands behind each of them. */
@NullMarked
package hankbook.desktop;

import org.jspecify.annotations.NullMarked;
