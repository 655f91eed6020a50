package hankbook.allot;

import hankbook.measure.Length;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A demand in bare numbers, lengths in tenths of a millimetre, for the inner loops of the search. What a dye lot may serve for is a role: a
 * set of bits, one for each kind of end and one for the weft.
 */
final class Task {
  private final List<EndKind> kinds;
  private final int[] most;
  private final long weft;
  private final boolean weftInOneLot;
  private final long usefulRemnant;
  private final long oneLotWarp;
  private final long freeWarp;

  private Task(Demand demand, int threads) {
    kinds = demand.kinds();
    most = kinds.stream().mapToInt(kind -> Math.ceilDiv(kind.ends(), threads)).toArray();
    weft = demand.weft().tenthsOfMillimetre();
    weftInOneLot = demand.weftInOneLot();
    usefulRemnant = demand.usefulRemnant().tenthsOfMillimetre();
    oneLotWarp = bits(true);
    freeWarp = bits(false);
    // Refused here once, so that no product or sum in the search overflows.
    Math.addExact(kinds.stream().mapToLong(kind -> Math.multiplyExact(kind.each().tenthsOfMillimetre(), (long) kind.ends())).reduce(0, Math::addExact), weft);
  }

  /** Any number of a kind's ends from one skein. */
  static Task of(Demand demand) {
    return new Task(demand, 1);
  }

  /**
   * With no more ends of a kind from one skein than there are passes in winding: then, and only then, changing packages between passes can
   * wind them in that many passes. (Fill the passes one after the other, skein by skein: no skein meets itself in a pass.)
   */
  static Task woundTogether(Demand demand) {
    return new Task(demand, demand.threads());
  }

  int kinds() {
    return kinds.size();
  }

  /** All ends, of whatever kind. */
  int ends() {
    return kinds.stream().mapToInt(EndKind::ends).sum();
  }

  int ends(int kind) {
    return kinds.get(kind).ends();
  }

  long each(int kind) {
    return kinds.get(kind).each().tenthsOfMillimetre();
  }

  Length perEnd(int kind) {
    return kinds.get(kind).each();
  }

  long weft() {
    return weft;
  }

  long usefulRemnant() {
    return usefulRemnant;
  }

  long warp() {
    return IntStream.range(0, kinds()).mapToLong(kind -> ends(kind) * each(kind)).sum();
  }

  /** How many ends of a kind so much of one skein gives. */
  int endsFrom(int kind, long length) {
    return ends(kind) == 0 || length <= 0 ? 0 : (int) Math.min(most[kind], length / each(kind));
  }

  long weftBit() {
    return 1L << kinds();
  }

  /** The bits of the kinds that are wanted, of those that must keep to one lot or of those that need not. */
  long warpBits(boolean oneLot) {
    return oneLot ? oneLotWarp : freeWarp;
  }

  private long bits(boolean oneLot) {
    return IntStream.range(0, kinds()).filter(kind -> ends(kind) > 0 && kinds.get(kind).oneLot() == oneLot).mapToLong(kind -> 1L << kind).sum();
  }

  /** Everything that is wanted. */
  long everything() {
    return warpBits(true) | warpBits(false) | (weft > 0 ? weftBit() : 0);
  }

  /** What must come from one lot. */
  long oneLotBits() {
    return warpBits(true) | (weft > 0 && weftInOneLot ? weftBit() : 0);
  }

  boolean servesWarp(long role) {
    return (role & ~weftBit()) != 0;
  }

  boolean servesWeft(long role) {
    return (role & weftBit()) != 0;
  }

  /** Dye lots are counted apart in warp and weft, since they are seen apart. */
  int lots(long role) {
    return (servesWarp(role) ? 1 : 0) + (servesWeft(role) ? 1 : 0);
  }
}
