package hankbook.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hankbook.ledger.ChainedEntry;
import hankbook.ledger.EntryKind;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.store.Vendor;
import hankbook.yarn.Doubts;
import hankbook.yarn.GristSample;
import hankbook.yarn.PackageForm;
import hankbook.yarn.Skein;
import hankbook.yarn.Turns;
import hankbook.yarn.Weighing;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import org.joda.money.Money;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Yarn wound off one skein onto another, in either database. A is 1000 m by its label at 10.00 EUR and B 500 m at 8.00 EUR, both of lot K1; C is 400 m of lot
 * K2 at 6.00 EUR; W is 54 g of 16/2 cotton on the balance, 731.5 m, for which nobody wrote down a cost; D is 100 m of another colour.
 */
@ParameterizedClass
@EnumSource
class RewindTest {
  private static final Clock NOON = Clock.fixed(Instant.parse("2026-03-14T12:00:00Z"), ZoneOffset.UTC);
  private static final WoundOff ALL = new WoundOff.All();
  private static final String STOCK = """
      code,yarn,colour,fibre,grist,form,length,gross,tare,opened,lot,location,cost,received
      A,Skerry 16/2,Woad,cotton,16/2 cotton,cone,1000 m,,,no,K1,Left shelf,10.00 EUR,2025-02-11
      B,Skerry 16/2,Woad,cotton,16/2 cotton,cone,500 m,,,no,K1,Left shelf,8.00 EUR,2025-02-11
      C,Skerry 16/2,Woad,cotton,16/2 cotton,cone,400 m,,,no,K2,Left shelf,6.00 EUR,2025-02-11
      D,Skerry 16/2,Rust,cotton,16/2 cotton,cone,100 m,,,no,K1,Left shelf,2.00 EUR,2025-02-11
      W,Skerry 16/2,Woad,cotton,16/2 cotton,cone,,92 g,38 g,yes,K1,Left shelf,,2025-02-11
      """;

  private final Vendor vendor;

  @TempDir private Path folder;
  private Studio studio;
  private Rewind rewind;

  RewindTest(Vendor vendor) {
    this.vendor = vendor;
  }

  @BeforeEach
  void open() throws Exception {
    studio = Studio.open(vendor.ledger(folder), "Ida", NOON);
    new Receive(studio).file("stock.csv", STOCK);
    rewind = new Rewind(studio);
  }

  @AfterEach
  void auditAndClose() {
    assertThat(new AuditLedger(studio).audit().audit().findings()).isEmpty();
    studio.close();
  }

  @Test
  void partOfASkeinGoesOntoANewOneThatIsLikeItAndTakesItsCostByLength() throws Exception {
    ChainedEntry entry = off("A", metres(300), "A2").orElseThrow();
    assertThat(entry.entry().kind()).isEqualTo(EntryKind.REWIND);
    assertThat(held("A").free()).isEqualTo(Length.metres(700));
    Skein wound = held("A2").skein();
    assertThat(held("A2").free()).isEqualTo(Length.metres(300));
    assertThat(wound.yarn()).isEqualTo(held("A").skein().yarn());
    assertThat(List.of(wound.lot(), wound.fibre(), wound.location())).containsExactly("K1", "cotton", "Left shelf");
    assertThat(wound.grist()).isEqualTo(held("A").skein().grist());
    assertThat(wound.received()).contains(LocalDate.of(2025, 2, 11));
    assertThat(wound.cost()).isEmpty();
    assertThat(worth("A")).isEqualTo("7.00");
    assertThat(worth("A2")).isEqualTo("3.00");
  }

  @Test
  void aNewPackageMayBePutUpOtherwiseAndLieElsewhere() throws Exception {
    rewind.off(UUID.randomUUID(), "A", metres(300), new NewPackage(" A2 ", Optional.of(PackageForm.BALL), Optional.of("Chest")), "for the scarf");
    assertThat(held("A2").skein().form()).isEqualTo(PackageForm.BALL);
    assertThat(held("A2").skein().location()).isEqualTo("Chest");
  }

