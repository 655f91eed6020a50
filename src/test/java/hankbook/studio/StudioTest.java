package hankbook.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.allot.Verdict;
import hankbook.exchange.BadInput;
import hankbook.ledger.Entry;
import hankbook.ledger.EntryKind;
import hankbook.measure.Length;
import hankbook.measure.Unreadable;
import hankbook.store.LedgerAddress;
import hankbook.store.Vendor;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** The use cases on a ledger in either database, with the sample studio in it. */
@ParameterizedClass
@EnumSource
class StudioTest {
  private static final Clock NOON = Clock.fixed(Instant.parse("2026-03-14T12:00:00Z"), ZoneOffset.UTC);
  private static final String TOWELS = "Quay towels";

  private final Vendor vendor;

  @TempDir private Path folder;
  private LedgerAddress address;
  private Studio studio;

  StudioTest(Vendor vendor) {
    this.vendor = vendor;
  }

  @BeforeEach
  void open() throws Exception {
    address = vendor.ledger(folder);
    studio = Studio.open(address, "Ida", NOON);
    SampleStudio.fill(studio);
  }

  @AfterEach
  void auditAndClose() {
    assertThat(new AuditLedger(studio).audit().audit().findings()).isEmpty();
    studio.close();
  }

  @Test
  void aBlankLedgerSaysSoUntilSomethingIsEntered() throws Exception {
    try (Studio blank = Studio.open(vendor.ledger(Files.createDirectory(folder.resolve("blank"))), "Ida", NOON)) {
      assertThat(blank.isBlank()).isTrue();
      new Plans(blank).keep("Scarf", "{}");
      assertThat(blank.isBlank()).isFalse();
    }
    assertThat(studio.isBlank()).isFalse();
  }

  @Test
  void whatWasEnteredIsThereWhenTheLedgerIsOpenedAgain() throws Exception {
    List<ShelfSkein> before = new Shelf(studio).everySkein();
    studio.close();
    studio = Studio.open(address, "Ida", NOON);
    assertThat(new Shelf(studio).everySkein()).isEqualTo(before).hasSize(58);
    assertThat(new Plans(studio).names()).containsExactly("Ash blanket", "Gorse shawl", "Linen runner", "Quay towels");
  }

  @Test
  void theSampleStudioIsNotPutBesideRealYarn() {
    int entries = new Journal(studio).newestFirst().size();
    assertThatThrownBy(() -> SampleStudio.fill(studio)).isInstanceOf(NotDone.class).hasMessageStartingWith("This ledger is not blank");
    assertThat(new Journal(studio).newestFirst()).hasSize(entries);
  }

  @Test
  void thePlansOfTheLedgerGetTheVerdictsOfTheirFiles() throws Exception {
    for (var fromFiles : SampleStudio.checks()) {
      Answer answer = new CheckPlan(studio).named(fromFiles.plan().name());
      assertThat(answer.check().covers()).isEqualTo(fromFiles.covers());
      assertThat(answer.check().shares()).isEqualTo(fromFiles.shares());
      assertThat(answer.check().warnings()).isEqualTo(fromFiles.warnings());
    }
  }

  @Test
  void yarnReservedForOnePlanIsNotFreeForAnotherAndComesBackWhenReleased() throws Exception {
    Answer before = new CheckPlan(studio).named(TOWELS);
    new Reserve(studio).plan(UUID.randomUUID(), TOWELS, false);
    assertThat(new CheckPlan(studio).named(TOWELS).check().covers()).isEqualTo(before.check().covers());
    new Plans(studio).add("copy", new Plans(studio).text(TOWELS).orElseThrow().replace(TOWELS, "Second towels"), false);
    Length reserved = new Shelf(studio).skeins().stream().map(ShelfSkein::allReserved).reduce(Length.ZERO, Length::plus);
    Length free = before.check().covers().stream().map(cover -> cover.free()).reduce(Length.ZERO, Length::plus);
    Length freeNow = new CheckPlan(studio).named("Second towels").check().covers().stream().map(cover -> cover.free()).reduce(Length.ZERO, Length::plus);
    assertThat(reserved.isPositive()).isTrue();
    assertThat(freeNow).isEqualTo(free.minus(reserved));
    new Release(studio).plan(UUID.randomUUID(), TOWELS);
    assertThat(new CheckPlan(studio).named("Second towels").check().covers()).isEqualTo(before.check().covers());
  }

