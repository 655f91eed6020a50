package hankbook.desktop.why;

import java.util.HashMap;
import java.util.Map;

/** Which explanations of a page are open, kept while the page is filled anew: at most one at each place. */
public final class Opened {
  private final Map<String, String> open = new HashMap<>();

  boolean is(String place, String figure) {
    return figure.equals(open.get(place));
  }

  void open(String place, String figure) {
    open.put(place, figure);
  }

  void close(String place, String figure) {
    open.remove(place, figure);
  }
}
