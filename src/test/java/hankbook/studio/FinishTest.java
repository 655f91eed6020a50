package hankbook.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hankbook.exchange.ActualsDraft;
import hankbook.exchange.ActualsFile;
import hankbook.exchange.ActualsPart;
import hankbook.exchange.DraftRow;
import hankbook.ledger.ChainedEntry;
import hankbook.ledger.Entry;
import hankbook.ledger.EntryKind;
import hankbook.measure.Length;
import hankbook.reckon.Actuals;
import hankbook.reckon.YarnUsed;
import hankbook.store.LedgerAddress;
import hankbook.store.Vendor;
import hankbook.yarn.Doubts;
import hankbook.yarn.YarnColour;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Plans finished in either database. A came with 500 m and B with 400 m, both by their labels and of 100 tex (10 m to the gram); the scarf takes 100 ends of
 * 3 m of A's yarn, and 1000 picks of 20 cm of B's.
 */
@ParameterizedClass
@EnumSource
class FinishTest {
  static final String STOCK = """
      code,yarn,colour,fibre,grist,length
      A,Fjara,Ash,wool,tex 100,500 m
      B,Fjara,Moss,wool,tex 100,400 m
      C,Tussock,Rust,wool,tex 100,400 m
      """;
  static final String SCARF = """
      { "format": "hankbook-plan/1", "name": "Scarf",
        "warp": {"sett": "5/cm", "ends": 100, "length": "3 m", "order": [{"yarn": "Fjara", "colour": "Ash", "ends": 100}]},
        "weft": [{"yarn": "Fjara", "colour": "Moss", "picks": "5/cm", "length": "2 m"}] }
      """;
  static final String FOUND = """
      { "format": "hankbook-actuals/1", "leftovers": [{"skein": "A", "left": "190 m"}, {"skein": "B", "gross": "25 g", "tare": "3 g"}],
        "thrums": [{"mass": "3.1 g"}], "samples": [{"yarn": "Fjara", "colour": "Moss", "length": "10 m"}] }
      """;

  private final Vendor vendor;

  @TempDir private Path folder;
  private LedgerAddress address;
  private Studio studio;

  FinishTest(Vendor vendor) {
    this.vendor = vendor;
  }

  /** A second later each time it is asked, so that what was kept first can be told from what was kept later. */
  static Clock ticking(AtomicLong seconds) {
    return new Clock() {
      @Override
      public ZoneId getZone() {
        return ZoneOffset.UTC;
      }

      @Override
      public Clock withZone(ZoneId zone) {
        return this;
      }

      @Override
      public Instant instant() {
        return Instant.parse("2026-03-14T12:00:00Z").plusSeconds(seconds.getAndIncrement());
      }
    };
  }

  @BeforeEach
  void windTheScarf() throws Exception {
    address = vendor.ledger(folder);
    studio = Studio.open(address, "Ida", ticking(new AtomicLong()));
    new Receive(studio).file("stock.csv", STOCK);
    new Plans(studio).add("scarf.json", SCARF, false);
    new Reserve(studio).plan(UUID.randomUUID(), "Scarf", false);
    new Draw(studio).plan(UUID.randomUUID(), "Scarf");
  }

  @AfterEach
  void auditAndClose() {
    assertThat(new AuditLedger(studio).audit().audit().findings()).isEmpty();
    studio.close();
  }

  /**
   * By hand: of A 200 m never left the shelf and 190 m are found, so 310 m were used, of which 31 m are thrums and 279 m cloth. Of B 200 m never left it and
   * 220 m are found, so 20 m come back, 10 m are in samples and 170 m are cloth.
   */
  @Test
  void theBookIsSquaredAsWorkedByHand() throws Exception {
    Finish.Finished finished = new Finish(studio).plan(UUID.randomUUID(), "Scarf", found());
    assertThat(finished.entered()).extracting(chained -> chained.entry().kind())
        .containsExactly(EntryKind.DRAW, EntryKind.RETURN, EntryKind.SAMPLE, EntryKind.WASTE, EntryKind.WOVEN);
    assertThat(balances()).containsExactly(
        "A CLOTH(Scarf) 279 m", "A MAKER -500 m", "A SHELF 190 m", "A THRUMS(Scarf) 31 m", "B CLOTH(Scarf) 170 m", "B MAKER -400 m", "B SAMPLE(Scarf) 10 m",
        "B SHELF 220 m", "C MAKER -400 m", "C SHELF 400 m");
  }

