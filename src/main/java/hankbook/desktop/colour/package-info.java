/** Picking a colour: from a photograph of the yarn by pointing at it, or by its numbers. */
@NullMarked
package hankbook.desktop.colour;

import org.jspecify.annotations.NullMarked;
