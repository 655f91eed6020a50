package hankbook.exchange;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a draft asks of the loom.
 *
 * @param shafts as many as it says, or the highest that it threads or lifts
 * @param treadles as many as it says, or the highest that it treads
 * @param risingShed whether the shafts tied to a treadle are lifted; else they sink
 * @param liftPlan whether it says the shafts of each pick and no treadles
 * @param unthreaded ends that it puts on no shaft
 * @param heddles ends on each shaft that has any
 */
public record WeaveShafts(int shafts, int treadles, boolean risingShed, boolean liftPlan, int unthreaded, SortedMap<Integer, Integer> heddles) {
  public WeaveShafts {
    heddles = Collections.unmodifiableSortedMap(new TreeMap<>(heddles));
  }
}