  @Test
  void aPreviewSaysTheSameAndPostsNothing() throws Exception {
    List<String> before = balances();
    Finishing preview = new Finish(studio).preview("Scarf", found());
    assertThat(balances()).isEqualTo(before);
    Finishing posted = new Finish(studio).plan(UUID.randomUUID(), "Scarf", found()).finishing().orElseThrow();
    assertThat(preview.squared()).isEqualTo(posted.squared());
    assertThat(preview.made()).isEqualTo(posted.made());
    assertThat(new Finish(studio).preview("Scarf", found()).squared()).as("as though it were not finished").isEqualTo(posted.squared());
  }

  /**
   * The label of 40 g may err by 9 % (Directive 76/211/EEC, as in the uncertainty of skeins), u = 400 m × 0.09 / √3; the weight by two readings of 1 g over
   * √12, 10 m to the gram, and 2 % of 220 m.
   */
  @Test
  void whatWasReallyUsedIsKnownWithItsUncertainty() throws Exception {
    new Finish(studio).plan(UUID.randomUUID(), "Scarf", found());
    List<YarnUsed> used = finished().asReserved().used();
    assertThat(used).extracting(YarnUsed::yarn).containsExactly(new YarnColour("Fjara", "Ash"), new YarnColour("Fjara", "Moss"));
    assertThat(used).extracting(YarnUsed::used).containsExactly(Length.metres(310), Length.metres(180));
    assertThat(used).extracting(YarnUsed::thrums).containsExactly(Length.metres(31), Length.ZERO);
    assertThat(used).extracting(YarnUsed::sampled).containsExactly(Length.ZERO, Length.metres(10));
    double label = 400 * 0.09 / Math.sqrt(3);
    double balance = 10 * Math.sqrt(2) / Math.sqrt(12);
    double expected = Math.sqrt(label * label + balance * balance + 4.4 * 4.4);
    assertThat(used.get(1).uncertainty().metres().doubleValue()).isCloseTo(expected, within(0.001));
  }

  @Test
  void whatIsLeftIsKnownAsSurelyAsItWasWeighedUntilThatIsTakenBack() throws Exception {
    Length before = new Shelf(studio).skein("B").orElseThrow().uncertainty(Doubts.DEFAULT);
    new Finish(studio).plan(UUID.randomUUID(), "Scarf", found());
    assertThat(new Shelf(studio).skein("B").orElseThrow().skein().measurement().words()).isEqualTo("weight");
    new Finish(studio).takeBack(UUID.randomUUID(), "Scarf", "not cut off yet");
    assertThat(new Shelf(studio).skein("B").orElseThrow().uncertainty(Doubts.DEFAULT)).isEqualTo(before);
  }

  @Test
  void theSameAgainByTheSameIdIsDoneOnce() throws Exception {
    UUID id = UUID.randomUUID();
    new Finish(studio).plan(id, "Scarf", found());
    List<String> after = balances();
    assertThat(new Finish(studio).plan(id, "Scarf", found()).entered()).isEmpty();
    assertThat(balances()).isEqualTo(after);
    assertThatThrownBy(() -> new Finish(studio).plan(id, "Scarf", found("190 m", "191 m"))).isInstanceOf(NotDone.class).hasMessageStartingWith("Something else was done under this id");
    assertThatThrownBy(() -> new Finish(studio).plan(UUID.randomUUID(), "Scarf", found())).isInstanceOf(NotDone.class).hasMessageStartingWith("Scarf was finished already, by Ida");
  }

  @Test
  void finishedAgainTheFormerIsTakenBackAndTheNewHolds() throws Exception {
    new Finish(studio).plan(UUID.randomUUID(), "Scarf", found());
    UUID id = UUID.randomUUID();
    assertThatThrownBy(() -> new Finish(studio).again(id, "Scarf", found("190 m", "195 m"), " ")).hasMessage("Say why it is finished again; the journal keeps the reason.");
    List<ChainedEntry> entered = new Finish(studio).again(id, "Scarf", found("190 m", "195 m"), "weighed again").entered();
    assertThat(entered).extracting(chained -> chained.entry().note()).contains("weighed again");
    assertThat(balances()).contains("A CLOTH(Scarf) 274 m", "A SHELF 195 m", "B CLOTH(Scarf) 170 m").noneMatch(balance -> balance.contains("LOOM"));
    assertThat(finished().number()).isEqualTo(2);
    assertThat(finished().reason()).isEqualTo("weighed again");
    assertThat(new Finish(studio).again(id, "Scarf", found("190 m", "195 m"), "weighed again").entered()).isEmpty();
  }

