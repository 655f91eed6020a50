package hankbook.reckon;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Grist;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.yarn.YarnColour;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** How the loom of a plan comes out empty, worked by hand. The yarns are 100 tex (10 m to the gram) and 50 tex (20 m). */
class SquaringTest {
  private static final String PLAN = "Scarf";
  private static final YarnColour ASH = new YarnColour("Fjara", "Ash");
  private static final YarnColour MOSS = new YarnColour("Tussock", "Moss");
  private static final Place SHELF = new Place.Shelf();
  private static final Place LOOM = new Place.Loom(PLAN);

  @Test
  void whatIsLeftBeyondWhatNeverLeftTheShelfComesBackAndTheRestIsWoven() {
    Squared squared = squared(List.of(ash("A", 300, 0, 200, 0)), Map.of("A", metres(220)));
    assertThat(squared.movements()).containsExactly(
        Map.entry(EntryKind.RETURN, List.of(new Transfer("A", LOOM, SHELF, metres(20)))),
        Map.entry(EntryKind.WOVEN, List.of(new Transfer("A", LOOM, new Place.Cloth(PLAN), metres(280)))));
  }

  @Test
  void whatLacksOnTheShelfWasTakenToTheLoomToo() {
    Squared squared = squared(List.of(ash("A", 300, 0, 200, 0)), Map.of("A", metres(190)));
    assertThat(squared.movements()).containsExactly(
        Map.entry(EntryKind.DRAW, List.of(new Transfer("A", SHELF, LOOM, metres(10)))),
        Map.entry(EntryKind.WOVEN, List.of(new Transfer("A", LOOM, new Place.Cloth(PLAN), metres(310)))));
  }

  @Test
  void whatIsLeftBeyondAllThatWasDrawnIsRecounted() {
    Squared squared = squared(List.of(ash("A", 300, 0, 200, 0), ash("B", 50, 0, 0, 0)), Map.of("A", metres(504), "B", metres(0)));
    assertThat(squared.movements()).containsExactly(
        Map.entry(EntryKind.RETURN, List.of(new Transfer("A", LOOM, SHELF, metres(300)))),
        Map.entry(EntryKind.RECOUNT, List.of(new Transfer("A", new Place.Recount(), SHELF, metres(4)))),
        Map.entry(EntryKind.WOVEN, List.of(new Transfer("B", LOOM, new Place.Cloth(PLAN), metres(50)))));
  }

  @Test
  void whatIsStillReservedIsReleasedFirstAndMayHaveBeenTakenUnsaid() {
    Squared squared = squared(List.of(ash("A", 300, 40, 0, 5)), Map.of("A", metres(15)));
    assertThat(squared.movements()).containsExactly(
        Map.entry(EntryKind.RELEASE, List.of(new Transfer("A", new Place.Reserved(PLAN), SHELF, metres(40)))),
        Map.entry(EntryKind.DRAW, List.of(new Transfer("A", SHELF, LOOM, metres(30)))),
        Map.entry(EntryKind.WOVEN, List.of(new Transfer("A", LOOM, new Place.Cloth(PLAN), metres(330)))));
  }

  @Test
  void aSkeinThatIsOnlyReservedNeedNotBeSaid() {
    Squared squared = squared(List.of(ash("A", 300, 0, 0, 0), moss("M", 0, 60, 0, 0)), Map.of("A", metres(0)));
    assertThat(squared.movements().get(EntryKind.RELEASE)).containsExactly(new Transfer("M", new Place.Reserved(PLAN), SHELF, metres(60)));
    assertThat(squared.movements().get(EntryKind.WOVEN)).extracting(Transfer::skein).containsExactly("A");
  }

  @Test
  void anotherSkeinOfAYarnThatWasDrawnMayBeSaid() {
    Squared squared = squared(List.of(ash("A", 300, 0, 0, 0), ash("B", 0, 0, 100, 0)), Map.of("A", metres(0), "B", metres(70)));
    assertThat(squared.movements().get(EntryKind.DRAW)).containsExactly(new Transfer("B", SHELF, LOOM, metres(30)));
  }

