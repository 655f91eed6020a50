package hankbook.desktop;

import java.util.function.Consumer;

/** Lets only the answer to the latest question through; those that come late are dropped. */
final class Latest {
  private long asked;

  /** The listener to a new question; those to earlier ones fall silent. */
  <T> Consumer<T> only(Consumer<T> then) {
    asked++;
    return also(then);
  }

  /** One more listener to the latest question, such as to its failure. */
  <T> Consumer<T> also(Consumer<T> then) {
    long mine = asked;
    return answer -> {
      if (mine == asked) {
        then.accept(answer);
      }
    };
  }
}
