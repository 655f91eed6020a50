package hankbook.reckon;

/** What tells one cloth from another, as far as what is learnt from it goes. */
public enum Telling {
  LOOM,
  WEAVE,
  FIBRE
}
