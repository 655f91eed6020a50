/** What the window says, in the language of whoever sits before it. */
@NullMarked
package hankbook.desktop.say;

import org.jspecify.annotations.NullMarked;
