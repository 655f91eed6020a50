package hankbook.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.allot.Verdict;
import hankbook.exchange.BadInput;
import hankbook.ledger.EntryKind;
import hankbook.measure.Length;
import hankbook.store.Vendor;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** Yarn on order, on a ledger in either database. */
@ParameterizedClass
@EnumSource
class ExpectTest {
  private static final Clock NOON = Clock.fixed(Instant.parse("2026-03-14T12:00:00Z"), ZoneOffset.UTC);
  private static final LocalDate APRIL = LocalDate.of(2026, 4, 1);
  private static final LocalDate MAY = LocalDate.of(2026, 5, 1);
  private static final String STOCK = "code,yarn,colour,length,lot\nC1,Skerry,Chalk,100 m,A\n";
  private static final String ORDER = "code,yarn,colour,length\nC2,Skerry,Chalk,60 m\nC3,Skerry,Chalk,40 m\n";

  /** 40 ends of 4 m. */
  private static final String PLAN =
      "{\"format\": \"hankbook-plan/1\", \"name\": \"Scarf\", \"pieces\": [], \"weft\": [],"
          + " \"warp\": {\"sett\": \"10/cm\", \"ends\": 40, \"length\": \"4 m\", \"order\": [{\"yarn\": \"Skerry\", \"colour\": \"Chalk\", \"ends\": 40}]}}";

  private final Vendor vendor;

  @TempDir private Path folder;
  private Studio studio;
  private Expect expect;

  ExpectTest(Vendor vendor) {
    this.vendor = vendor;
  }

  @BeforeEach
  void open() throws Exception {
    studio = Studio.open(vendor.ledger(folder), "Ida", NOON);
    expect = new Expect(studio);
    new Receive(studio).file("stock.csv", STOCK);
    new Plans(studio).keep("Scarf", PLAN);
  }

  @AfterEach
  void auditAndClose() {
    assertThat(new AuditLedger(studio).audit().audit().findings()).isEmpty();
    studio.close();
  }

  @Test
  void yarnOnOrderIsNotOnTheShelfAndCountsOnlyWhereItIsAskedFor() throws Exception {
    assertThat(expect.file("order.csv", ORDER, APRIL)).isEqualTo(new Expect.Ordered(2, 0));
    assertThat(new Shelf(studio).skeins()).extracting(held -> held.skein().code()).containsExactly("C1");
    CheckPlan check = new CheckPlan(studio);
    assertThat(verdict(check.named("Scarf"))).isEqualTo(Verdict.SHORT);
    assertThat(verdict(check.named("Scarf", new ExpectedBy(APRIL.minusDays(1))))).isEqualTo(Verdict.SHORT);
    Answer counted = check.named("Scarf", new ExpectedBy(APRIL));
    assertThat(verdict(counted)).isEqualTo(Verdict.COVERED);
    assertThat(counted.dues()).containsEntry("C2", APRIL).containsEntry("C3", APRIL);
    assertThat(verdict(check.named("Scarf", ExpectedBy.ANY_DAY))).isEqualTo(Verdict.COVERED);
    assertThatThrownBy(() -> new Reserve(studio).plan(UUID.randomUUID(), "Scarf", false)).isInstanceOf(NotDone.class).hasMessageContaining("it is short");
  }

  @Test
  void whatArrivesIsOnTheShelfAndArrivesOnce() throws Exception {
    expect.file("order.csv", ORDER, APRIL);
    UUID id = UUID.randomUUID();
    assertThat(expect.arrived(id, List.of("C2", "C2"))).hasValueSatisfying(entered -> {
      assertThat(entered.entry().kind()).isEqualTo(EntryKind.RECEIVE);
      assertThat(entered.entry().transfers()).hasSize(1);
    });
    assertThat(expect.arrived(id, List.of("C2"))).as("the same act again").isEmpty();
    assertThat(new Shelf(studio).skein("C2")).hasValueSatisfying(held -> assertThat(held.free()).isEqualTo(Length.metres(60)));
    assertThat(expect.all()).extracting(coming -> coming.skein().code()).containsExactly("C3");
    assertThatThrownBy(() -> expect.arrived(UUID.randomUUID(), List.of("C3", "C2"))).isInstanceOf(NotDone.class).hasMessage("C2 is not on order: it has come; nothing was changed.");
    assertThat(expect.all()).as("all or none").extracting(coming -> coming.skein().code()).containsExactly("C3");
    assertThatThrownBy(() -> expect.arrived(UUID.randomUUID(), List.of("C9"))).hasMessage("There is no skein C9 in the ledger; nothing was changed.");
  }

