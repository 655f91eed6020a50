/** The guide: the pages of {@code docs/guide}, shown in a window of their own beside the work. */
@NullMarked
package hankbook.desktop.guide;

import org.jspecify.annotations.NullMarked;
