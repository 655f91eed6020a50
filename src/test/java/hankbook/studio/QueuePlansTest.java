package hankbook.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.allot.Verdict;
import hankbook.measure.Length;
import hankbook.store.Vendor;
import hankbook.studio.QueuedPlan.Claim;
import hankbook.yarn.YarnColour;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** Plans that want the same yarn, on a ledger in either database. */
@ParameterizedClass
@EnumSource
class QueuePlansTest {
  private static final Clock NOON = Clock.fixed(Instant.parse("2026-03-14T12:00:00Z"), ZoneOffset.UTC);
  private static final YarnColour CHALK = new YarnColour("Skerry", "Chalk");

  private final Vendor vendor;

  @TempDir private Path folder;
  private Studio studio;

  QueuePlansTest(Vendor vendor) {
    this.vendor = vendor;
  }

  @BeforeEach
  void open() throws Exception {
    studio = Studio.open(vendor.ledger(folder), "Ida", NOON);
    new Receive(studio).file("stock.csv", "code,yarn,colour,length\nC1,Skerry,Chalk,107 m\nC2,Skerry,Chalk,53 m\n");
  }

  @AfterEach
  void auditAndClose() {
    assertThat(new AuditLedger(studio).audit().audit().findings()).isEmpty();
    studio.close();
  }

  /** Worked by hand: 107 m and 53 m hold 26 and 13 ends of 4 m. The first plan takes 20 ends, the second finds 19 of its 25, though 80 m are left in all. */
  @Test
  void earlierPlansTakeTheirsFirstInWholeEnds() throws Exception {
    keep("Apron", 20);
    keep("Band", 25);
    PlanQueue queue = queue();
    assertThat(queue.plans()).extracting(QueuedPlan::name).containsExactly("Apron", "Band");
    assertThat(claim(queue, 0)).isEqualTo(new Claim(CHALK, Length.metres(80), Length.metres(160), Length.ZERO, Verdict.COVERED));
    assertThat(claim(queue, 1)).isEqualTo(new Claim(CHALK, Length.metres(100), Length.metres(80), Length.metres(24), Verdict.SHORT));
    assertThat(queue.totals()).containsExactly(new PlanQueue.YarnTotal(CHALK, Length.metres(180), Length.metres(160), Length.metres(24)));
    assertThat(queue.isShort()).isTrue();
  }

  @Test
  void anotherOrderIsTriedAndNotKeptOrMovedAndKept() throws Exception {
    keep("Apron", 20);
    keep("Band", 25);
    keep("Cape", 5);
    QueuePlans plans = new QueuePlans(studio);
    QueuePlans.Compared tried = plans.tried(new PlanMove("Band", "Apron", true), ExpectedBy.NOTHING);
    assertThat(tried.after().plans()).extracting(QueuedPlan::name).containsExactly("Band", "Apron", "Cape");
    assertThat(tried.changes()).extracting(PlanQueue.Change::plan).containsExactly("Apron", "Band");
    assertThat(tried.changes().get(1).after().lack()).isEqualTo(Length.ZERO);
    assertThat(queue().plans()).extracting(QueuedPlan::name).containsExactly("Apron", "Band", "Cape");
    plans.moved(new PlanMove("Apron", "Band", false), ExpectedBy.NOTHING);
    assertThat(queue().plans()).extracting(QueuedPlan::name).containsExactly("Band", "Apron", "Cape");
    keep("Anorak", 1);
    assertThat(queue().plans()).as("a plan that was never moved comes last").extracting(QueuedPlan::name).containsExactly("Band", "Apron", "Cape", "Anorak");
    new Plans(studio).putAway("Apron");
    assertThat(queue().plans()).extracting(QueuedPlan::name).containsExactly("Band", "Cape", "Anorak");
  }

  @Test
  void aPlanThatIsNotThereIsNotMoved() throws Exception {
    keep("Apron", 20);
    QueuePlans plans = new QueuePlans(studio);
    assertThatThrownBy(() -> plans.moved(new PlanMove("Band", "Apron", true), ExpectedBy.NOTHING))
        .isInstanceOf(NotDone.class)
        .hasMessage("There is no plan Band in the ledger; the order of the plans is as it was.");
    assertThatThrownBy(() -> plans.tried(new PlanMove("Apron", "Apron", true), ExpectedBy.NOTHING))
        .hasMessage("Apron cannot be moved beside itself; the order of the plans is as it was.");
  }