  @Test
  void theCostOfWhatIsWoundOntoTheNextSkeinGoesAlongToTheCent() throws Exception {
    off("A", metres(333), "A2");
    off("A2", metres(100), "A3");
    off("A3", ALL, "A4");
    assertThat(worth("A2")).isEqualTo("2.33");
    assertThat(worth("A4")).isEqualTo("1.00");
    assertThat(total()).isEqualTo("26.00");
    assertThat(held("A3").isUsedUp()).isTrue();
  }

  @Test
  void aSkeinOfUnknownCostLeavesWhatIsWoundOffItUnknownToo() throws Exception {
    off("W", metres(100), "W2");
    assertThat(stock().value().withoutCost().keySet()).extracting(holding -> holding.skein()).contains("W", "W2");
    assertThat(total()).isEqualTo("26.00");
  }

  @Test
  void theMetresOfALengthThatWasOnlySaidAreKnownAsSuch() throws Exception {
    off("A", metres(300), "A2");
    assertThat(held("A2").skein().measurement().words()).isEmpty();
    assertThat(uncertainty("A2")).isCloseTo(9, within(0.001));
  }

  @Test
  void countedTurnsMakeTheMetresOfTheNewSkeinAsSureAsTurnsAre() throws Exception {
    off("A", new WoundOff.Counted(new Turns(150, Length.metres(2))), "A2");
    assertThat(held("A2").free()).isEqualTo(Length.metres(300));
    assertThat(held("A2").skein().measurement().words()).isEqualTo("turns");
    assertThat(uncertainty("A2")).isCloseTo(3, within(0.001));
  }

  @Test
  void aWeightOfTheNewPackageSaysHowMuchWasWoundOff() throws Exception {
    off("A", new WoundOff.Weighed(new Weighing(Mass.parse("30 g"), Mass.parse("8 g"), Optional.empty())), "A2");
    // 16/2 cotton is 8 × 840 yd to the pound, 73.818 tex: 22 g are 298.03 m.
    assertThat(held("A2").free().metres().doubleValue()).isCloseTo(298.03, within(0.01));
    assertThat(held("A").free().plus(held("A2").free())).isEqualTo(Length.metres(1000));
    assertThat(held("A2").skein().measurement().words()).isEqualTo("weight");
    assertThat(held("A2").skein().gristDisagrees()).isFalse();
  }

  @Test
  void allOfASkeinIsAsSurelyKnownOnTheNewOneAsItWas() throws Exception {
    double label = uncertainty("A");
    double weight = uncertainty("W");
    off("A", ALL, "A2");
    off("W", ALL, "W2");
    assertThat(held("A2").skein().measurement().words()).isEqualTo("label");
    assertThat(uncertainty("A2")).isEqualTo(label);
    assertThat(held("W2").skein().measurement().words()).isEqualTo("weight");
    assertThat(uncertainty("W2")).isEqualTo(weight);
    assertThat(held("A").isUsedUp()).isTrue();
    new Grists(studio).weigh("Skerry 16/2", new GristSample(Length.metres(10), new Mass(700), new Mass(10), Length.parse("5 cm")));
    assertThat(held("W2").skein().gristDisagrees()).isTrue();
  }

  @Test
  void whatWasTakenOffASkeinBeforeLeavesItsErrorInTheRestOnTheNewOne() throws Exception {
    double before = uncertainty("W");
    new PartWith(studio).skein(UUID.randomUUID(), "W", Length.metres(500), "");
    off("W", ALL, "W2");
    assertThat(uncertainty("W2")).isEqualTo(before);
    assertThat(held("W2").skein().gristDisagrees()).isFalse();
  }

