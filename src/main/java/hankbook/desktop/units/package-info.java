/** In which units whoever sits before the window measures, and how a quantity is written in them. */
@NullMarked
package hankbook.desktop.units;

import org.jspecify.annotations.NullMarked;
