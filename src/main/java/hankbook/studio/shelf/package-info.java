/** Looking for yarn on the shelf: questions in plain words, groups by yarn and colour, and the wall of swatches. */
@NullMarked
package hankbook.studio.shelf;

import org.jspecify.annotations.NullMarked;