  /** 7 g of thrums at 100 tex are 70 m; of 40 m of samples and then of the thrums, skeins that gave 200 m and 100 m have two thirds and one. */
  @Test
  void aBundleIsSharedOverTheSkeinsAsEachGave() {
    List<DrawnSkein> skeins = List.of(ash("A", 200, 0, 0, 0), ash("B", 100, 0, 0, 0));
    Squared squared = squared(skeins, Map.of("A", metres(0), "B", metres(0)), List.of(mass(ASH, 7)), List.of(length(ASH, 40)), Map.of(ASH, metres(100)));
    assertThat(squared.movements().get(EntryKind.SAMPLE)).extracting(Transfer::length).containsExactly(new Length(266_667), new Length(133_333));
    assertThat(squared.movements().get(EntryKind.WASTE)).extracting(Transfer::length).containsExactly(new Length(466_667), new Length(233_333));
    assertThat(squared.movements().get(EntryKind.WOVEN)).extracting(Transfer::length).containsExactly(new Length(1_266_666), new Length(633_334));
  }

  /** 150 m of 100 tex and 100 m of 50 tex are 250 m that weigh 20 g: 2 g of them are 25 m, of which 15 m and 10 m. */
  @Test
  void aBundleOfTheWholeWarpHasItsYarnsAsTheyLieInIt() {
    List<DrawnSkein> skeins = List.of(ash("A", 200, 0, 0, 0), moss("M", 100, 0, 0, 0));
    Map<YarnColour, Length> warp = Map.of(ASH, metres(150), MOSS, metres(100));
    Squared squared = squared(skeins, Map.of("A", metres(0), "M", metres(0)), List.of(new Bundle(Optional.empty(), new Bundle.Amount.OfMass(Mass.grams(2)))), List.of(), warp);
    assertThat(squared.movements().get(EntryKind.WASTE)).extracting(Transfer::length).containsExactly(metres(15), metres(10));
  }

  @Test
  void aYarnOfTheWarpThatWasNotUsedIsInNoBundleOfIt() {
    List<DrawnSkein> skeins = List.of(ash("A", 200, 0, 0, 0), moss("M", 100, 0, 0, 0));
    Map<YarnColour, Length> warp = Map.of(ASH, metres(150), MOSS, metres(100));
    Squared squared = squared(skeins, Map.of("A", metres(0), "M", metres(100)), List.of(new Bundle(Optional.empty(), new Bundle.Amount.OfLength(metres(5)))), List.of(), warp);
    assertThat(squared.movements().get(EntryKind.WASTE)).containsExactly(new Transfer("A", LOOM, new Place.Thrums(PLAN), metres(5)));
  }

  @Test
  void nothingOnTheLoomIsRefused() {
    assertThat(refused(List.of(ash("A", 0, 300, 0, 0)), Map.of())).isEqualTo("Nothing is on the loom for Scarf; draw its yarn first.");
  }

  @Test
  void aSkeinThatWasNeverDrawnIsRefusedUnlessItsYarnWas() {
    List<DrawnSkein> skeins = List.of(ash("A", 300, 0, 0, 0), moss("M", 0, 0, 100, 0));
    assertThat(refused(skeins, Map.of("A", metres(0), "M", metres(50)))).startsWith("M was never drawn for Scarf, nor was any other skein of its yarn");
    assertThat(refused(skeins, Map.of("A", metres(0), "Z", metres(50)))).startsWith("Z was never drawn for Scarf");
  }

  @Test
  void whatIsNotSaidIsNamed() {
    assertThat(refused(List.of(ash("A", 300, 0, 0, 0), ash("B", 1, 0, 0, 0)), Map.of())).isEqualTo("It is not said what is left of A, B, which were drawn.");
  }

