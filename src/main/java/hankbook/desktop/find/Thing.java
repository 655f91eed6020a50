package hankbook.desktop.find;

/**
 * Something that can be found.
 *
 * @param sort of which sort
 * @param title what it is called, such as the code of a skein
 * @param detail what else is said of it
 * @param more by what else it is found, which is not shown; may be empty
 * @param recency the higher, the later it was last touched; decides between things that answer equally well
 * @param open goes there, or does it
 */
public record Thing(Sort sort, String title, String detail, String more, long recency, Runnable open) {
  /** Something of which nothing more is known than what is shown. */
  public static Thing of(Sort sort, String title, String detail, Runnable open) {
    return new Thing(sort, title, detail, "", 0, open);
  }
}
