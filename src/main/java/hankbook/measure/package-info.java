/** Lengths, masses, grists, setts and percentages: exact value types, their parsing and printing. */
@NullMarked
package hankbook.measure;

import org.jspecify.annotations.NullMarked;