  @Test
  void aPlanThatIsOnTheLoomTakesNoMoreAndWhatIsReservedForALaterOneIsNotTaken() throws Exception {
    keep("Apron", 20);
    keep("Band", 12);
    keep("Cape", 10);
    new Reserve(studio).plan(UUID.randomUUID(), "Apron", false);
    new Draw(studio).plan(UUID.randomUUID(), "Apron");
    new Reserve(studio).plan(UUID.randomUUID(), "Cape", false);
    PlanQueue queue = queue();
    assertThat(queue.plans().get(0).stands()).isEqualTo(QueuedPlan.Stands.ON_THE_LOOM);
    assertThat(queue.plans().get(0).claims()).isEmpty();
    assertThat(claim(queue, 1).free()).isEqualTo(Length.metres(40));
    assertThat(claim(queue, 1).verdict()).isEqualTo(Verdict.SHORT);
    assertThat(claim(queue, 2).verdict()).isNotEqualTo(Verdict.SHORT);
    assertThat(queue.totals().get(0).free()).as("what Apron has on its loom is not for the others").isEqualTo(Length.metres(80));
  }

  /** Worked by hand: 107 m and 53 m hold 39 ends of 4 m, so of 45 ends 6 lack, 24 m. */
  @Test
  void aPlanThatWasDrawnShortLacksOnTheLoomWhatNoSkeinGaveIt() throws Exception {
    keep("Apron", 45);
    new Reserve(studio).plan(UUID.randomUUID(), "Apron", true);
    new Draw(studio).plan(UUID.randomUUID(), "Apron");
    PlanQueue queue = queue();
    assertThat(queue.plans().get(0).stands()).isEqualTo(QueuedPlan.Stands.ON_THE_LOOM);
    assertThat(claim(queue, 0)).isEqualTo(new Claim(CHALK, Length.metres(180), Length.metres(160), Length.metres(24), Verdict.SHORT));
    assertThat(queue.isShort()).isTrue();
    assertThat(queue.totals()).containsExactly(new PlanQueue.YarnTotal(CHALK, Length.metres(180), Length.metres(160), Length.metres(24)));
  }

  /** Worked by hand: 26 ends of 4 m are the whole of C1, so 6 more come from C2 and leave 29 m for the next, which holds 7 of its 8 ends. */
  @Test
  void aPlanThatBecameLargerOnTheLoomTakesWhatItLacksBeforeThoseAfterIt() throws Exception {
    keep("Apron", 26);
    new Reserve(studio).plan(UUID.randomUUID(), "Apron", false);
    new Draw(studio).plan(UUID.randomUUID(), "Apron");
    keep("Apron", 32);
    keep("Band", 8);
    PlanQueue queue = queue();
    assertThat(queue.plans().get(0).stands()).isEqualTo(QueuedPlan.Stands.ON_THE_LOOM);
    assertThat(claim(queue, 0).verdict()).isNotEqualTo(Verdict.SHORT);
    assertThat(claim(queue, 0).lack()).isEqualTo(Length.ZERO);
    assertThat(claim(queue, 1).lack()).isEqualTo(Length.metres(4));
    new Reserve(studio).plan(UUID.randomUUID(), "Apron", false);
    new Draw(studio).plan(UUID.randomUUID(), "Apron");
    assertThat(queue().plans().get(0).claims()).as("now it has all").isEmpty();
  }

  @Test
  void aPlanWhoseRestWasPutBackFromTheLoomDoesNotAskForItAgain() throws Exception {
    keep("Apron", 26);
    new Reserve(studio).plan(UUID.randomUUID(), "Apron", false);
    new Draw(studio).plan(UUID.randomUUID(), "Apron");
    new Return(studio).skein(UUID.randomUUID(), "Apron", "C1", Length.metres(3));
    assertThat(queue().plans().get(0).stands()).isEqualTo(QueuedPlan.Stands.ON_THE_LOOM);
    assertThat(queue().plans().get(0).claims()).isEmpty();
  }

