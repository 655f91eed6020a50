/** The ledger in a database, H2 in a file or PostgreSQL on a server. */
@NullMarked
package hankbook.store;

import org.jspecify.annotations.NullMarked;