  @Test
  void reservingAgainReservesNothingMoreUnlessThePlanChanged() throws Exception {
    assertThat(new Reserve(studio).plan(UUID.randomUUID(), TOWELS, false)).hasSize(1);
    assertThat(new Reserve(studio).plan(UUID.randomUUID(), TOWELS, false)).isEmpty();
    String fewer = new Plans(studio).text(TOWELS).orElseThrow().replace("\"count\": 4", "\"count\": 2");
    new Plans(studio).keep(TOWELS, fewer);
    var entered = new Reserve(studio).plan(UUID.randomUUID(), TOWELS, false);
    assertThat(entered).isNotEmpty();
    assertThat(entered.getFirst().entry().kind()).isEqualTo(EntryKind.RELEASE);
    Length need = new CheckPlan(studio).named(TOWELS).check().covers().stream().map(cover -> cover.need()).reduce(Length.ZERO, Length::plus);
    Length reserved = new Shelf(studio).skeins().stream().map(ShelfSkein::allReserved).reduce(Length.ZERO, Length::plus);
    assertThat(reserved).isEqualTo(need);
  }

  @Test
  void aShortPlanReservesNothingUnlessToldTo() throws Exception {
    assertThatThrownBy(() -> new Reserve(studio).plan(UUID.randomUUID(), "Gorse shawl", false))
        .isInstanceOfSatisfying(NotDone.class, notDone -> assertThat(notDone.yarnIsShort()).isTrue())
        .hasMessageStartingWith("Nothing was reserved for Gorse shawl, since it is short: ");
    assertThat(new Reserve(studio).plan(UUID.randomUUID(), "Gorse shawl", true)).hasSize(1);
    assertThat(new CheckPlan(studio).named("Gorse shawl").check().isShort()).isTrue();
  }

  @Test
  void theSameReservationTwiceIsThereOnce() throws Exception {
    UUID id = UUID.randomUUID();
    new Reserve(studio).plan(id, TOWELS, false);
    int entries = new Journal(studio).newestFirst().size();
    assertThat(new Reserve(studio).plan(id, TOWELS, false)).isEmpty();
    assertThat(new Journal(studio).newestFirst()).hasSize(entries);
  }

  @Test
  void drawnYarnIsOnTheLoomUntilSomeIsReturned() throws Exception {
    assertThatThrownBy(() -> new Draw(studio).plan(UUID.randomUUID(), TOWELS)).isInstanceOf(NotDone.class).hasMessageContaining("reserve its yarn");
    new Reserve(studio).plan(UUID.randomUUID(), TOWELS, false);
    new Draw(studio).plan(UUID.randomUUID(), TOWELS);
    ShelfSkein wound = new Shelf(studio).skeins().stream().filter(skein -> skein.onLoom().containsKey(TOWELS)).findFirst().orElseThrow();
    assertThat(wound.allReserved()).isEqualTo(Length.ZERO);
    new Return(studio).skein(UUID.randomUUID(), TOWELS, wound.skein().code(), Length.metres(3));
    ShelfSkein after = new Shelf(studio).skein(wound.skein().code()).orElseThrow();
    assertThat(after.free()).isEqualTo(wound.free().plus(Length.metres(3)));
    assertThat(after.skein().holds()).isEqualTo(wound.skein().holds());
    assertThatThrownBy(() -> new Return(studio).skein(UUID.randomUUID(), TOWELS, wound.skein().code(), Length.metres(100_000)))
        .isInstanceOf(NotDone.class)
        .hasMessageStartingWith("Not enough " + wound.skein().code());
  }

  @Test
  void aRecountPutsTheShelfRight() throws Exception {
    new Recount(studio).skein(UUID.randomUUID(), "S001", Length.metres(1500), "weighed again");
    assertThat(new Shelf(studio).skein("S001").orElseThrow().free()).isEqualTo(Length.metres(1500));
    new Recount(studio).skein(UUID.randomUUID(), "S001", Length.metres(1510), "");
    assertThat(new Shelf(studio).skein("S001").orElseThrow().free()).isEqualTo(Length.metres(1510));
    assertThat(new Recount(studio).skein(UUID.randomUUID(), "S001", Length.metres(1510), "")).isEmpty();
    assertThatThrownBy(() -> new Recount(studio).skein(UUID.randomUUID(), "nowhere", Length.ZERO, "")).hasMessage("There is no skein nowhere in the ledger.");
  }