  @Test
  void yarnOnOrderCountsWhereItIsAskedFor() throws Exception {
    keep("Apron", 20);
    keep("Band", 25);
    new Expect(studio).file("order.csv", "code,yarn,colour,length\nC3,Skerry,Chalk,200 m\n", LocalDate.of(2026, 4, 1));
    assertThat(queue().isShort()).isTrue();
    PlanQueue counted = new QueuePlans(studio).all(new ExpectedBy(LocalDate.of(2026, 4, 1)));
    assertThat(counted.isShort()).isFalse();
    assertThat(counted.counted()).hasSize(1);
    assertThat(new QueuePlans(studio).all(new ExpectedBy(LocalDate.of(2026, 3, 31))).isShort()).isTrue();
  }

  @Test
  void aPlanThatCannotBeReckonedTakesNothingAndSaysWhy() throws Exception {
    new Plans(studio).keep("Apron", "{}");
    keep("Band", 20);
    PlanQueue queue = queue();
    assertThat(queue.plans().get(0).stands()).isEqualTo(QueuedPlan.Stands.UNFINISHED);
    assertThat(queue.plans().get(0).unfinished()).startsWith("Apron");
    assertThat(claim(queue, 1).free()).isEqualTo(Length.metres(160));
  }

  /** What the queue foretells is what comes of reserving in its order. */
  @Test
  void theQueueForetellsWhatReservingInItsOrderGives() throws Exception {
    Random random = new Random(7);
    StringBuilder stock = new StringBuilder("code,yarn,colour,length,lot\n");
    for (int i = 0; i < 6; i++) {
      stock.append("D").append(i).append(",Skerry,Chalk,").append(20 + random.nextInt(90)).append(" m,L").append(random.nextInt(3)).append('\n');
    }
    new Receive(studio).file("more.csv", stock.toString());
    List<String> names = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      names.add("Plan " + i);
      keep(names.get(i), 10 + random.nextInt(30));
    }
    new Reserve(studio).plan(UUID.randomUUID(), "Plan 3", true);
    keep("Plan 3", 9);
    PlanQueue queue = queue();
    for (int i = 0; i < names.size(); i++) {
      Answer answer = new CheckPlan(studio).named(names.get(i));
      Claim claim = claim(queue, i);
      assertThat(answer.check().covers().get(0).free()).as(names.get(i)).isEqualTo(claim.free());
      assertThat(answer.check().covers().get(0).verdict()).as(names.get(i)).isEqualTo(claim.verdict());
      reserveWhatThereIs(names.get(i), claim.lack().equals(claim.need()));
      Map<String, Length> foretold = new HashMap<>();
      queue.plans().get(i).skeins().forEach(given -> foretold.put(given.skein(), given.length()));
      assertThat(reserved(names.get(i))).as(names.get(i)).isEqualTo(foretold);
    }
  }

  private void reserveWhatThereIs(String plan, boolean nothing) throws Exception {
    if (!nothing) {
      new Reserve(studio).plan(UUID.randomUUID(), plan, true);
    }
  }

  private Map<String, Length> reserved(String plan) {
    Map<String, Length> reserved = new HashMap<>();
    for (ShelfSkein held : new Shelf(studio).everySkein()) {
      Length length = held.reserved().getOrDefault(plan, Length.ZERO);
      if (length.isPositive()) {
        reserved.put(held.skein().code(), length);
      }
    }
    return reserved;
  }

  private PlanQueue queue() {
    return new QueuePlans(studio).all(ExpectedBy.NOTHING);
  }

  private static Claim claim(PlanQueue queue, int plan) {
    return queue.plans().get(plan).claims().get(0);
  }

  /** A plan of so many ends of 4 m and no weft. */
  private void keep(String name, int ends) throws NotDone {
    new Plans(studio).keep(
        name,
        ("{\"format\": \"hankbook-plan/1\", \"name\": \"%s\", \"pieces\": [], \"weft\": [],"
                + " \"warp\": {\"sett\": \"10/cm\", \"ends\": %d, \"length\": \"4 m\", \"order\": [{\"yarn\": \"Skerry\", \"colour\": \"Chalk\", \"ends\": %d}]}}")
            .formatted(name, ends, ends));
  }
}