  @Test
  void takenBackItIsAsItWasBefore() throws Exception {
    List<String> before = balances();
    new Finish(studio).plan(UUID.randomUUID(), "Scarf", found());
    UUID id = UUID.randomUUID();
    assertThat(new Finish(studio).takeBack(id, "Scarf", "not cut off yet").entered()).hasSize(5);
    assertThat(balances()).isEqualTo(before);
    assertThat(new FinishedPlans(studio).named("Scarf")).isEmpty();
    assertThat(new Finish(studio).takeBack(id, "Scarf", "not cut off yet").entered()).isEmpty();
    assertThatThrownBy(() -> new Finish(studio).takeBack(UUID.randomUUID(), "Scarf", "again")).hasMessage("Scarf was not finished, so there is nothing to take back.");
    new Finish(studio).plan(UUID.randomUUID(), "Scarf", found());
    assertThat(finished().number()).isEqualTo(3);
  }

  @Test
  void whatSomeoneTookBackByHandIsNotTakenBackTwice() throws Exception {
    List<String> before = balances();
    UUID woven = new Finish(studio).plan(UUID.randomUUID(), "Scarf", found()).entered().getLast().entry().id();
    UUID once = UUID.randomUUID();
    byHand(once, woven);
    byHand(UUID.randomUUID(), once);
    new Finish(studio).takeBack(UUID.randomUUID(), "Scarf", "not cut off yet");
    assertThat(balances()).isEqualTo(before);
    UUID wovenAgain = new Finish(studio).plan(UUID.randomUUID(), "Scarf", found()).entered().getLast().entry().id();
    byHand(UUID.randomUUID(), wovenAgain);
    new Finish(studio).takeBack(UUID.randomUUID(), "Scarf", "not cut off yet");
    assertThat(balances()).isEqualTo(before);
  }

  /** As ledgers may have it from before that was refused. */
  private void byHand(UUID id, UUID original) throws NotDone {
    studio.write(session -> session.entries().post(Entry.reversing(session.entries().entry(original).orElseThrow(), id, studio.today(), "Ida", "a slip"), studio.now()));
  }

  @Test
  void whatIsRefusedLeavesNothingDone() throws Exception {
    List<String> before = balances();
    int entries = new Journal(studio).newestFirst().size();
    refused(FOUND.replace("\"skein\": \"B\"", "\"skein\": \"C\""), "C was never drawn for Scarf, nor was any other skein of its yarn; leave it out, or look at its code again. Nothing was posted.");
    refused(FOUND.replace("\"skein\": \"B\"", "\"skein\": \"Z\""), "There is no skein Z in the ledger.");
    refused(FOUND.replace("3.1 g", "40 g"), "The thrums and samples of Fjara Ash come to 400 m, more than the 310 m of it that were used; measure them or what is left again. Nothing was posted.");
    refused(FOUND.replace("\"thrums\"", "\"date\": \"2026-03-15\", \"thrums\""), "A cloth cannot have been cut off on 2026-03-15, which is yet to come; give today or a day that is past.");
    refused(FOUND.replace("\"thrums\"", "\"date\": \"2026-03-13\", \"thrums\""), "Scarf cannot have been cut off on 2026-03-13, before its yarn was taken on 2026-03-14; give that day or a later one.");
    assertThat(balances()).isEqualTo(before);
    assertThat(new Journal(studio).newestFirst()).hasSize(entries);
    assertThat(new FinishedPlans(studio).all()).isEmpty();
  }

  /** 500 m of A used where 300 m were planned, which its label's 26 m, twice, do not explain; 3 % of them are 15 m. */
  @Test
  void whatCannotBeExplainedWantsAReason() throws Exception {
    String allUsed = FOUND.replace("\"left\": \"190 m\"", "\"usedUp\": true");
    assertThat(new Finish(studio).preview("Scarf", actuals(allUsed)).wantingReason()).singleElement().satisfies(yarn -> {
      assertThat(yarn.yarn()).isEqualTo(new YarnColour("Fjara", "Ash"));
      assertThat(yarn.planned()).isEqualTo(Length.metres(300));
      assertThat(yarn.mayStay()).isEqualTo(Length.metres(15));
      assertThat(yarn.unexplained().metres().doubleValue()).isCloseTo(200 - 2 * 500 * 0.09 / Math.sqrt(3), within(0.001));
    });
    assertThatThrownBy(() -> new Finish(studio).plan(UUID.randomUUID(), "Scarf", actuals(allUsed))).isInstanceOf(NotDone.class)
        .hasMessage("What was used cannot be explained without a reason: Fjara Ash 148 m more than explained, and 15 m may stay so."
            + " Look at what was measured again, or give a reason. Nothing was posted.");
    new Finish(studio).plan(UUID.randomUUID(), "Scarf", actuals(allUsed).because("the cat had it"));
    assertThat(finished().asReserved().actuals().reason()).isEqualTo("the cat had it");
  }