  @Test
  void whatIsPartedWithIsGone() throws Exception {
    new PartWith(studio).skein(UUID.randomUUID(), "S001", Length.metres(1600), "to a friend");
    assertThat(new Shelf(studio).skeins()).noneMatch(skein -> skein.skein().code().equals("S001"));
    assertThat(new Shelf(studio).everySkein()).anyMatch(skein -> skein.skein().code().equals("S001"));
    assertThatThrownBy(() -> new PartWith(studio).skein(UUID.randomUUID(), "S002", Length.metres(1601), ""))
        .hasMessage("Not enough S002: the shelf holds 1600 m, and 1601 m would be taken (1 m short).");
  }

  @Test
  void anEntryTakenBackIsShownWithItsReversalAndCanBeTakenBackOnce() throws Exception {
    new PartWith(studio).skein(UUID.randomUUID(), "S001", Length.metres(10), "");
    Entry parted = new Journal(studio).newestFirst().getFirst().chained().entry();
    new Reverse(studio).entry(UUID.randomUUID(), parted.id(), "it was S002");
    List<JournalEntry> journal = new Journal(studio).newestFirst();
    assertThat(journal.get(1).reversedBy()).contains(journal.get(0).chained().entry().id());
    assertThat(new Shelf(studio).skein("S001").orElseThrow().free()).isEqualTo(Length.metres(1600));
    assertThatThrownBy(() -> new Reverse(studio).entry(UUID.randomUUID(), parted.id(), "again")).hasMessageContaining("has already been taken back");
    assertThatThrownBy(() -> new Reverse(studio).numbered(UUID.randomUUID(), 1, " ")).hasMessageStartingWith("Say why");
    assertThatThrownBy(() -> new Reverse(studio).numbered(UUID.randomUUID(), 999, "slip")).hasMessage("There is no such entry in the journal.");
  }

  @Test
  void aPlanWithYarnUnderItsNameIsNeitherRenamedNorPutAway() throws Exception {
    new Reserve(studio).plan(UUID.randomUUID(), TOWELS, false);
    assertThatThrownBy(() -> new Plans(studio).putAway(TOWELS)).isInstanceOf(NotDone.class);
    assertThatThrownBy(() -> new Plans(studio).rename(TOWELS, "Towels", "{}")).isInstanceOf(NotDone.class);
    new Release(studio).plan(UUID.randomUUID(), TOWELS);
    new Plans(studio).putAway(TOWELS);
    assertThat(new Plans(studio).names()).doesNotContain(TOWELS);
  }

  @Test
  void aSkeinOfUnknownLengthCountsAsNothingUntilItIsMeasured() throws Exception {
    new Receive(studio).file("odd.csv", "code,yarn,colour\nN1,Nameless,Grey\n");
    assertThat(new Shelf(studio).skein("N1").orElseThrow().free()).isEqualTo(Length.ZERO);
    assertThat(new Shelf(studio).skeins()).anyMatch(skein -> skein.skein().code().equals("N1"));
    new Recount(studio).skein(UUID.randomUUID(), "N1", Length.metres(40), "measured");
    assertThat(new Shelf(studio).skein("N1").orElseThrow().free()).isEqualTo(Length.metres(40));
  }

  @Test
  void aFileWithOneBadRowOrATakenCodeChangesNothing() {
    assertThatThrownBy(() -> new Receive(studio).file("odd.csv", "code,yarn,colour,length\nN1,Nameless,Grey,40 m\nN2,Nameless,Grey,forty\n"))
        .hasMessage("odd.csv, row 3, length: found 'forty', wanted a length such as 70 cm or 2 x 70 cm + 5 cm (mm, cm, m, in, ft or yd)");
    assertThatThrownBy(() -> new Receive(studio).file("odd.csv", "code,yarn,colour,length\nN1,Nameless,Grey,40 m\n\nS001,Nameless,Grey,4 m\n"))
        .hasMessage("odd.csv, row 4, code: found 'S001', which another skein of the ledger has, wanted a code of its own");
    assertThat(new Shelf(studio).everySkein()).noneMatch(skein -> skein.skein().code().startsWith("N"));
  }

