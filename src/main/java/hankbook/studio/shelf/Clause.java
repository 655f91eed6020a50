package hankbook.studio.shelf;

import java.util.function.Predicate;

/**
 * One thing asked of a skein.
 *
 * @param words as they were typed
 * @param holds whether a skein answers to it
 */
public record Clause(String words, Predicate<SoughtSkein> holds) {}
