/** The program. */
@NullMarked
package hankbook;

import org.jspecify.annotations.NullMarked;
