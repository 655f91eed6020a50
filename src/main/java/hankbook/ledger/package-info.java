/** The ledger: yarn as lengths moved between places, in entries that are only ever added, each chained to the one before. */
@NullMarked
package hankbook.ledger;

import org.jspecify.annotations.NullMarked;
