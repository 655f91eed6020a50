package hankbook.studio.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A question to the shelf in plain words, such as {@code wool blue >200 m lot:7 opened}. Each word must be answered: it stands at the start of a word in anything that is
 * known of a skein, or names what the skein looks like or how it stands. A number with a unit is held against what is free of it. A dash before a word means not.
 *
 * @param clauses what is asked; all of it must hold
 * @param faults what could not be understood and is not asked
 */
public record ShelfQuestion(List<Clause> clauses, List<NotUnderstood> faults) {
  /** What every skein answers. */
  public static final ShelfQuestion NONE = new ShelfQuestion(List.of(), List.of());

  public ShelfQuestion {
    clauses = List.copyOf(clauses);
    faults = List.copyOf(faults);
  }

  /** Reads a question; any text is one. */
  public static ShelfQuestion of(String text, ShelfWords words) {
    return new QuestionReader(text, words).read();
  }

  /** Whether a skein answers to all of it. */
  public boolean holds(SoughtSkein skein) {
    return clauses.stream().allMatch(clause -> clause.holds().test(skein));
  }

  /**
   * Why nothing answers.
   *
   * @param unanswered what no skein answers to by itself
   * @param without what is in the way of an answer, if each alone has one
   */
  public record Why(List<String> unanswered, List<Without> without) {
    public Why {
      unanswered = List.copyOf(unanswered);
      without = List.copyOf(without);
    }
  }

  /**
   * A part of the question that keeps the rest from being answered.
   *
   * @param words as typed
   * @param answers how many skeins would answer without it
   */
  public record Without(String words, long answers) {}

  /** Why none of some skeins answers. */
  public Why whyNone(List<SoughtSkein> skeins) {
    List<String> unanswered = clauses.stream().filter(clause -> skeins.stream().noneMatch(clause.holds())).map(Clause::words).distinct().toList();
    List<Without> without = unanswered.isEmpty() ? IntStream.range(0, clauses.size()).mapToObj(left -> without(left, skeins)).filter(it -> it.answers() > 0).toList() : List.of();
    return new Why(unanswered, without);
  }

  private Without without(int left, List<SoughtSkein> skeins) {
    List<Clause> rest = new ArrayList<>(clauses);
    Clause out = rest.remove(left);
    ShelfQuestion shorter = new ShelfQuestion(rest, List.of());
    return new Without(out.words(), skeins.stream().filter(shorter::holds).count());
  }
}
