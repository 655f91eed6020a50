package hankbook.ledger;

/** An entry in its place in the chain: its number from one, the hash of the entry before, and its own. Whether they are right is for {@link Audit} to say. */
public record ChainedEntry(long number, Entry entry, String previousHash, String hash) {}
