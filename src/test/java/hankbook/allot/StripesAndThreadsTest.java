package hankbook.allot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import hankbook.measure.Length;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class StripesAndThreadsTest {
  private static final Length USEFUL = Length.metres(5);

  /** Kind after kind would take the 25 m for the two long ends and leave the 16 m too short for four of 5 m. */
  @Test
  void endsOfTwoKindsAreSettledTogether() {
    List<Candidate> skeins = List.of(skein("A", "red", 25), skein("B", "red", 16));
    Allotment allotment = Allotting.best(skeins, demand(1, kind(2, 8), kind(5, 5)));
    assertThat(allotment.complete()).isTrue();
    assertThat(allotment.shares()).extracting(Share::code, share -> share.ends(0), share -> share.ends(1)).containsExactly(tuple("A", 0, 5), tuple("B", 2, 0));
  }

  @Test
  void aStripeThatKeepsToOneLotGetsItsOwnWhileTheOthersMayMix() {
    List<Candidate> skeins = List.of(skein("A", "red", 60), skein("B", "blue", 40));
    EndKind stripe = new EndKind(10, Length.metres(4), true);
    Allotment allotment = Allotting.best(skeins, demand(1, kind(15, 4), stripe));
    assertThat(allotment.complete()).isTrue();
    assertThat(allotment.shares().stream().filter(share -> share.ends(1) > 0)).hasSize(1);
    assertThat(Allotting.best(skeins, demand(1, kind(10, 4), new EndKind(16, Length.metres(4), true))).endsUncovered()).isEqualTo(1);
  }

  @Test
  void weftThatKeepsToOneLotIsUncoveredWhereNoLotHasAllOfIt() {
    List<Candidate> skeins = List.of(skein("A", "red", 60), skein("B", "blue", 50));
    Demand demand = new Demand(List.of(), Length.metres(70), true, USEFUL, 1);
    assertThat(Allotting.best(skeins, demand).weftUncovered()).isEqualTo(Length.metres(10));
    assertThat(Allotting.covers(skeins, demand)).isFalse();
  }

  @Test
  void whatIsWoundTogetherComesFromAsManyPackagesWhereTheShelfHasThem() {
    List<Candidate> skeins = List.of(skein("A", "red", 100), skein("B", "red", 30), skein("C", "red", 30));
    assertThat(Allotting.best(skeins, demand(1, kind(12, 5))).shares()).extracting(Share::code).containsExactly("A");
    assertThat(Allotting.best(skeins, demand(2, kind(12, 5))).shares()).extracting(Share::ends).containsExactly(6, 6);
    assertThat(Allotting.best(skeins, demand(4, kind(20, 5))).shares()).extracting(Share::ends).containsExactly(20);
  }

  @Test
  void aReasonSaysWhatWouldBeWithoutTheSkein() {
    List<Candidate> skeins = List.of(opened("A", "red", 60), skein("B", "red", 70), skein("C", "blue", 80), skein("D", "green", 70));
    assertThat(Allotting.best(skeins, demand(1, kind(30, 4))).shares())
        .extracting(Share::reason)
        .containsExactly(
            "lot red, opened before; the only lot that gives all 30 ends; without it 2 lots would be needed instead of 1",
            "lot red, unopened; the only lot that gives all 30 ends; keeps the longest remnant, 10 m; without it 2 lots would be needed instead of 1");
    assertThat(Allotting.best(skeins, demand(1, kind(12, 4))).shares())
        .extracting(Share::reason)
        .containsExactly("lot red, opened before; keeps the longest remnant, 12 m; without it one more unopened skein would be broken into");
    assertThat(Allotting.best(List.of(skein("A", "", 50), skein("B", "", 50)), demand(1, kind(10, 4))).shares())
        .extracting(Share::reason)
        .containsExactly("lot unknown, unopened; keeps the longest remnant, 10 m; others would serve as well, and the earliest received go first");
  }

  @Test
  void aThousandDifferentSkeinsAreSettledWithProof() {
    Demand demand = new Demand(List.of(kind(560, 8), kind(20, 16)), Length.metres(2000), false, USEFUL, 2);
    Allotment allotment = Allotting.best(manySkeins(), demand);
    assertThat(allotment.complete()).isTrue();
    assertThat(allotment.proven()).isTrue();
    assertThat(allotment.shares().stream().filter(share -> share.ends() > 0)).allMatch(share -> share.ends(0) <= 280 && share.ends(1) <= 10);
  }

  @Test
  void whatIsGivenUpForItsSizeIsStillAnAllotmentAndSaysSo() {
    List<Candidate> skeins = manySkeins();
    Demand demand = demand(1, kind(600, 8));
    Allotment givenUp = Allotting.best(skeins, demand, new Effort(10));
    assertThat(givenUp.proven()).isFalse();
    assertThat(givenUp.complete()).isTrue();
    assertThat(givenUp.shares().stream().mapToInt(Share::ends).sum()).isEqualTo(600);
  }

  @Test
  void whereMetresLackWhateverServesIsTakenAndNoOtherReasonIsGiven() {
    assertThat(Allotting.best(List.of(skein("A", "red", 50), skein("B", "blue", 50)), demand(1, kind(30, 4))).shares())
        .extracting(Share::reason)
        .containsExactly("lot red, unopened; whatever serves is taken, since metres lack", "lot blue, unopened; whatever serves is taken, since metres lack");
  }

  @Test
  void whatIsGivenUpUndecidedIsNotCoveredAndIsKnownToBeUndecided() {
    // 2 ends of 7 m fill the 14 m and 3 of 5 m the 15 m; the quick filling begins with the longer skein and leaves one out.
    List<Candidate> skeins = List.of(skein("A", "red", 15), skein("B", "red", 14));
    Effort none = new Effort(0);
    assertThat(Allotting.covers(skeins, demand(1, kind(2, 7), kind(3, 5)), none)).isFalse();
    assertThat(none.proven()).isFalse();
    Effort some = Allotting.effort();
    assertThat(Allotting.covers(skeins, demand(1, kind(2, 7), kind(3, 5)), some)).isTrue();
    assertThat(some.proven()).isTrue();
  }

  private static List<Candidate> manySkeins() {
    Random random = new Random(1);
    return new ArrayList<>(
        IntStream.range(0, 1000)
            .mapToObj(i -> new Candidate("S" + i, "L" + random.nextInt(30), random.nextInt(5) == 0, new Length(1_000_000 + random.nextInt(8_000_000)), LocalDate.of(2025, 1, 1).plusDays(random.nextInt(300))))
            .toList());
  }

  private static EndKind kind(int ends, int metres) {
    return new EndKind(ends, Length.metres(metres), false);
  }

  private static Demand demand(int threads, EndKind... kinds) {
    return new Demand(List.of(kinds), Length.ZERO, false, USEFUL, threads);
  }

  private static Candidate skein(String code, String lot, int metres) {
    return new Candidate(code, lot, false, Length.metres(metres), LocalDate.of(2025, 1, 1));
  }

  private static Candidate opened(String code, String lot, int metres) {
    return new Candidate(code, lot, true, Length.metres(metres), LocalDate.of(2025, 1, 1));
  }
}