  @Test
  void thePlanCountsAsItWasReservedAndAsItWasLastEdited() throws Exception {
    new Plans(studio).keep("Scarf", SCARF.replace("\"length\": \"2 m\"", "\"length\": \"2.1 m\""));
    new Finish(studio).plan(UUID.randomUUID(), "Scarf", found());
    assertThat(finished().asReserved().plan().wefts().getFirst().length()).contains(Length.metres(2));
    assertThat(finished().asEdited().orElseThrow().plan().wefts().getFirst().length()).contains(Length.parse("2.1 m"));
    new Plans(studio).keep("Scarf", "{}");
    assertThat(finished().asEdited()).isEmpty();
    assertThat(finished().asReserved().used()).extracting(YarnUsed::used).containsExactly(Length.metres(310), Length.metres(180));
  }

  @Test
  void aPlanThatIsFinishedTakesNoMoreYarnEvenWhereAllOfItCameBack() throws Exception {
    assertThat(life()).isEqualTo("on the loom");
    Actuals nothingUsed = actuals("{\"format\": \"hankbook-actuals/1\", \"leftovers\": [{\"skein\": \"A\", \"left\": \"500 m\"}, {\"skein\": \"B\", \"left\": \"400 m\"}], \"reason\": \"given up\"}");
    new Finish(studio).plan(UUID.randomUUID(), "Scarf", nothingUsed);
    assertThat(life()).isEqualTo("squared");
    QueuedPlan queued = new QueuePlans(studio).all(ExpectedBy.NOTHING).plans().getFirst();
    assertThat(queued.stands()).isEqualTo(QueuedPlan.Stands.WOVEN);
    assertThat(queued.claims()).isEmpty();
  }

  @Test
  void whatIsFilledInIsKeptAndTheLoomIsSaidToBeCutOff() throws Exception {
    FinishedPlans plans = new FinishedPlans(studio);
    ActualsDraft form = plans.form("Scarf");
    assertThat(form.rows(ActualsPart.LEFTOVERS)).extracting(row -> row.text("skein")).containsExactly("A", "B");
    ActualsDraft half = form.with(ActualsPart.LEFTOVERS, List.of(DraftRow.BLANK.with("skein", "A").with("left", "19")));
    plans.keep("Scarf", half);
    plans.keep("Scarf", half);
    assertThat(plans.draft("Scarf").orElseThrow().text(ActualsPart.LEFTOVERS, 1, "left")).isEqualTo("19");
    assertThat(life()).isEqualTo("cut off");
    new Finish(studio).plan(UUID.randomUUID(), "Scarf", found());
    assertThat(plans.draft("Scarf")).isEmpty();
    assertThat(finished().number()).isEqualTo(2);
    assertThat(plans.form("Scarf").rows(ActualsPart.LEFTOVERS)).extracting(row -> row.text("left")).containsExactly("190 m", "");
    assertThat(plans.named("Scarf").orElseThrow().asReserved().actuals().date()).contains(LocalDate.of(2026, 3, 14));
  }

  @Test
  void whatWasFoundIsNeverAltered() throws Exception {
    new Finish(studio).plan(UUID.randomUUID(), "Scarf", found());
    for (String change : List.of("update actuals_version set body = ''", "delete from actuals_version", "update actuals_entry set line = 9", "delete from actuals_entry")) {
      assertThatThrownBy(() -> Vendor.run(address, change)).isInstanceOfSatisfying(SQLException.class, refused -> assertThat(refused.getSQLState()).isEqualTo("P0001"));
    }
  }

  private Optional<FinishedPlan> standing() {
    return new FinishedPlans(studio).named("Scarf");
  }

  private FinishedPlan finished() {
    return standing().orElseThrow();
  }

  private String life() {
    return new PlanStandings(studio).all().getFirst().life();
  }

  private void refused(String actuals, String why) throws Exception {
    Actuals given = actuals(actuals);
    assertThatThrownBy(() -> new Finish(studio).plan(UUID.randomUUID(), "Scarf", given)).isInstanceOf(NotDone.class).hasMessage(why);
  }

  private static Actuals found() throws Exception {
    return actuals(FOUND);
  }

  private static Actuals found(String was, String is) throws Exception {
    return actuals(FOUND.replace(was, is));
  }

  private static Actuals actuals(String text) throws Exception {
    return ActualsFile.read("found.json", text).actuals();
  }

  private List<String> balances() {
    return studio.read(session -> session.balances().all()).lengths().entrySet().stream()
        .map(balance -> balance.getKey().skein() + " " + balance.getKey().place() + " " + balance.getValue())
        .toList();
  }
}