  @Test
  void lessThanWhatIsPromisedElsewhereIsRefused() {
    assertThat(refused(List.of(ash("A", 300, 0, 10, 50)), Map.of("A", metres(49))))
        .isEqualTo("Of A 50 m are reserved for other plans, more than the 49 m that are left of it; release what lacks first.");
  }

  @Test
  void moreThanAnySkeinHoldsIsRefused() {
    assertThat(refused(List.of(ash("A", 300, 0, 0, 0)), Map.of("A", Length.metres(200_000_000)))).startsWith("No skein holds 200000000 m");
  }

  @Test
  void bundlesLargerThanWhatWasUsedAreRefused() {
    SquaringOutcome outcome = new Squaring(PLAN, List.of(ash("A", 30, 0, 0, 0)), Map.of("A", metres(0)), List.of(length(ASH, 20)), List.of(mass(ASH, 2)), Map.of()).outcome();
    assertThat(outcome).isEqualTo(new Unsquared.MoreThanUsed(ASH, metres(40), metres(30)));
  }

  @Test
  void aBundleOfWhatWasNotUsedOrHasNoGristIsRefused() {
    List<DrawnSkein> skeins = List.of(new DrawnSkein("N", ASH, Optional.empty(), metres(30), Length.ZERO, Length.ZERO, Length.ZERO));
    assertThat(new Squaring(PLAN, skeins, Map.of("N", metres(0)), List.of(length(MOSS, 1)), List.of(), Map.of()).outcome()).isEqualTo(new Unsquared.NotUsed(MOSS));
    assertThat(new Squaring(PLAN, skeins, Map.of("N", metres(0)), List.of(mass(ASH, 1)), List.of(), Map.of()).outcome()).isEqualTo(new Unsquared.NoGrist(ASH));
    Bundle warp = new Bundle(Optional.empty(), new Bundle.Amount.OfLength(metres(1)));
    assertThat(new Squaring(PLAN, skeins, Map.of("N", metres(0)), List.of(warp), List.of(), Map.of(MOSS, metres(1))).outcome()).isEqualTo(new Unsquared.NoWarpInIt(PLAN));
  }

  private static Squared squared(List<DrawnSkein> skeins, Map<String, Length> found) {
    return squared(skeins, found, List.of(), List.of(), Map.of());
  }

  private static Squared squared(List<DrawnSkein> skeins, Map<String, Length> found, List<Bundle> thrums, List<Bundle> samples, Map<YarnColour, Length> warp) {
    SquaringOutcome outcome = new Squaring(PLAN, skeins, found, thrums, samples, warp).outcome();
    assertThat(outcome).isInstanceOf(Squared.class);
    return (Squared) outcome;
  }

  private static String refused(List<DrawnSkein> skeins, Map<String, Length> found) {
    return ((Unsquared) new Squaring(PLAN, skeins, found, List.of(), List.of(), Map.of()).outcome()).message();
  }

  private static DrawnSkein ash(String code, long onLoom, long reserved, long free, long promised) {
    return new DrawnSkein(code, ASH, Optional.of(tex(100)), metres(onLoom), metres(reserved), metres(free), metres(promised));
  }

  private static DrawnSkein moss(String code, long onLoom, long reserved, long free, long promised) {
    return new DrawnSkein(code, MOSS, Optional.of(tex(50)), metres(onLoom), metres(reserved), metres(free), metres(promised));
  }

  private static Grist tex(int tex) {
    return new Grist(BigFraction.of(tex));
  }

  private static Bundle mass(YarnColour yarn, long grams) {
    return new Bundle(Optional.of(yarn), new Bundle.Amount.OfMass(Mass.grams(grams)));
  }

  private static Bundle length(YarnColour yarn, long metres) {
    return new Bundle(Optional.of(yarn), new Bundle.Amount.OfLength(metres(metres)));
  }

  private static Length metres(long metres) {
    return Length.metres(metres);
  }
}
