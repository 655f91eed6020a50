package hankbook.allot;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.measure.Length;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

class AllottingProperties {
  private static final Length PER_END = Length.metres(4);
  private static final Length USEFUL = Length.metres(5);

  @Property(seed = "20261201")
  void aWarpLeavesTheFewestEndsUncoveredFromTheFewestLots(
      @ForAll @Size(max = 7) List<@IntRange(max = 30) Integer> metres, @ForAll @IntRange(min = 1, max = 30) int ends) {
    List<Candidate> skeins = skeins(metres);
    Allotment allotment = Allotting.best(skeins, new Demand(ends, PER_END, Length.ZERO, USEFUL));
    long lots = skeins.stream().filter(skein -> taken(allotment, skein)).map(Candidate::lotOrOwn).distinct().count();
    assertThat(List.of((long) allotment.endsUncovered(), lots)).isEqualTo(byTryingEveryLot(skeins, ends));
  }

  @Property(seed = "20261202")
  void noSkeinGivesMoreThanItHasAndWhatIsGivenAndWhatLacksMakeTheDemand(
      @ForAll @Size(max = 7) List<@IntRange(max = 30) Integer> metres,
      @ForAll @IntRange(max = 20) int ends,
      @ForAll @IntRange(max = 60) int weft) {
    List<Candidate> skeins = skeins(metres);
    Allotment allotment = Allotting.best(skeins, new Demand(ends, PER_END, Length.metres(weft), USEFUL));
    for (Candidate skein : skeins) {
      Length given = allotment.shares().stream().filter(share -> share.code().equals(skein.code())).map(share -> share.warp().plus(share.weft())).reduce(Length.ZERO, Length::plus);
      assertThat(given).isLessThanOrEqualTo(skein.free());
    }
    assertThat(allotment.shares().stream().mapToInt(Share::ends).sum() + allotment.endsUncovered()).isEqualTo(ends);
    Length woven = allotment.shares().stream().map(Share::weft).reduce(Length.ZERO, Length::plus);
    assertThat(Allotting.covers(skeins, new Demand(ends, PER_END, Length.metres(weft), USEFUL))).isEqualTo(allotment.complete());
    assertThat(woven.plus(allotment.weftUncovered())).isEqualTo(Length.metres(weft));
  }

  @Property(tries = 300, seed = "20261203")
  void anotherSkeinNeverLeavesMoreUncoveredAndLongerEndsNeverLess(
      @ForAll @Size(max = 7) List<@IntRange(max = 30) Integer> metres, @ForAll @IntRange(max = 20) int ends, @ForAll @IntRange(max = 60) int weft) {
    List<Candidate> skeins = skeins(metres);
    long fewer = uncovered(skeins.subList(0, Math.max(0, skeins.size() - 1)), ends, PER_END, weft);
    long all = uncovered(skeins, ends, PER_END, weft);
    assertThat(all).isLessThanOrEqualTo(fewer);
    assertThat(uncovered(skeins, ends, PER_END.plus(Length.metres(1)), weft)).isGreaterThanOrEqualTo(all);
  }

  private static long uncovered(List<Candidate> skeins, int ends, Length perEnd, int weft) {
    Allotment allotment = Allotting.best(skeins, new Demand(ends, perEnd, Length.metres(weft), USEFUL));
    return perEnd.times(allotment.endsUncovered()).plus(allotment.weftUncovered()).tenthsOfMillimetre();
  }

  /** The fewest ends uncovered, then the fewest lots, by trying every set of lots. */
  private static List<Long> byTryingEveryLot(List<Candidate> skeins, int ends) {
    List<String> lots = skeins.stream().map(Candidate::lotOrOwn).distinct().toList();
    List<Long> best = List.of((long) ends, 0L);
    for (int set = 0; set < 1 << lots.size(); set++) {
      int chosen = set;
      long held =
          skeins.stream()
              .filter(skein -> (chosen >> lots.indexOf(skein.lotOrOwn()) & 1) == 1)
              .mapToLong(skein -> skein.free().holds(PER_END))
              .sum();
      List<Long> tried = List.of(Math.max(0, ends - held), (long) Integer.bitCount(set));
      boolean better = tried.get(0) < best.get(0) || (tried.get(0).equals(best.get(0)) && tried.get(1) < best.get(1));
      best = better ? tried : best;
    }
    return best;
  }

  private static boolean taken(Allotment allotment, Candidate skein) {
    return allotment.shares().stream().anyMatch(share -> share.code().equals(skein.code()));
  }

  private static List<Candidate> skeins(List<Integer> metres) {
    List<Candidate> skeins = new ArrayList<>();
    IntStream.range(0, metres.size())
        .forEach(i -> skeins.add(new Candidate("S" + i, i % 4 == 3 ? "" : "L" + i % 3, i % 2 == 0, Length.metres(metres.get(i)), LocalDate.of(2025, 1, 1 + i))));
    return skeins;
  }
}
