/** Finding anything in the studio by a few letters of it. */
@NullMarked
package hankbook.desktop.find;

import org.jspecify.annotations.NullMarked;
