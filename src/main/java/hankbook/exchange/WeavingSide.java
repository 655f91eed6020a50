package hankbook.exchange;

import java.util.List;

/** The two sides of a weaving file: the names of their sections. */
enum WeavingSide {
  WARP("warp", "threading", "an end"),
  WEFT("weft", "treadling liftplan", "a pick");

  private final String section;
  private final String courses;
  private final String thread;

  WeavingSide(String section, String courses, String thread) {
    this.section = section;
    this.courses = courses;
    this.thread = thread;
  }

  String section() {
    return section;
  }

  /** The sections that say which shafts or treadles each thread takes. */
  List<String> courses() {
    return List.of(courses.split(" "));
  }

  String colours() {
    return section + " colors";
  }

  String spacing() {
    return section + " spacing";
  }

  String thickness() {
    return section + " thickness";
  }

  /** One of its threads, with its article. */
  String thread() {
    return thread;
  }
}
