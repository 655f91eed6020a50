package hankbook.allot;

/**
 * The use of one touched skein as the search settled it.
 *
 * @param skein the skein
 * @param ends whole ends it gives
 * @param weft the most it may give to the weft, in tenths of a millimetre
 * @param keeps whether it sets aside the remnant aimed at
 */
record Portion(Candidate skein, int ends, long weft, boolean keeps) {}