  @Test
  void anArrivalIsTakenBackAndTheYarnIsOnOrderAgain() throws Exception {
    expect.file("order.csv", ORDER, APRIL);
    UUID arrival = expect.arrived(UUID.randomUUID(), List.of("C2", "C3")).orElseThrow().entry().id();
    new Reverse(studio).entry(UUID.randomUUID(), arrival, "another parcel");
    assertThat(expect.all()).hasSize(2);
    expect.arrived(UUID.randomUUID(), List.of("C3"));
    assertThat(expect.all()).hasSize(1);
  }

  @Test
  void anOrderIsTakenBackUnlessItHasCome() throws Exception {
    expect.file("order.csv", ORDER, APRIL);
    expect.arrived(UUID.randomUUID(), List.of("C2"));
    UUID ordered = ofKind(EntryKind.EXPECT, "C2");
    assertThatThrownBy(() -> new Reverse(studio).entry(UUID.randomUUID(), ordered, "a slip"))
        .isInstanceOf(NotDone.class)
        .hasMessage("Not enough C2: what is on order holds 0 m, and 60 m would be taken (60 m short).");
    new Reverse(studio).entry(UUID.randomUUID(), ofKind(EntryKind.EXPECT, "C3"), "a slip");
    assertThat(expect.all()).isEmpty();
  }

  @Test
  void whatWillNotComeIsGivenUpAndMayBeOrderedAgain() throws Exception {
    expect.file("order.csv", ORDER, APRIL);
    assertThat(expect.cancel(List.of("C2"), "out of stock")).hasSize(1);
    assertThatThrownBy(() -> expect.cancel(List.of("C2"), "again")).hasMessage("C2 is not on order: it never was, or that was taken back; nothing was changed.");
    assertThatThrownBy(() -> expect.cancel(List.of("C3"), " ")).hasMessage("Say why the yarn will not come; the journal keeps the reason.");
    assertThat(expect.file("order.csv", ORDER, MAY)).isEqualTo(new Expect.Ordered(1, 1));
    assertThat(expect.all()).extracting(ExpectedSkein::due).containsExactly(MAY, MAY);
    assertThat(expect.cancel(List.of("C2"), "out of stock again")).hasSize(1);
  }

  @Test
  void theDayIsPutOffAndTheNewestCounts() throws Exception {
    expect.file("order.csv", ORDER, APRIL);
    assertThat(expect.due(List.of("C3"), MAY)).isEqualTo(1);
    assertThat(expect.due(List.of("C3"), MAY)).isZero();
    assertThat(expect.all()).extracting(ExpectedSkein::due).containsExactly(APRIL, MAY);
    assertThat(verdict(new CheckPlan(studio).named("Scarf", new ExpectedBy(APRIL)))).as("C1 and C2 hold the 40 ends").isEqualTo(Verdict.TIGHT);
    assertThatThrownBy(() -> expect.due(List.of("C3"), LocalDate.of(2026, 3, 13))).hasMessage("Yarn cannot be expected on 2026-03-13, which is past; give today or a day to come.");
  }

  @Test
  void aFileThatIsReceivedLetsItsSkeinsArrive() throws Exception {
    expect.file("order.csv", ORDER, APRIL);
    assertThat(new Receive(studio).file("order.csv", ORDER)).isEqualTo(new Receive.Delivery(2, 0));
    assertThat(new Receive(studio).file("order.csv", ORDER)).isEqualTo(new Receive.Delivery(0, 2));
    assertThat(expect.all()).isEmpty();
    assertThat(new Shelf(studio).skein("C3")).hasValueSatisfying(held -> assertThat(held.free()).isEqualTo(Length.metres(40)));
  }

  @Test
  void aFileIsPutOnOrderWholeOrNotAtAll() {
    String order = ORDER + "C1,Skerry,Chalk,5 m\nC4,Skerry,Chalk,\n";
    assertThatThrownBy(() -> expect.file("order.csv", order, APRIL))
        .isInstanceOfSatisfying(BadInput.class, bad -> assertThat(bad.faults()).containsExactly(
            "order.csv, row 4, code: found 'C1', which another skein of the ledger has, wanted a code of its own",
            "order.csv, row 5, length: found nothing, wanted the length that is ordered, or its weight and grist"));
    assertThat(expect.all()).isEmpty();
  }

  @Test
  void whatIsOnOrderIsNotMeasured() throws Exception {
    expect.file("order.csv", ORDER, APRIL);
    assertThatThrownBy(() -> new Recount(studio).skein(UUID.randomUUID(), "C2", Length.metres(10), "weighed"))
        .isInstanceOf(NotDone.class)
        .hasMessage("C2 is still on order; say that it arrived before it is measured.");
  }

  private UUID ofKind(EntryKind kind, String skein) {
    return new Journal(studio).newestFirst().stream()
        .map(entry -> entry.chained().entry())
        .filter(entry -> entry.kind() == kind && entry.transfers().get(0).skein().equals(skein))
        .findFirst().orElseThrow().id();
  }

  private static Verdict verdict(Answer answer) {
    return answer.check().covers().get(0).verdict();
  }
}
