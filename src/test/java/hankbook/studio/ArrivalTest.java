package hankbook.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.allot.Verdict;
import hankbook.allot.Warning;
import hankbook.exchange.BadInput;
import hankbook.exchange.StockFile;
import hankbook.ledger.EntryKind;
import hankbook.measure.Length;
import hankbook.store.Vendor;
import hankbook.yarn.Measurement;
import hankbook.yarn.Skein;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** What is said of yarn when it comes and afterwards, on a ledger in either database. */
@ParameterizedClass
@EnumSource
class ArrivalTest {
  private static final Clock NOON = Clock.fixed(Instant.parse("2026-03-14T12:00:00Z"), ZoneOffset.UTC);
  private static final LocalDate TODAY = LocalDate.of(2026, 3, 14);
  private static final LocalDate APRIL = LocalDate.of(2026, 4, 1);
  private static final String STOCK = "code,yarn,colour,length,lot\nC1,Skerry,Chalk,100 m,A\n";
  private static final String ORDER = "code,yarn,colour,length,cost\nC2,Skerry,Chalk,80 m,9 EUR\nC3,Skerry,Chalk,40 m,\n";

  /** 40 ends of 4 m, of one dye lot or of any. */
  private static final String PLAN =
      "{\"format\": \"hankbook-plan/1\", \"name\": \"Scarf\", \"pieces\": [], \"weft\": [],"
          + " \"warp\": {\"sett\": \"10/cm\", \"ends\": 40, \"length\": \"4 m\", \"order\": [{\"yarn\": \"Skerry\", \"colour\": \"Chalk\", \"ends\": 40, \"oneLot\": %s}]}}";

  private final Vendor vendor;

  @TempDir private Path folder;
  private Studio studio;
  private Expect expect;

  ArrivalTest(Vendor vendor) {
    this.vendor = vendor;
  }

  @BeforeEach
  void open() throws Exception {
    studio = Studio.open(vendor.ledger(folder), "Ida", NOON);
    expect = new Expect(studio);
    new Receive(studio).file("stock.csv", STOCK);
    expect.file("order.csv", ORDER, APRIL);
  }

  @AfterEach
  void auditAndClose() {
    assertThat(new AuditLedger(studio).audit().audit().findings()).isEmpty();
    studio.close();
  }

  @Test
  void whatArrivesIsDescribedAndItsEntryBearsTheDayItCame() throws Exception {
    LocalDate tenth = LocalDate.of(2026, 3, 10);
    SkeinFacts facts = new SkeinFacts(Optional.of(" B7 "), Optional.of("blue chest"), Optional.of(StockFile.money("24 EUR")), Optional.of(tenth));
    assertThat(expect.arrived(UUID.randomUUID(), List.of("C2", "C3"), facts)).hasValueSatisfying(entered -> assertThat(entered.entry().date()).isEqualTo(tenth));
    for (String code : List.of("C2", "C3")) {
      assertThat(skein(code).lot()).isEqualTo("B7");
      assertThat(skein(code).location()).isEqualTo("blue chest");
      assertThat(skein(code).cost()).contains(StockFile.money("24 EUR"));
      assertThat(skein(code).received()).contains(tenth);
    }
    assertThat(new Shelf(studio).skeins()).as("every reader is told the same").filteredOn(held -> held.skein().lot().equals("B7")).hasSize(2);
  }

  @Test
  void whatIsLeftOpenStaysAsItWasOrderedAndItCameToday() throws Exception {
    expect.arrived(UUID.randomUUID(), List.of("C2"));
    assertThat(skein("C2").cost()).contains(StockFile.money("9 EUR"));
    assertThat(skein("C2").lot()).isEmpty();
    assertThat(skein("C2").received()).contains(TODAY);
    assertThat(skein("C3").received()).isEmpty();
  }

  @Test
  void yarnCannotHaveComeOnADayToComeNorTwice() throws Exception {
    SkeinFacts tomorrow = new SkeinFacts(Optional.of("B"), Optional.empty(), Optional.empty(), Optional.of(TODAY.plusDays(1)));
    assertThatThrownBy(() -> expect.arrived(UUID.randomUUID(), List.of("C2"), tomorrow))
        .isInstanceOf(NotDone.class)
        .hasMessage("Yarn cannot have come on 2026-03-15, which is yet to come; give today or a day that is past.");
    expect.arrived(UUID.randomUUID(), List.of("C2"), lot("B"));
    assertThatThrownBy(() -> expect.arrived(UUID.randomUUID(), List.of("C3", "C2"), lot("D"))).hasMessage("C2 is not on order: it has come; nothing was changed.");
    assertThat(skein("C2").lot()).isEqualTo("B");
    assertThat(skein("C3").lot()).as("all or none").isEmpty();
  }

