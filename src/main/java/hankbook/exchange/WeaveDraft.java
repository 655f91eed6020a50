package hankbook.exchange;

import java.util.List;

/**
 * A draft that was drawn elsewhere, as far as yarn and loom are concerned.
 *
 * @param title that it gives itself, or empty
 * @param warp its ends, at least one
 * @param weft its picks; none where it has no weft
 * @param shafts what it asks of the loom
 * @param notes in words, what the file left out and how it was taken then
 */
public record WeaveDraft(String title, WeaveThreads warp, WeaveThreads weft, WeaveShafts shafts, List<String> notes) {
  public WeaveDraft {
    notes = List.copyOf(notes);
  }
}