  @Test
  void aRecountIsOfTheWholeSkeinWithWhatIsReserved() throws Exception {
    new Reserve(studio).plan(UUID.randomUUID(), TOWELS, false);
    ShelfSkein promised = new Shelf(studio).skeins().stream().filter(skein -> skein.allReserved().isPositive() && skein.free().isPositive()).findFirst().orElseThrow();
    String code = promised.skein().code();
    new Recount(studio).skein(UUID.randomUUID(), code, promised.skein().holds().minus(Length.metres(10)), "");
    ShelfSkein after = new Shelf(studio).skein(code).orElseThrow();
    assertThat(after.allReserved()).isEqualTo(promised.allReserved());
    assertThat(after.free()).isEqualTo(promised.free().minus(Length.metres(10)));
    assertThatThrownBy(() -> new Recount(studio).skein(UUID.randomUUID(), code, Length.metres(1), ""))
        .isInstanceOf(NotDone.class)
        .hasMessageContaining("are reserved for plans, more than the 1 m that were found");
  }

  @Test
  void yarnOnTheLoomCountsAsTakenWhicheverSkeinsWouldBeChosenToday() throws Exception {
    new Receive(studio).file("ash.csv", "code,yarn,colour,length,lot,received\nR1,Rook,Ash,950 m,1,2025-01-01\nR2,Rook,Ash,950 m,1,2025-02-01\n");
    String plan = """
        {"format": "hankbook-plan/1", "name": "%s", "warp": {"sett": "10/cm", "ends": 200, "length": "4 m", "order": [{"yarn": "Rook", "colour": "Ash", "share": 1}]}}
        """;
    new Plans(studio).keep("First", plan.formatted("First"));
    new Plans(studio).keep("Second", plan.formatted("Second"));
    new Reserve(studio).plan(UUID.randomUUID(), "First", false);
    new Reserve(studio).plan(UUID.randomUUID(), "Second", false);
    new Draw(studio).plan(UUID.randomUUID(), "Second");
    new Release(studio).plan(UUID.randomUUID(), "First");
    assertThat(new Reserve(studio).plan(UUID.randomUUID(), "Second", false)).isEmpty();
    assertThat(new Reserve(studio).plan(UUID.randomUUID(), "First", false)).hasSize(1);
    assertThat(new CheckPlan(studio).named("First").check().isShort()).isFalse();
  }

  @Test
  void aPlanIsNeitherKeptNorReservedOverAnothersChange() throws Exception {
    KeptPlan seen = new Plans(studio).kept(TOWELS).orElseThrow();
    int mine = new Plans(studio).keep(TOWELS, seen.text().replace("\"count\": 4", "\"count\": 3"), seen.version());
    assertThat(mine).isEqualTo(seen.version() + 1);
    assertThatThrownBy(() -> new Plans(studio).keep(TOWELS, "{}", seen.version())).hasMessage("Quay towels was changed meanwhile, by Ida; nothing of it was changed now.");
    assertThatThrownBy(() -> new Reserve(studio).plan(UUID.randomUUID(), TOWELS, seen.version(), false)).isInstanceOf(NotDone.class);
    assertThat(new Reserve(studio).plan(UUID.randomUUID(), TOWELS, mine, false)).hasSize(1);
    assertThatThrownBy(() -> new Plans(studio).keep(TOWELS, "{}", 0)).isInstanceOf(NotDone.class);
    new Release(studio).plan(UUID.randomUUID(), TOWELS);
    new Plans(studio).putAway(TOWELS);
    assertThatThrownBy(() -> new Plans(studio).keep(TOWELS, "{}", mine)).hasMessageStartingWith("Quay towels was put away or given another name meanwhile");
    new Plans(studio).keep(TOWELS, "{}", 0);
    assertThat(new Plans(studio).text(TOWELS)).contains("{}");
  }

  @Test
  void noReversalPutsYarnUnderAPlanThatIsNotOnTheList() throws Exception {
    new Reserve(studio).plan(UUID.randomUUID(), TOWELS, false);
    new Release(studio).plan(UUID.randomUUID(), TOWELS);
    new Plans(studio).putAway(TOWELS);
    UUID release = new Journal(studio).newestFirst().getFirst().chained().entry().id();
    assertThatThrownBy(() -> new Reverse(studio).entry(UUID.randomUUID(), release, "slip")).hasMessageContaining("under the plan Quay towels, which was put away");
  }

