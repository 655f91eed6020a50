package hankbook.reckon;

/** What comes of an attempt to square the book of a plan. */
public sealed interface SquaringOutcome permits Squared, Unsquared {}