  @Test
  void joinedSkeinsAreAsSureAsALengthThatWasOnlySaidUntilTheyAreWeighed() throws Exception {
    rewind.join(UUID.randomUUID(), "A", ALL, "B", false, "");
    assertThat(held("B").free()).isEqualTo(Length.metres(1500));
    assertThat(held("B").skein().measurement().words()).isEmpty();
    assertThat(uncertainty("B")).isCloseTo(45, within(0.001));
    assertThat(worth("B")).isEqualTo("18.00");
    assertThat(held("A").isUsedUp()).isTrue();
    new Recount(studio).weighed(UUID.randomUUID(), "B", new Weighing(Mass.parse("110 g"), Mass.parse("0 g"), Optional.empty()), "");
    assertThat(held("B").skein().measurement().words()).isEqualTo("weight");
  }

  @Test
  void joiningNeverMakesMetresSurer() throws Exception {
    new Grists(studio).weigh("Skerry 16/2", new GristSample(Length.metres(10), new Mass(700), new Mass(10), Length.parse("5 cm")));
    double weight = uncertainty("W");
    assertThat(weight).isCloseTo(40.6, within(0.1));
    off("A", metres(100), "A2");
    rewind.join(UUID.randomUUID(), "A2", ALL, "W", false, "");
    assertThat(uncertainty("W")).isEqualTo(weight);
    off("A", metres(100), "A3");
    rewind.join(UUID.randomUUID(), "W", ALL, "A3", false, "");
    assertThat(held("A3").free().metres().doubleValue()).isCloseTo(931.5, within(0.1));
    assertThat(uncertainty("A3")).isEqualTo(weight);
    assertThat(held("A3").skein().gristDisagrees()).isTrue();
  }

  @Test
  void aJoinThatIsTakenBackLeavesBothSkeinsAsTheyWere() throws Exception {
    ShelfSkein a = held("A");
    ShelfSkein b = held("B");
    ChainedEntry entry = rewind.join(UUID.randomUUID(), "A", ALL, "B", false, "").orElseThrow();
    reverse(entry);
    assertThat(held("A")).isEqualTo(a);
    assertThat(held("B")).isEqualTo(b);
    assertThat(worth("A")).isEqualTo("10.00");
    assertThat(worth("B")).isEqualTo("8.00");
  }

  @Test
  void anotherLotIsJoinedOnlyWhereThatIsSaidAndThenTheLotNamesBoth() throws Exception {
    assertThatThrownBy(() -> rewind.join(UUID.randomUUID(), "C", ALL, "B", false, ""))
        .isInstanceOf(NotDone.class)
        .hasMessageContaining("C is of lot K2 and B is of lot K1; joined they are of neither.");
    assertThat(held("B").skein().lot()).isEqualTo("K1");
    ChainedEntry entry = rewind.join(UUID.randomUUID(), "C", metres(100), "B", true, "").orElseThrow();
    assertThat(held("B").skein().lot()).isEqualTo("K1 + K2");
    assertThat(held("C").skein().lot()).isEqualTo("K2");
    ChainedEntry undone = reverse(entry);
    assertThat(held("B").skein().lot()).isEqualTo("K1");
    reverse(undone);
    assertThat(held("B").skein().lot()).isEqualTo("K1 + K2");
  }

  @Test
  void aLotStaysMixedAsLongAsAnyWindingThatMixedItStands() throws Exception {
    rewind.join(UUID.randomUUID(), "C", metres(100), "B", true, "");
    ChainedEntry second = rewind.join(UUID.randomUUID(), "C", metres(100), "B", true, "").orElseThrow();
    reverse(second);
    assertThat(held("B").skein().lot()).isEqualTo("K1 + K2");
  }

  @Test
  void whatIsReservedStaysWhereItIs() throws Exception {
    new Plans(studio).keep("Band", PLAN);
    new Reserve(studio).plan(UUID.randomUUID(), "Band", false);
    Length reserved = held("D").allReserved();
    assertThat(reserved.isPositive()).isTrue();
    Length free = held("D").free();
    assertThatThrownBy(() -> off("D", metres(100), "D2")).isInstanceOf(NotDone.class).hasMessageContaining("are reserved for plans and stay on it. Nothing was changed.");
    off("D", ALL, "D2");
    assertThat(held("D2").free()).isEqualTo(free);
    assertThat(held("D").allReserved()).isEqualTo(reserved);
    assertThat(held("D2").skein().measurement().words()).isEmpty();
  }

