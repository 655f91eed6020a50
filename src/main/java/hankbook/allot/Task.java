package hankbook.allot;

import hankbook.measure.Length;

/** A demand in bare numbers, lengths in tenths of a millimetre, for the inner loops of the search. */
record Task(int ends, long perEnd, long weft, long usefulRemnant) {
  Task {
    // Refused here once, so that no product or sum in the search overflows.
    Math.addExact(Math.multiplyExact(perEnd, (long) ends), weft);
  }

  static Task of(Demand demand) {
    long perEnd = demand.ends() == 0 ? 0 : demand.perEnd().tenthsOfMillimetre();
    return new Task(demand.ends(), perEnd, demand.weft().tenthsOfMillimetre(), demand.usefulRemnant().tenthsOfMillimetre());
  }

  /** What is left uncovered by so many ends and so much to weave with. */
  long uncovered(int endsGiven, long weftGiven) {
    return (ends - endsGiven) * perEnd + Math.max(0, weft - weftGiven);
  }

  /** How many whole ends a length gives, never more than are wanted. */
  int endsFrom(long length) {
    return ends == 0 || length < 0 ? 0 : (int) Math.min(ends, length / perEnd);
  }

  /** The most ends a skein can give and still leave something useful for the weft; -1 where it is too short even untouched. */
  int endsLeavingWeft(long free) {
    return free <= usefulRemnant ? -1 : endsFrom(free - usefulRemnant - 1);
  }

  /** The most that a skein can cover of warp and weft together. */
  long coverable(long free) {
    return weft > 0 && free > usefulRemnant ? free : endsFrom(free) * perEnd;
  }

  /** How many skeins of a length are enough for all ends in some and all weft in others; 0 where the length serves for neither. */
  long enough(long free) {
    int endsEach = endsFrom(free);
    long forWarp = endsEach == 0 ? 0 : Math.ceilDiv(ends, endsEach);
    return forWarp + (free <= usefulRemnant ? 0 : Math.ceilDiv(weft, free));
  }

  Length warp(int endsGiven) {
    return new Length(endsGiven * perEnd);
  }
}
