/** Yarns, colours, lots and skeins: what is held and how surely it is known. */
@NullMarked
package hankbook.yarn;

import org.jspecify.annotations.NullMarked;
