package hankbook.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import hankbook.exchange.ActualsDraft;
import hankbook.exchange.ActualsPart;
import hankbook.ledger.Change;
import hankbook.ledger.EntryKind;
import hankbook.ledger.LastSaid;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.store.LedgerAddress;
import hankbook.store.LedgerUnavailable;
import hankbook.store.Postgres;
import hankbook.yarn.GristSample;
import hankbook.yarn.PackageForm;
import hankbook.yarn.Skein;
import hankbook.yarn.Turns;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.LongStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class UndoTest {
  @TempDir
  Path dir;

  private Studio studio(boolean server) throws LedgerUnavailable, NotDone {
    Clock clock = Clock.tick(Clock.offset(Clock.fixed(Instant.parse("2026-03-14T12:00:00Z"), ZoneOffset.UTC), Duration.ZERO), Duration.ofMillis(1));
    Studio studio = Studio.open(server ? Postgres.ledger() : new LedgerAddress.InFile(dir.resolve("ledger")), "Ada", clock);
    SampleStudio.fill(studio);
    return studio;
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void theLastActIsShownAndTakenBackAndThenTheOneBeforeIsTheLast(boolean server) throws Exception {
    try (Studio studio = studio(server)) {
      new PartWith(studio).skein(UUID.randomUUID(), "S010", Length.metres(900), "sold");
      new PartWith(studio).skein(UUID.randomUUID(), "S010", Length.metres(10), "given");
      Undoing given = new Undo(studio).last(Set.of()).orElseThrow();
      assertThat(given.main().entry().note()).isEqualTo("given");
      assertThat(given.whyNot()).isEmpty();
      assertThat(given.changes()).filteredOn(change -> change.holding().place().neverNegative())
          .extracting(Change::now, Change::then).containsExactly(tuple(Length.metres(40), Length.metres(50)));
      UUID id = UUID.randomUUID();
      assertThat(new Undo(studio).takeBack(id, given, "undone")).hasSize(1);
      assertThat(new Undo(studio).takeBack(id, given, "undone")).isEmpty();
      assertThat(new Shelf(studio).skein("S010").orElseThrow().free()).isEqualTo(Length.metres(50));
      assertThat(new Undo(studio).last(Set.of(id)).orElseThrow().main().entry().note()).isEqualTo("sold");
      assertThat(new Undo(studio).last(Set.of()).orElseThrow().main().entry().kind()).isEqualTo(EntryKind.REVERSAL);
    }
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void whatCannotBeTakenBackSaysWhyAndWhatWouldLack(boolean server) throws Exception {
    try (Studio studio = studio(server)) {
      new PartWith(studio).skein(UUID.randomUUID(), "S010", Length.metres(900), "sold");
      long received = new Journal(studio).ofSkein("S010").getLast().chained().number();
      Undoing undoing = new Undo(studio).numbered(received).orElseThrow();
      assertThat(undoing.whyNot().orElseThrow()).startsWith("Not enough S010: the shelf holds 50 m");
      assertThat(undoing.changes()).filteredOn(Change::lacks).hasSize(1);
      assertThat(new Undo(studio).numbered(9999)).isEmpty();
    }
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void aReservationAndWhatItReleasedAreTakenBackTogetherAndThePlanSaidSinceIsNamed(boolean server) throws Exception {
    try (Studio studio = studio(server)) {
      Plans plans = new Plans(studio);
      String plan = "Quay towels";
      new Reserve(studio).plan(UUID.randomUUID(), plan, true);
      Undoing reserved = new Undo(studio).last(Set.of()).orElseThrow();
      assertThat(reserved.main().entry().kind()).isEqualTo(EntryKind.RESERVE);
      assertThat(reserved.entries()).hasSize(1);
      plans.keep(plan, plans.text(plan).orElseThrow() + " ");
      assertThat(new Undo(studio).last(Set.of()).orElseThrow().saidSince().map(LastSaid::name)).isIn(Optional.empty(), Optional.of(plan));
      new Undo(studio).takeBack(UUID.randomUUID(), reserved, "undone");
      assertThat(new Shelf(studio).everySkein()).allMatch(skein -> skein.reserved().getOrDefault(plan, Length.ZERO).isZero());
    }
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void whateverWasSaidLaterAndIsNoEntryIsNamed(boolean server) throws Exception {
    try (Studio studio = Studio.open(server ? Postgres.ledger() : new LedgerAddress.InFile(dir.resolve("ledger")), "Ada", new OnwardClock())) {
      SampleStudio.fill(studio);
      Skein skein = new Shelf(studio).skein("S010").orElseThrow().skein();
      new PartWith(studio).skein(UUID.randomUUID(), "S010", Length.metres(900), "sold");
      assertThat(since(studio)).isEmpty();
      new Describe(studio).skeins(List.of("S010"), new SkeinFacts(Optional.empty(), Optional.of("the attic"), Optional.empty(), Optional.empty()));
      assertThat(since(studio)).containsExactly(LastSaid.What.SKEIN, "S010");
      new Recount(studio).counted(UUID.randomUUID(), "S010", new Turns(50, Length.metres(1)), "");
      assertThat(since(studio)).containsExactly(LastSaid.What.MEASURE, "S010");
      new Grists(studio).weigh(skein.yarn().yarn(), new GristSample(Length.metres(10), new Mass(700), new Mass(10), Length.parse("5 cm")));
      assertThat(since(studio)).containsExactly(LastSaid.What.SAMPLE, skein.yarn().yarn());
      new QueuePlans(studio).moved(new PlanMove("Quay towels", "Ash blanket", true), ExpectedBy.NOTHING);
      assertThat(since(studio)).containsExactly(LastSaid.What.TURNS, "1");
      new FinishedPlans(studio).keep("Quay towels", ActualsDraft.BLANK.with(ActualsPart.WARP, 1, "length", "4 m"));
      assertThat(since(studio)).containsExactly(LastSaid.What.ACTUALS, "Quay towels");
      new Recount(studio).skein(UUID.randomUUID(), "S010", Length.metres(48), "");
      assertThat(since(studio)).isEmpty();
      LocalDate due = LocalDate.of(2026, 4, 1);
      new Expect(studio).skeins(List.of(ordered(skein)), due);
      assertThat(since(studio)).isEmpty();
      new Expect(studio).due(List.of("S900"), due.plusDays(7));
      assertThat(since(studio)).containsExactly(LastSaid.What.DUE, "S900");
    }
  }

  private static List<Object> since(Studio studio) {
    return new Undo(studio).last(Set.of()).orElseThrow().saidSince().<List<Object>>map(said -> List.of(said.what(), said.name())).orElse(List.of());
  }

  private static Skein ordered(Skein like) {
    return new Skein("S900", like.yarn(), "", "", Optional.empty(), PackageForm.SKEIN, Optional.of(Length.metres(100)), Optional.empty(), false, "", "", Optional.empty(), Optional.empty(), Optional.empty());
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void theJournalIsReadByPagesAndSearchedByNumberDateSkeinColourPlanAndNote(boolean server) throws Exception {
    try (Studio studio = studio(server)) {
      new PartWith(studio).skein(UUID.randomUUID(), "S010", Length.metres(900), "sold at the fair");
      Journal journal = new Journal(studio);
      long last = journal.last();
      assertThat(journal.numbered(LongStream.rangeClosed(last - 4, last).boxed().toList())).extracting(entry -> entry.chained().number())
          .containsExactly(last, last - 1, last - 2, last - 3, last - 4);
      JournalSearch search = new JournalSearch(studio, entry -> entry.transfers().toString());
      assertThat(found(search, "FAIR s010", 0)).containsExactly(last);
      assertThat(found(search, Long.toString(last), 0)).contains(last);
      assertThat(found(search, "2026-03 part", 0)).containsExactly(last);
      assertThat(found(search, "nothing of the kind", 0)).isEmpty();
      assertThat(found(search, "", 0)).hasSize((int) last);
      new Reverse(studio).numbered(UUID.randomUUID(), last, "wrong skein");
      assertThat(found(search, "s010", last)).containsExactly(last + 1);
      assertThat(journal.numbered(List.of(last)).getFirst().takenBackBy()).contains(last + 1);
      assertThat(journal.numbered(List.of(last + 1)).getFirst().takesBack()).contains(last);
    }
  }

  private static List<Long> found(JournalSearch search, String words, long above) {
    List<Long> found = new ArrayList<>();
    search.find(words, above, () -> false, found::addAll);
    return found;
  }
}