  @Test
  void theSameIsDoneOnce() throws Exception {
    UUID id = UUID.randomUUID();
    assertThat(rewind.off(id, "A", metres(300), new NewPackage("A2"), "")).isPresent();
    assertThat(rewind.off(id, "A", metres(300), new NewPackage("A2"), "")).isEmpty();
    assertThat(held("A").free()).isEqualTo(Length.metres(700));
  }

  @Test
  void aWindingThatIsTakenBackLeavesNothingOfTheNewSkeinAndItsCodeCanBeWoundOntoAgain() throws Exception {
    ChainedEntry entry = off("A", metres(300), "A2").orElseThrow();
    reverse(entry);
    assertThat(new Shelf(studio).skeins()).extracting(held -> held.skein().code()).containsExactly("A", "B", "C", "D", "W");
    assertThat(worth("A")).isEqualTo("10.00");
    off("A", metres(280), "A2");
    assertThat(held("A2").free()).isEqualTo(Length.metres(280));
    assertThat(worth("A2")).isEqualTo("2.80");
  }

  @Test
  void aWindingWhoseYarnHasGoneElsewhereIsNotTakenBack() throws Exception {
    ChainedEntry entry = off("A", metres(300), "A2").orElseThrow();
    new PartWith(studio).skein(UUID.randomUUID(), "A2", Length.metres(1), "");
    assertThatThrownBy(() -> reverse(entry)).isInstanceOf(NotDone.class).hasMessageContaining("A2");
    assertThat(held("A2").free()).isEqualTo(Length.metres(299));
  }

  @Test
  void windingBackLeavesAllAsItWasButForHowSurelyItIsKnown() throws Exception {
    off("A", metres(300), "A2");
    rewind.join(UUID.randomUUID(), "A2", ALL, "A", false, "");
    assertThat(held("A").free()).isEqualTo(Length.metres(1000));
    assertThat(held("A2").isUsedUp()).isTrue();
    assertThat(worth("A")).isEqualTo("10.00");
  }

  @Test
  void whatCannotBeWoundIsRefusedAndNothingChanges() throws Exception {
    refused("There is no skein Z", "Z", metres(1), "Z2");
    refused("only 1000 m are free, not the 1001 m to be wound off", "A", metres(1001), "A2");
    refused("The length must be over zero", "A", metres(0), "A2");
    refused("There is a skein B already, Skerry 16/2 Woad", "A", metres(1), "B");
    refused("cannot be wound onto itself", "A", metres(1), "A");
    joinRefused("D is Skerry 16/2 Rust and B is Skerry 16/2 Woad", "D", "B");
    joinRefused("There is no skein Z", "A", "Z");
    off("A", ALL, "A2");
    joinRefused("There is nothing on A to join onto", "B", "A");
    refused("Nothing of A is free", "A", ALL, "A3");
    assertThat(new Shelf(studio).skein("A3")).isEmpty();
  }

  @Test
  void yarnOnOrderIsNotWound() throws Exception {
    new Expect(studio).file("order.csv", "code,yarn,colour,grist,form,length,lot\nO,Skerry 16/2,Woad,16/2 cotton,cone,800 m,K1\n", LocalDate.of(2026, 4, 1));
    refused("O is still on order", "O", ALL, "O2");
    joinRefused("O is still on order", "A", "O");
  }

