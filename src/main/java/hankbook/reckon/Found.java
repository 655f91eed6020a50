package hankbook.reckon;

import hankbook.measure.Phrase;

/**
 * What was found, and how.
 *
 * @param value what was found
 * @param from what it was worked out from, in words
 * @param <T> the quantity
 */
public record Found<T>(T value, Phrase from) {}
