package hankbook.allot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import hankbook.measure.Length;
import hankbook.measure.Unreadable;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AllottingTest {
  private static final LocalDate SPRING = LocalDate.of(2026, 4, 1);

  @Test
  void threeSkeinsOf950MetresGiveAll690EndsOf4Metres() {
    Allotment allotment = Allotting.best(List.of(skein("A", 950), skein("B", 950), skein("C", 950)), warp(690, 4));
    assertThat(allotment.complete()).isTrue();
    assertThat(allotment.shares()).extracting(Share::code).containsExactly("A", "B", "C");
    assertThat(allotment.shares().stream().mapToInt(Share::ends).sum()).isEqualTo(690);
  }

  @Test
  void theMetresAloneAreNotEnoughWhereTheyAreNotInWholeEnds() {
    List<Candidate> pieces = IntStream.range(0, 150).mapToObj(i -> skein("P" + i, 19)).toList();
    Allotment allotment = Allotting.best(pieces, warp(690, 4));
    assertThat(pieces.stream().map(Candidate::free).reduce(Length.ZERO, Length::plus)).isEqualTo(Length.metres(2850));
    assertThat(allotment.complete()).isFalse();
    assertThat(allotment.endsUncovered()).isEqualTo(690 - 150 * 4);
  }

  @Test
  void aRemnantServesAsWeftOnlyWhereItIsLongerThanTheUsefulOne() {
    Demand demand = new Demand(10, Length.metres(4), Length.metres(3), Length.metres(5));
    assertThat(Allotting.best(List.of(skein("A", 45)), demand).weftUncovered()).isEqualTo(Length.metres(3));
    assertThat(Allotting.best(List.of(skein("A", 46)), demand).complete()).isTrue();
  }

  @Test
  void anEndIsGivenUpWhereThatLeavesFewerMetresUncovered() {
    Demand demand = new Demand(10, Length.metres(4), Length.metres(5), Length.metres(5));
    Allotment allotment = Allotting.best(List.of(skein("A", 45)), demand);
    assertThat(allotment.endsUncovered()).isEqualTo(1);
    assertThat(allotment.weftUncovered()).isEqualTo(Length.ZERO);
  }

  @Test
  void aWarpLeavesTheSkeinWhoseRestTheWeftNeeds() {
    List<Candidate> skeins = List.of(skein("A", 12), skein("B", 20));
    Allotment allotment = Allotting.best(skeins, new Demand(3, Length.metres(4), Length.metres(20), Length.metres(12)));
    assertThat(allotment.complete()).isTrue();
    assertThat(allotment.shares()).extracting(Share::code, Share::ends).containsExactly(tuple("A", 3), tuple("B", 0));
  }

  @Test
  void oneLotIsPreferredToFewerSkeinsOfTwo() {
    List<Candidate> skeins = List.of(opened("A", "a", 90), opened("B", "b", 50), lot("C", "c", 40), lot("D", "c", 40), lot("E", "c", 40));
    assertThat(Allotting.best(skeins, warp(30, 4)).shares()).extracting(Share::code).containsExactly("C", "D", "E");
  }

  @Test
  void openedSkeinsAreUsedUpBeforeAnUnopenedOneIsBrokenInto() {
    List<Candidate> skeins = List.of(lot("C", "a", 100), opened("A", "a", 40), opened("B", "a", 40));
    assertThat(Allotting.best(skeins, warp(20, 4)).shares()).extracting(Share::code).containsExactly("A", "B");
  }

  @Test
  void theLongestSkeinIsTakenForTheRemnantItKeeps() {
    Allotment allotment = Allotting.best(List.of(skein("A", 60), skein("B", 100)), warp(10, 4));
    assertThat(allotment.shares()).extracting(Share::code).containsExactly("B");
    assertThat(allotment.shares().getFirst().reason())
        .isEqualTo("lot red, unopened; keeps the longest remnant, 60 m; without it no remnant as long as 60 m would be kept");
  }

  @Test
  void amongEqualsTheEarliestReceivedServesAndAnUnknownDateIsLast() {
    Candidate unknown = new Candidate("A", "red", false, Length.metres(50), LocalDate.MIN);
    Candidate late = new Candidate("B", "red", false, Length.metres(50), SPRING.plusDays(1));
    Candidate early = new Candidate("C", "red", false, Length.metres(50), SPRING);
    assertThat(Allotting.best(List.of(unknown, late, early), warp(10, 4)).shares()).extracting(Share::code).containsExactly("C");
    assertThat(Allotting.best(List.of(unknown, late), warp(10, 4)).shares()).extracting(Share::code).containsExactly("B");
  }

  @Test
  void skeinsOfUnknownLotAreLotsOfTheirOwn() {
    List<Candidate> skeins = List.of(lot("A", "", 40), lot("B", "", 40), lot("C", "red", 30), lot("D", "red", 30), lot("E", "red", 30));
    assertThat(Allotting.best(skeins, warp(20, 4)).shares()).extracting(Share::code).containsExactly("C", "D", "E");
  }

  @Test
  void nothingWantedTakesNothingAndNoSkeinsCoverNothing() {
    Allotment nothing = Allotting.best(List.of(skein("A", 50)), new Demand(0, Length.ZERO, Length.ZERO, Length.ZERO));
    assertThat(nothing).isEqualTo(new Allotment(List.of(), 0, Length.ZERO, true));
    Allotment none = Allotting.best(List.of(), new Demand(3, Length.metres(4), Length.metres(7), Length.ZERO));
    assertThat(none).isEqualTo(new Allotment(List.of(), 3, Length.metres(7), true));
  }

  @Test
  void aSkeinGivenTwiceIsRefused() {
    assertThatThrownBy(() -> Allotting.best(List.of(skein("A", 1), skein("A", 2)), warp(1, 1)))
        .isInstanceOf(Unreadable.class)
        .hasMessageContaining("A");
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 4, 30})
  void thirtySkeinsInSoManyLotsAreAllotted(int lots) {
    Random random = new Random(7);
    List<Candidate> skeins =
        IntStream.range(0, 30)
            .mapToObj(i -> new Candidate("S" + i, lots == 30 ? "" : "L" + i % lots, i % 3 == 0, Length.metres(100 + random.nextInt(900)), SPRING))
            .toList();
    Demand demand = new Demand(1200, Length.metres(6), Length.metres(3000), Length.metres(5));
    assertThat(Allotting.best(skeins, demand).complete()).isTrue();
  }

  @Test
  void ofAThousandSkeinsAlikeTheFewThatServeAreTheEarliest() {
    List<Candidate> skeins = IntStream.range(0, 1000).mapToObj(i -> skein("S" + (1000 + i), 400)).toList();
    Allotment allotment = Allotting.best(skeins, warp(530, 5));
    assertThat(allotment.shares()).extracting(Share::code).containsExactly("S1000", "S1001", "S1002", "S1003", "S1004", "S1005", "S1006");
  }

  private static Demand warp(int ends, int metres) {
    return new Demand(ends, Length.metres(metres), Length.ZERO, Length.metres(5));
  }

  private static Candidate skein(String code, int metres) {
    return lot(code, "red", metres);
  }

  private static Candidate lot(String code, String lot, int metres) {
    return new Candidate(code, lot, false, Length.metres(metres), SPRING);
  }

  private static Candidate opened(String code, String lot, int metres) {
    return new Candidate(code, lot, true, Length.metres(metres), SPRING);
  }
}