  @Test
  void theNewCodeIsTakenAndHasNoCostOfItsOwn() throws Exception {
    ChainedEntry entry = off("A", metres(300), "A2").orElseThrow();
    assertThatThrownBy(() -> new Receive(studio).file("more.csv", "code,yarn,colour,length\nA2,Skerry 16/2,Woad,100 m\n")).hasMessageContaining("which another skein of the ledger has");
    SkeinFacts cost = new SkeinFacts(Optional.empty(), Optional.empty(), Optional.of(Money.parse("EUR 5")), Optional.empty());
    assertThatThrownBy(() -> new Describe(studio).skeins(List.of("A2"), cost)).isInstanceOf(NotDone.class).hasMessageContaining("none, since it was wound off another skein");
    reverse(entry);
    assertThatThrownBy(() -> new Receive(studio).file("more.csv", "code,yarn,colour,length\nA2,Skerry 16/2,Woad,100 m\n")).hasMessageContaining("which another skein of the ledger has");
  }

  @Test
  void afterAnyHistoryNeitherAMetreNorACentIsLost() throws Exception {
    Random random = new Random(20260314);
    Length all = shelf();
    int done = 0;
    for (int step = 0; step < 80; step++) {
      done += tried(random, step) ? 1 : 0;
      assertThat(shelf()).isEqualTo(all);
      assertThat(total()).isEqualTo("26.00");
    }
    assertThat(done).isGreaterThan(30);
  }

  private boolean tried(Random random, int step) {
    List<ShelfSkein> skeins = new Shelf(studio).skeins().stream().filter(held -> !held.skein().code().startsWith("W")).toList();
    String from = skeins.get(random.nextInt(skeins.size())).skein().code();
    String onto = skeins.get(random.nextInt(skeins.size())).skein().code();
    WoundOff much = random.nextInt(3) == 0 ? ALL : new WoundOff.Metres(new Length(1 + random.nextInt(4_000_000)));
    try {
      switch (random.nextInt(4)) {
        case 0, 1 -> off(from, much, "N" + step);
        case 2 -> rewind.join(UUID.randomUUID(), from, much, onto, true, "");
        default -> new Reverse(studio).numbered(UUID.randomUUID(), 6 + random.nextInt(step + 1), "a slip");
      }
      return true;
    } catch (NotDone refused) {
      return false;
    }
  }

  private static final String PLAN = """
      {"format": "hankbook-plan/1", "name": "Band", "warp": {"sett": "10/cm", "ends": 20, "length": "2 m", "order": [{"yarn": "Skerry 16/2", "colour": "Rust", "share": 1}]}}
      """;

  private Optional<ChainedEntry> off(String from, WoundOff much, String onto) throws NotDone {
    return rewind.off(UUID.randomUUID(), from, much, new NewPackage(onto), "");
  }

  private ChainedEntry reverse(ChainedEntry entry) throws NotDone {
    return new Reverse(studio).entry(UUID.randomUUID(), entry.entry().id(), "a slip").orElseThrow();
  }

  private void refused(String why, String from, WoundOff much, String onto) {
    assertThatThrownBy(() -> off(from, much, onto)).isInstanceOf(NotDone.class).hasMessageContaining(why);
  }

  private void joinRefused(String why, String from, String onto) {
    assertThatThrownBy(() -> rewind.join(UUID.randomUUID(), from, ALL, onto, true, "")).isInstanceOf(NotDone.class).hasMessageContaining(why);
  }

  private static WoundOff metres(long metres) {
    return new WoundOff.Metres(Length.metres(metres));
  }

  private ShelfSkein held(String code) {
    return new Shelf(studio).skein(code).orElseThrow();
  }

  private double uncertainty(String code) {
    return held(code).uncertainty(Doubts.DEFAULT).metres().doubleValue();
  }

  private ValuedStock stock() {
    return new Value(studio).stock(Optional.empty(), Optional.empty()).getFirst();
  }

  private String worth(String code) {
    return stock().value().inTheHouse().entrySet().stream()
        .filter(held -> held.getKey().skein().equals(code))
        .map(held -> held.getValue().cost())
        .reduce(Money::plus)
        .orElseThrow()
        .getAmount()
        .toString();
  }

  private String total() {
    return stock().total().worth().cost().getAmount().toString();
  }

  private Length shelf() {
    return new Shelf(studio).skeins().stream().map(ShelfSkein::free).reduce(Length.ZERO, Length::plus);
  }
}
