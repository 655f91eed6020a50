/** Files in and out: stock as CSV, plans and answers as JSON. */
@NullMarked
package hankbook.exchange;

import org.jspecify.annotations.NullMarked;