  @Test
  void theSameActAgainSaysNothingMore() throws Exception {
    UUID id = UUID.randomUUID();
    expect.arrived(id, List.of("C2"), lot("B"));
    assertThat(expect.arrived(id, List.of("C2"), lot("D"))).isEmpty();
    assertThat(skein("C2").lot()).isEqualTo("B");
  }

  @Test
  void aCheckSeesTheLotThatCame() throws Exception {
    new Plans(studio).keep("Scarf", PLAN.formatted("false"));
    assertThat(warnings(new CheckPlan(studio).named("Scarf", ExpectedBy.ANY_DAY))).as("a lot that is not known").isNotEmpty();
    expect.arrived(UUID.randomUUID(), List.of("C2"), lot("A"));
    assertThat(warnings(new CheckPlan(studio).named("Scarf"))).doesNotContain(Warning.Code.MIXED_LOTS);
    new Describe(studio).skeins(List.of("C2"), lot("B"));
    assertThat(warnings(new CheckPlan(studio).named("Scarf"))).contains(Warning.Code.MIXED_LOTS);
  }

  @Test
  void whatMustComeOfOneLotIsCoveredByWhatCameOfIt() throws Exception {
    new Plans(studio).keep("Scarf", PLAN.formatted("true"));
    expect.arrived(UUID.randomUUID(), List.of("C2"), lot("B"));
    assertThat(verdict()).isEqualTo(Verdict.SHORT);
    new Describe(studio).skeins(List.of("C2"), lot("A"));
    assertThat(verdict()).isEqualTo(Verdict.COVERED);
  }

  @Test
  void anArrivalThatIsTakenBackLeavesTheYarnOnOrderAsItWasDescribed() throws Exception {
    UUID arrival = expect.arrived(UUID.randomUUID(), List.of("C2"), lot("B")).orElseThrow().entry().id();
    new Reverse(studio).entry(UUID.randomUUID(), arrival, "another parcel");
    assertThat(expect.all()).extracting(coming -> coming.skein().lot()).containsExactly("B", "");
    assertThat(expect.file("order.csv", ORDER, APRIL)).as("the order still is what it was").isEqualTo(new Expect.Ordered(0, 2));
    expect.arrived(UUID.randomUUID(), List.of("C2"), lot("D"));
    assertThat(skein("C2").lot()).isEqualTo("D");
  }

  @Test
  void aFileSaysOfItsSkeinsWhatTheOrderCouldNot() throws Exception {
    String parcel = "code,yarn,colour,hex,fibre,length,lot,location,received\nC2,Skerry,Chalk,#eeeeee,wool,,B,shelf 2,2026-03-12\nC3,Skerry,Chalk,,,40 m,B,,\n";
    assertThat(new Receive(studio).file("parcel.csv", parcel)).isEqualTo(new Receive.Delivery(2, 0));
    Skein came = skein("C2");
    assertThat(List.of(came.lot(), came.location(), came.hex(), came.fibre())).containsExactly("B", "shelf 2", "#eeeeee", "wool");
    assertThat(came.received()).contains(LocalDate.of(2026, 3, 12));
    assertThat(came.cost()).as("as it was ordered").contains(StockFile.money("9 EUR"));
    assertThat(new Shelf(studio).skein("C2").orElseThrow().free()).isEqualTo(Length.metres(80));
    assertThat(new Receive(studio).file("order.csv", ORDER)).as("read again").isEqualTo(new Receive.Delivery(0, 2));
    assertThat(new Receive(studio).file("parcel.csv", parcel)).as("read again").isEqualTo(new Receive.Delivery(0, 2));
    assertThat(skein("C2").lot()).isEqualTo("B");
    assertThatThrownBy(() -> new Receive(studio).file("parcel.csv", parcel.replace(",B,", ",D,"))).as("it has come").isInstanceOf(BadInput.class);
  }

  @Test
  void aFileWhoseYarnIsAnotherIsRefusedByFieldAndNothingComes() throws Exception {
    expect.file("cones.csv", "code,yarn,colour,length,grist,form\nC4,Skerry,Chalk,40 m,Nm 8,cone\nC5,Skerry,Chalk,40 m,Nm 8,cone\n", APRIL);
    String parcel =
        """
        code,yarn,colour,length,grist,form,lot
        C2,Skerry,Slate,80 m,,,B
        C3,Fjara,Chalk,40 m,,,B
        C4,Skerry,Chalk,40 m,Nm 9,cone,B
        C5,Skerry,Chalk,40 m,Nm 8,ball,B
        """;
    assertThatThrownBy(() -> new Receive(studio).file("parcel.csv", parcel))
        .isInstanceOfSatisfying(BadInput.class, bad -> assertThat(bad.faults()).containsExactly(
            "parcel.csv, row 2, colour: found 'Slate', wanted 'Chalk', which C2 has in the ledger",
            "parcel.csv, row 3, yarn: found 'Fjara', wanted 'Skerry', which C3 has in the ledger",
            "parcel.csv, row 4, grist: found 'Nm 9', wanted 'Nm 8', which C4 has in the ledger",
            "parcel.csv, row 5, form: found 'ball', wanted 'cone', which C5 has in the ledger"));
    assertThat(expect.all()).hasSize(4);
    Skein slate = StockFile.read("one.csv", "code,yarn,colour\nC2,Skerry,Slate\n").getFirst();
    assertThatThrownBy(() -> new Receive(studio).skein(UUID.randomUUID(), slate))
        .isInstanceOf(NotDone.class)
        .hasMessage("C2, colour: found 'Slate', wanted 'Chalk', which C2 has in the ledger; nothing was changed.");
  }

