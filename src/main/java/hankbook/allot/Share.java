package hankbook.allot;

import hankbook.measure.Length;

/**
 * What one skein gives.
 *
 * @param code the skein
 * @param ends whole ends
 * @param warp the yarn in them
 * @param weft metres of weft
 * @param reason why this skein
 */
public record Share(String code, int ends, Length warp, Length weft, String reason) {}
