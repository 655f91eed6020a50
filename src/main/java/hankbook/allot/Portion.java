package hankbook.allot;

import java.util.List;

/**
 * The use of one skein as a packing settled it.
 *
 * @param slot the skein
 * @param ends whole ends it gives, by kind
 * @param weft the most it may give to the weft beside them, in tenths of a millimetre
 */
record Portion(Slot slot, List<Integer> ends, long weft) {}