  @Test
  void aReceiptThatWasTakenBackMayComeAgain() throws Exception {
    String file = "code,yarn,colour,length\nR1,Rook,Ash,950 m\n";
    new Receive(studio).file("ash.csv", file);
    UUID receipt = new Journal(studio).newestFirst().getFirst().chained().entry().id();
    new Reverse(studio).entry(UUID.randomUUID(), receipt, "not here yet");
    assertThat(new Shelf(studio).skein("R1").orElseThrow().isUsedUp()).isTrue();
    assertThat(new Receive(studio).file("ash.csv", file)).isEqualTo(new Receive.Delivery(1, 0));
    assertThat(new Shelf(studio).skein("R1").orElseThrow().free()).isEqualTo(Length.metres(950));
    assertThat(new Receive(studio).file("ash.csv", file)).isEqualTo(new Receive.Delivery(0, 1));
  }

  @Test
  void aSkeinIsOpenedByWhatIsTakenOffItAndNotByAPromiseOrARecount() throws Exception {
    new Recount(studio).skein(UUID.randomUUID(), "S001", Length.metres(1599), "");
    new Reserve(studio).plan(UUID.randomUUID(), TOWELS, false);
    assertThat(new Shelf(studio).skeins()).filteredOn(skein -> skein.allReserved().isPositive() && skein.skein().code().equals("S002")).allMatch(skein -> !skein.skein().opened());
    assertThat(new Shelf(studio).skein("S001").orElseThrow().skein().opened()).isFalse();
    new Draw(studio).plan(UUID.randomUUID(), TOWELS);
    assertThat(new Shelf(studio).skeins()).filteredOn(skein -> skein.allOnLoom().isPositive()).isNotEmpty().allMatch(skein -> skein.skein().opened());
  }

  @Test
  void aSkeinThatWasMeasuredLaterIsUsedUpWhenAllOfItIsGone() throws Exception {
    new Receive(studio).file("odd.csv", "code,yarn,colour\nN1,Nameless,Grey\n");
    new Recount(studio).skein(UUID.randomUUID(), "N1", Length.metres(40), "measured");
    new PartWith(studio).skein(UUID.randomUUID(), "N1", Length.metres(40), "");
    assertThat(new Shelf(studio).skein("N1").orElseThrow().isUsedUp()).isTrue();
  }

  @Test
  void aRowWithNothingOnItIsRefused() {
    assertThatThrownBy(() -> new Receive(studio).file("odd.csv", "code,yarn,colour,length\nN1,Nameless,Grey,0 m\n"))
        .hasMessage("odd.csv, row 2, length: found a skein with nothing on it, wanted one that holds yarn, or no length where it is not known");
  }

  @Test
  void aNoteThatCannotBePrintedAndANameThatIsTooLongAreRefused() {
    assertThatThrownBy(() -> new PartWith(studio).skein(UUID.randomUUID(), "S001", Length.metres(1), "a\u0007b")).isInstanceOf(Unreadable.class);
    assertThatThrownBy(() -> new Plans(studio).add("long.json", "{\"format\": \"hankbook-plan/1\", \"name\": \"" + "x".repeat(201) + "\"}", false))
        .isInstanceOf(BadInput.class)
        .hasMessageContaining("wanted one line of at most 200 printable characters");
  }

  @Test
  void aReservationThatLacksWhatThePlanTakesNowIsNotDrawn() throws Exception {
    new Reserve(studio).plan(UUID.randomUUID(), TOWELS, false);
    String text = new Plans(studio).text(TOWELS).orElseThrow();
    new Plans(studio).keep(TOWELS, text.replace("\"sampling\": \"30 cm\"", "\"sampling\": \"60 cm\""));
    assertThatThrownBy(() -> new Draw(studio).plan(UUID.randomUUID(), TOWELS)).isInstanceOf(NotDone.class).hasMessageContaining("less than it takes as it is now; reserve again, then draw");
    new Plans(studio).keep(TOWELS, "{}");
    assertThatThrownBy(() -> new Draw(studio).plan(UUID.randomUUID(), TOWELS)).isInstanceOf(NotDone.class).hasMessageContaining("cannot be reckoned as it is now");
    new Plans(studio).keep(TOWELS, text);
    assertThat(new Draw(studio).plan(UUID.randomUUID(), TOWELS)).isPresent();
    new Reserve(studio).plan(UUID.randomUUID(), "Gorse shawl", true);
    assertThat(new Draw(studio).plan(UUID.randomUUID(), "Gorse shawl")).isPresent();
  }
}