  @Test
  void whatCameIsPutRightToHowItWasMeasured() throws Exception {
    String parcel = "code,yarn,colour,length,turns,reel,grist,gross\nC2,Skerry,Chalk,,41,2 m,,\nC3,Skerry,Chalk,40 m,,,Nm 8,4.5 g\n";
    assertThat(new Receive(studio).file("parcel.csv", parcel)).isEqualTo(new Receive.Delivery(2, 0));
    assertThat(new Receive(studio).file("parcel.csv", parcel)).as("read again").isEqualTo(new Receive.Delivery(0, 2));
    assertThat(new Shelf(studio).skein("C2").orElseThrow().free()).as("41 turns of 2 m").isEqualTo(Length.metres(82));
    assertThat(new Shelf(studio).skein("C2").orElseThrow().skein().measurement()).isInstanceOf(Measurement.ByTurns.class);
    assertThat(new Shelf(studio).skein("C3").orElseThrow().free()).as("4.5 g at 8 m a gram").isEqualTo(Length.metres(36));
    assertThat(new Shelf(studio).skein("C3").orElseThrow().skein().measurement()).isInstanceOf(Measurement.ByWeight.class);
    assertThat(new Journal(studio).newestFirst()).extracting(entry -> entry.chained().entry().kind())
        .startsWith(EntryKind.RECOUNT, EntryKind.RECEIVE, EntryKind.RECOUNT, EntryKind.RECEIVE);
  }

  @Test
  void whatLiesOnTheShelfIsMendedAndTheSameOnceMoreIsNothingNew() throws Exception {
    Describe describe = new Describe(studio);
    assertThat(describe.skeins(List.of("C1", "C2"), lot("D"))).isEqualTo(2);
    assertThat(describe.skeins(List.of("C1", "C2"), lot("D"))).isZero();
    assertThat(describe.skeins(List.of("C1"), lot(" "))).as("it has none").isEqualTo(1);
    assertThat(skein("C1").lot()).isEmpty();
    assertThat(describe.skeins(List.of("C1"), lot("A"))).as("as it was written down").isEqualTo(1);
    assertThat(skein("C1").lot()).isEqualTo("A");
    assertThat(new Receive(studio).file("stock.csv", STOCK)).isEqualTo(new Receive.Delivery(0, 1));
    assertThatThrownBy(() -> describe.skeins(List.of("C1", "C9"), lot("E"))).isInstanceOf(NotDone.class).hasMessage("There is no skein C9 in the ledger; nothing was changed.");
    assertThat(skein("C1").lot()).as("all or none").isEqualTo("A");
    SkeinFacts today = SkeinFacts.NONE.cameOn(TODAY);
    assertThatThrownBy(() -> describe.skeins(List.of("C3"), today)).hasMessage("C3 is still on order and has not come on any day; say that it arrived.");
    assertThat(describe.skeins(List.of("C1"), today)).isEqualTo(1);
  }

  @Test
  void whatWasReceivedByASlipComesAgainAsItReallyIs() throws Exception {
    UUID received = new Journal(studio).newestFirst().getLast().chained().entry().id();
    new Reverse(studio).entry(UUID.randomUUID(), received, "a slip");
    assertThat(new Receive(studio).file("stock.csv", STOCK.replace(",A", ",B"))).isEqualTo(new Receive.Delivery(1, 0));
    assertThat(skein("C1").lot()).isEqualTo("B");
    assertThat(new Shelf(studio).skein("C1").orElseThrow().free()).isEqualTo(Length.metres(100));
  }

  private static SkeinFacts lot(String lot) {
    return new SkeinFacts(Optional.of(lot), Optional.empty(), Optional.empty(), Optional.empty());
  }

  private Skein skein(String code) {
    return studio.read(session -> session.skeins().find(code)).orElseThrow();
  }

  private Verdict verdict() throws Exception {
    return new CheckPlan(studio).named("Scarf").check().covers().get(0).verdict();
  }

  private static List<Warning.Code> warnings(Answer answer) {
    return answer.check().warnings().stream().map(Warning::code).toList();
  }
}
