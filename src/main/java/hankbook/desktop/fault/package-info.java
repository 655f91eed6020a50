/** What the window does when the program itself fails: the log, what was typed, and what is said of it. */
@NullMarked
package hankbook.desktop.fault;

import org.jspecify.annotations.NullMarked;
