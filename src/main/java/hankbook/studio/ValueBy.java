package hankbook.studio;

/** By what the rows of a valuation are grouped. */
public enum ValueBy {
  /** Yarn and colour. */
  YARN,
  /** What it is spun of, as the skeins say. */
  FIBRE,
  /** On the shelf, or set aside or on the loom for which plan. */
  PLACE,
  /** Where the skein lies, as it was last described. */
  LOCATION
}
