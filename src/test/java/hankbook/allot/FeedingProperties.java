package hankbook.allot;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

class FeedingProperties {
  @Property(seed = "20261204")
  void everyPassIsFedBySkeinsThatAreNotHeldTwiceAndEachGivesAllItsEnds(
      @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 1, max = 4) Integer> held, @ForAll @Size(min = 1, max = 5) List<@IntRange(min = 1, max = 12) Integer> wants) {
    Map<String, Integer> ends = sharedOut(held.stream().mapToInt(Integer::intValue).sum(), wants);
    Optional<List<Stint>> stints = feeding(held, ends);
    assertThat(stints.isPresent()).as("%s from %s", held, ends).isEqualTo(canByTryingAll(held, 0, new ArrayList<>(ends.values())));
    stints.ifPresent(found -> {
      Map<String, Integer> given = new HashMap<>();
      found.forEach(stint -> given.merge(stint.skein(), stint.ends(), Integer::sum));
      assertThat(given).isEqualTo(ends);
      assertNoSkeinAndNoPositionIsInTwoPlacesAtOnce(found);
    });
  }

  /** With the same number of threads in every pass, it can be done exactly when no skein gives more ends than there are passes: fill position after position. */
  @Property(seed = "20261205")
  void fullPassesCanBeFedExactlyWhenNoSkeinGivesMoreEndsThanThereArePasses(
      @ForAll @IntRange(min = 1, max = 40) int passes, @ForAll @IntRange(min = 1, max = 6) int threads, @ForAll @Size(min = 1, max = 9) List<@IntRange(min = 1, max = 50) Integer> wants) {
    Map<String, Integer> ends = sharedOut(passes * threads, wants);
    int most = ends.values().stream().mapToInt(Integer::intValue).max().orElse(0);
    assertThat(feeding(IntStream.range(0, passes).mapToObj(pass -> threads).toList(), ends).isPresent()).isEqualTo(most <= passes);
  }

  private static Optional<List<Stint>> feeding(List<Integer> held, Map<String, Integer> ends) {
    return Feeding.of(held.stream().mapToInt(Integer::intValue).toArray(), IntStream.rangeClosed(1, held.size()).toArray(), ends);
  }

  /** Skeins that give about what they want, but all ends between them. */
  private static Map<String, Integer> sharedOut(int all, List<Integer> wants) {
    Map<String, Integer> ends = new LinkedHashMap<>();
    int left = all;
    for (int i = 0; i < wants.size() && left > 0; i++) {
      int given = i == wants.size() - 1 ? left : Math.min(left, wants.get(i));
      ends.put("S" + i, given);
      left -= given;
    }
    return ends;
  }

  private static void assertNoSkeinAndNoPositionIsInTwoPlacesAtOnce(List<Stint> stints) {
    for (int i = 0; i < stints.size(); i++) {
      for (Stint other : stints.subList(0, i)) {
        Stint one = stints.get(i);
        boolean apart = one.lastPass() < other.firstPass() || other.lastPass() < one.firstPass();
        boolean share = one.position() == other.position() || one.skein().equals(other.skein());
        assertThat(apart || !share).as("%s and %s", one, other).isTrue();
      }
    }
  }

  /** Every choice for every pass. */
  private static boolean canByTryingAll(List<Integer> held, int pass, List<Integer> left) {
    if (pass == held.size()) {
      return left.stream().allMatch(ends -> ends == 0);
    }
    if (left.stream().anyMatch(ends -> ends > held.size() - pass)) {
      return false;
    }
    int[] most = left.stream().mapToInt(Integer::intValue).sorted().toArray();
    if (Arrays.stream(most).sum() != held.subList(pass, held.size()).stream().mapToInt(Integer::intValue).sum()) {
      return false;
    }
    for (int chosen = 0; chosen < 1 << left.size(); chosen++) {
      if (Integer.bitCount(chosen) == held.get(pass)) {
        List<Integer> after = new ArrayList<>();
        for (int i = 0; i < left.size(); i++) {
          after.add(left.get(i) - (chosen >> i & 1));
        }
        if (after.stream().noneMatch(ends -> ends < 0) && canByTryingAll(held, pass + 1, after)) {
          return true;
        }
      }
    }
    return false;
  }
}
