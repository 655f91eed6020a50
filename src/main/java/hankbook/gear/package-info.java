/** Looms and reeds, weaves, setts and sleying. */
@NullMarked
package hankbook.gear;

import org.jspecify.annotations.NullMarked;
