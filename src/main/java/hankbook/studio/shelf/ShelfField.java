package hankbook.studio.shelf;

/** What is known of a skein in words; each can be asked for by its name, as in {@code lot:7}. */
public enum ShelfField {
  YARN,
  COLOUR,
  FIBRE,
  PLACE,
  CODE,
  FORM,
  LOT,
  /** How its length is known. */
  KNOWN,
  /** The plans it is reserved for or on the loom for. */
  PLAN,
  GRIST,
  /** The day it came; only asked for by name, since a number would find too many. */
  CAME,
  /** What was paid for it; only asked for by name. */
  COST;

  /** Whether a word without a name before it is looked for here. */
  boolean isOpen() {
    return this != CAME && this != COST;
  }
}
