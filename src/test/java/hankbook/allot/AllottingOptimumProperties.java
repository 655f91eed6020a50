package hankbook.allot;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.measure.Length;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** In tenths of a millimetre, few enough that every choice can be tried. */
class AllottingOptimumProperties {
  @Property(tries = 1000, seed = "20261127")
  void noOtherChoiceIsBetterForEndsOfTwoKindsThatKeepToTheirLotsAndAreWoundTogether(
      @ForAll("fewSkeins") List<Candidate> skeins, @ForAll("demandsOfTwoKinds") Demand demand) {
    noOtherChoiceIsBetter(skeins, demand);
  }

  @Property(tries = 1500, seed = "20261125")
  void noOtherChoiceIsBetter(@ForAll("shelves") List<Candidate> skeins, @ForAll("demands") Demand demand) {
    Allotment allotment = Allotting.best(skeins, demand);
    assertThat(NaiveAllotting.score(allotment, skeins, demand)).isEqualTo(NaiveAllotting.best(skeins, demand));
    assertThat(NaiveAllotting.lotsAreKept(allotment, skeins, demand)).isTrue();
    assertThat(allotment.proven()).isTrue();
    assertThat(Allotting.covers(skeins, demand)).isEqualTo(allotment.complete());
  }

  @Property(tries = 1000, seed = "20261126")
  void everyShareCanBeTakenAndWithTheUncoveredMakesTheDemand(@ForAll("shelves") List<Candidate> skeins, @ForAll("demands") Demand demand) {
    Allotment allotment = Allotting.best(skeins, demand);
    for (Share share : allotment.shares()) {
      Candidate skein = skeins.stream().filter(one -> one.code().equals(share.code())).findFirst().orElseThrow();
      Length rest = skein.free().minus(share.warp());
      assertThat(share.kinds()).allMatch(given -> given.each().equals(demand.kinds().get(given.kind()).each()));
      assertThat(share.weft()).isBetween(Length.ZERO, rest);
      assertThat(share.weft().isZero() || rest.compareTo(demand.usefulRemnant()) > 0).isTrue();
      assertThat(share.ends() > 0 || share.weft().isPositive()).isTrue();
    }
    assertThat(allotment.shares()).extracting(Share::code).doesNotHaveDuplicates();
    assertThat(allotment.shares().stream().mapToInt(Share::ends).sum() + allotment.endsUncovered()).isEqualTo(demand.ends());
    assertThat(allotment.shares().stream().map(Share::weft).reduce(allotment.weftUncovered(), Length::plus)).isEqualTo(demand.weft());
  }

  @Provide
  Arbitrary<List<Candidate>> shelves() {
    return shelves(5);
  }

  @Provide
  Arbitrary<List<Candidate>> fewSkeins() {
    return shelves(4);
  }

  private static Arbitrary<List<Candidate>> shelves(int mostSkeins) {
    Arbitrary<LocalDate> received = Arbitraries.of(LocalDate.MIN, LocalDate.of(2025, 5, 1), LocalDate.of(2026, 5, 1));
    Arbitrary<Candidate> skein =
        Combinators.combine(Arbitraries.of("", "A", "B", "C"), Arbitraries.of(true, false), Arbitraries.integers().between(0, 8), received)
            .as((lot, opened, free, date) -> new Candidate("?", lot, opened, new Length(free), date));
    return skein.list().ofMaxSize(mostSkeins).map(AllottingOptimumProperties::coded);
  }

  private static List<Candidate> coded(List<Candidate> skeins) {
    List<Candidate> coded = new ArrayList<>();
    for (Candidate skein : skeins) {
      coded.add(new Candidate("S" + coded.size(), skein.lot(), skein.opened(), skein.free(), skein.received()));
    }
    return coded;
  }

  @Provide
  Arbitrary<Demand> demands() {
    return Combinators.combine(
            Arbitraries.integers().between(0, 6),
            Arbitraries.integers().between(1, 4),
            Arbitraries.integers().between(0, 10),
            Arbitraries.integers().between(0, 4))
        .as((ends, perEnd, weft, useful) -> new Demand(ends, new Length(perEnd), new Length(weft), new Length(useful)));
  }

  @Provide
  Arbitrary<Demand> demandsOfTwoKinds() {
    Arbitrary<EndKind> kind =
        Combinators.combine(Arbitraries.integers().between(0, 3), Arbitraries.integers().between(1, 4), Arbitraries.of(true, false, false))
            .as((ends, each, oneLot) -> new EndKind(ends, new Length(each), oneLot));
    return Combinators.combine(
            kind.list().ofMinSize(1).ofMaxSize(2),
            Arbitraries.integers().between(0, 6),
            Arbitraries.of(true, false, false),
            Arbitraries.integers().between(0, 3),
            Arbitraries.integers().between(1, 3))
        .as((kinds, weft, oneLot, useful, threads) -> new Demand(kinds, new Length(weft), oneLot, new Length(useful), threads));
  }
}
