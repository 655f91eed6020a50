package hankbook.ledger;

/** What became of an entry that was posted. */
public sealed interface Outcome {
  /** It was taken: the book with it, and the entry in its place in the chain. */
  record Posted(Book book, ChainedEntry entry) implements Outcome {}

  /** The very same entry was there before; nothing changed, and nothing is wrong. */
  record AlreadyThere(Entry entry) implements Outcome {}

  /** It was not taken, and nothing changed. */
  record Refused(Refusal refusal) implements Outcome {}
}
