package hankbook.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds a short written form of groups that follow each other: what repeats is written once, and what comes back is written there and
 * back. What saves most is taken first, and each stretch that is taken out is shortened in the same way.
 */
final class SuccessionFinder {
  private SuccessionFinder() {}

  static Succession find(List<Run> runs) {
    JoinedRuns joined = new JoinedRuns(Integer.MAX_VALUE);
    runs.forEach(joined::add);
    List<SuccessionPart> parts = List.copyOf(joined.runs());
    while (true) {
      List<SuccessionPart> shorter = shorter(parts);
      if (shorter.size() == parts.size()) {
        return new Succession(parts);
      }
      parts = shorter;
    }
  }

  /**
   * A stretch of parts that can be written as one.
   *
   * @param from where it starts
   * @param span how many parts it takes
   * @param kept how many of them are written
   * @param mirrored whether it comes back, else it repeats
   */
  private record Fold(int from, int span, int kept, boolean mirrored) {
    int saved() {
      return span - kept - 1;
    }

    SuccessionPart of(List<SuccessionPart> parts) {
      Succession group = found(parts.subList(from, from + kept));
      return mirrored ? new Mirror(group, Mirror.Turn.ON_THE_LAST) : new Repeat(span / kept, group);
    }
  }

  private static Succession found(List<SuccessionPart> parts) {
    List<SuccessionPart> shorter = shorter(parts);
    return shorter.size() == parts.size() ? new Succession(parts) : found(shorter);
  }

  /** One round: the folds that save most, none over another. */
  private static List<SuccessionPart> shorter(List<SuccessionPart> parts) {
    int[] kinds = kinds(parts);
    List<Fold> folds = new ArrayList<>(repeats(kinds));
    folds.addAll(mirrors(kinds, parts));
    folds.sort(Comparator.comparingInt(Fold::saved).reversed());
    Fold[] taken = new Fold[parts.size()];
    for (Fold fold : folds) {
      if (free(fold, taken)) {
        Arrays.fill(taken, fold.from, fold.from + fold.span, fold);
      }
    }
    List<SuccessionPart> shorter = new ArrayList<>();
    for (int i = 0; i < parts.size(); i += taken[i] == null ? 1 : taken[i].span) {
      shorter.add(taken[i] == null ? parts.get(i) : taken[i].of(parts));
    }
    return shorter;
  }

  private static boolean free(Fold fold, Fold[] taken) {
    for (int i = fold.from; i < fold.from + fold.span; i++) {
      if (taken[i] != null) {
        return false;
      }
    }
    return true;
  }

  /** Equal parts get equal numbers. */
  private static int[] kinds(List<SuccessionPart> parts) {
    Map<SuccessionPart, Integer> numbers = new HashMap<>();
    return parts.stream().mapToInt(part -> numbers.computeIfAbsent(part, none -> numbers.size())).toArray();
  }

  /** Each stretch that repeats, from where it first does. */
  private static List<Fold> repeats(int[] kinds) {
    List<Fold> folds = new ArrayList<>();
    for (int period = 1; period <= kinds.length / 2; period++) {
      int alike = 0;
      for (int i = 0; i <= kinds.length - period; i++) {
        if (i < kinds.length - period && kinds[i] == kinds[i + period]) {
          alike++;
          continue;
        }
        Fold fold = new Fold(i - alike, (alike + period) / period * period, period, false);
        if (alike >= period && fold.saved() > 0) {
          folds.add(fold);
        }
        alike = 0;
      }
    }
    return folds;
  }

  /** Each stretch that reads the same in both directions about a single group. */
  private static List<Fold> mirrors(int[] kinds, List<SuccessionPart> parts) {
    List<Fold> folds = new ArrayList<>();
    for (int middle = 1; middle < kinds.length - 1; middle++) {
      int reach = 0;
      while (middle - reach > 0 && middle + reach + 1 < kinds.length && kinds[middle - reach - 1] == kinds[middle + reach + 1]
          && parts.get(middle - reach - 1) instanceof Run) {
        reach++;
      }
      Fold fold = new Fold(middle - reach, 2 * reach + 1, reach + 1, true);
      if (parts.get(middle) instanceof Run && fold.saved() > 0) {
        folds.add(fold);
      }
    }
    return folds;
  }
}
