package hankbook.allot;

/**
 * A skein at one place in the hand, or on the rack, until another takes that place.
 *
 * @param position which of the threads held, counted from 1
 * @param skein its code
 * @param firstPass the first pass it feeds from there, counted over the whole warp
 * @param lastPass the last
 * @param ends it gives from there; fewer than the passes between where some pass holds fewer threads
 */
public record Stint(int position, String skein, int firstPass, int lastPass, int ends) {}
