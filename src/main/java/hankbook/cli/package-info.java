/** The command line: thin over the use cases. */
@NullMarked
package hankbook.cli;

import org.jspecify.annotations.NullMarked;
