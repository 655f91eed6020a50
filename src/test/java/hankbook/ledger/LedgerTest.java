package hankbook.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.measure.Length;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;

class LedgerTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 14);
  private static final String CORAL = "Coral 8/2 no. 3";
  private static final Place MAKER = new Place.Maker();
  private static final Place SHELF = new Place.Shelf();
  private static final Place SET_ASIDE = new Place.Reserved("Quay towels");
  private static final Place LOOM = new Place.Loom("Quay towels");

  private final List<ChainedEntry> chain = new ArrayList<>();
  private Book book = Book.EMPTY;

  @Test
  void aReceivedSkeinIsOnTheShelfAndOwedByTheMaker() {
    post(receive(1, 100));
    assertThat(book.balances().at(CORAL, SHELF)).isEqualTo(Length.metres(100));
    assertThat(book.balances().at(CORAL, MAKER)).isEqualTo(Length.metres(-100));
    assertThat(book.balances().sums()).containsOnly(Map.entry(CORAL, Length.ZERO));
  }

  @Test
  void aSkeinGoesFromTheMakerToTheClothAndTheLoomComesOutEmpty() {
    post(receive(1, 100));
    post(entry(2, EntryKind.RESERVE, move(SHELF, SET_ASIDE, 60)));
    post(entry(3, EntryKind.DRAW, move(SET_ASIDE, LOOM, 60), move(SHELF, LOOM, 5)));
    post(entry(4, EntryKind.WOVEN, move(LOOM, new Place.Cloth("Quay towels"), 50)));
    post(entry(5, EntryKind.WASTE, move(LOOM, new Place.Thrums("Quay towels"), 8)));
    post(entry(6, EntryKind.RETURN, move(LOOM, SHELF, 7)));
    assertThat(book.balances().at(CORAL, LOOM)).isEqualTo(Length.ZERO);
    assertThat(book.balances().at(CORAL, SET_ASIDE)).isEqualTo(Length.ZERO);
    assertThat(book.balances().at(CORAL, SHELF)).isEqualTo(Length.metres(42));
    assertThat(Audit.of(chain, book.balances()).findings()).isEmpty();
    assertThat(Book.of(chain)).isEqualTo(book);
  }

  @Test
  void windingOffMovesLengthFromOneSkeinToAnother() {
    post(receive(1, 100));
    Place rewound = new Place.Rewound();
    post(entry(2, EntryKind.REWIND, move(SHELF, rewound, 30), new Transfer("Coral 8/2 no. 4", rewound, SHELF, Length.metres(30))));
    assertThat(book.balances().at("Coral 8/2 no. 4", SHELF)).isEqualTo(Length.metres(30));
    assertThat(Audit.of(chain, book.balances()).isClean()).isTrue();
  }

  @Test
  void theSameEntryTwiceIsThereOnce() {
    Entry received = receive(1, 100);
    post(received);
    assertThat(book.post(receive(1, 100))).isEqualTo(new Outcome.AlreadyThere(received));
  }

  @Test
  void theSameEntryIsStillThereAfterItWasReversed() {
    Entry received = receive(1, 100);
    post(received);
    Entry reversal = reverse(received, 2);
    post(reversal);
    assertThat(book.post(received)).isEqualTo(new Outcome.AlreadyThere(received));
    assertThat(book.post(reversal)).isEqualTo(new Outcome.AlreadyThere(reversal));
  }

  @Test
  void anIdWithOtherContentIsRefused() {
    post(receive(1, 100));
    assertThat(refused(receive(1, 99)))
        .isEqualTo("The ledger already holds an entry under this id that says something else: receive, 2026-03-14, by Ida."
            + " Nothing was changed.");
  }

  @Test
  void aReversalOfNothingIsRefused() {
    assertThat(refused(reverse(receive(1, 100), 2)))
        .isEqualTo("There is no entry 00000000-0000-0000-0000-000000000001 in the ledger to take back.");
  }

  @Test
  void anEntryIsReversedOnlyOnce() {
    Entry received = receive(1, 100);
    post(received);
    post(reverse(received, 2));
    assertThat(refused(reverse(received, 3)))
        .isEqualTo("The entry receive, 2026-03-14, by Ida has already been taken back. To bring it back, reverse its reversal.");
  }

  @Test
  void aReversalOfAReversalBringsTheEntryBackAndCanItselfBeReversed() {
    Entry received = receive(1, 100);
    Entry undo = reverse(received, 2);
    Entry redo = reverse(undo, 3);
    post(received);
    post(undo);
    assertThat(book.balances()).isEqualTo(Balances.NONE);
    post(redo);
    assertThat(book.balances().at(CORAL, SHELF)).isEqualTo(Length.metres(100));
    post(reverse(redo, 4));
    assertThat(book.balances()).isEqualTo(Balances.NONE);
    assertThat(Audit.of(chain, book.balances()).isClean()).isTrue();
  }

  @Test
  void aReversalThatTakesBackOnlyAPartIsRefused() {
    Entry received = receive(1, 100);
    post(received);
    Entry part = new Entry(
        id(2), EntryKind.REVERSAL, DAY, "Ida", "half", List.of(move(SHELF, MAKER, 50)), Optional.of(received.id()));
    assertThat(refused(part))
        .isEqualTo("A reversal takes back the whole of its entry and nothing else; this one does not match receive, 2026-03-14, by Ida.");
  }

  @Test
  void aReversalIsRefusedWhenTheYarnHasGoneElsewhere() {
    Entry received = receive(1, 100);
    post(received);
    post(entry(2, EntryKind.RESERVE, move(SHELF, SET_ASIDE, 60)));
    assertThat(refused(reverse(received, 3)))
        .isEqualTo("Not enough Coral 8/2 no. 3: the shelf holds 40 m, and 100 m would be taken (60 m short).");
  }

  @Test
  void anEntryThatMovesYarnTheWrongWayIsRefused() {
    post(receive(1, 100));
    assertThat(refused(entry(2, EntryKind.RESERVE, move(SHELF, LOOM, 500))))
        .isEqualTo("The entry \"reserve\" cannot move Coral 8/2 no. 3 from the shelf to the loom for Quay towels.");
  }

  @Test
  void yarnSetAsideForOnePlanIsNotDrawnForAnother() {
    post(receive(1, 100));
    post(entry(2, EntryKind.RESERVE, move(SHELF, SET_ASIDE, 60)));
    assertThat(refused(entry(3, EntryKind.DRAW, move(SET_ASIDE, new Place.Loom("Scarf"), 10))))
        .isEqualTo("The entry \"draw\" cannot move Coral 8/2 no. 3 from what is set aside for Quay towels to the loom for Scarf.");
  }

  @Test
  void noYarnIsPromisedTwice() {
    post(receive(1, 100));
    post(entry(2, EntryKind.RESERVE, move(SHELF, SET_ASIDE, 60)));
    Entry greedy = entry(3, EntryKind.RESERVE, move(SHELF, new Place.Reserved("Scarf"), 30), move(SHELF, new Place.Reserved("Cape"), 20));
    assertThat(refused(greedy)).isEqualTo("Not enough Coral 8/2 no. 3: the shelf holds 40 m, and 50 m would be taken (10 m short).");
  }

  @Test
  void anEntryCannotBeMadeWrong() {
    assertThatThrownBy(() -> move(SHELF, SHELF, 1)).hasMessage("to is \"SHELF\", wanted another place than it comes from");
    assertThatThrownBy(() -> move(MAKER, SHELF, 0)).hasMessage("length is \"0 m\", wanted one over zero and up to 100000000 m");
    assertThatThrownBy(() -> new Place.Loom(" ")).hasMessage("plan is \" \", wanted a text that is not blank and has no spaces around it");
    assertThatThrownBy(() -> new Place.Loom("a\ud800")).hasMessageEndingWith("wanted one line of printable text");
    assertThatThrownBy(() -> entry(1, EntryKind.RECEIVE)).hasMessage("transfers is \"[]\", wanted at least one");
    assertThatThrownBy(() -> entry(1, EntryKind.RECOUNT, move(SHELF, new Place.Recount(), 1), move(new Place.Recount(), SHELF, 2)))
        .hasMessageEndingWith("wanted a skein only to leave or only to reach a place in one entry");
    assertThatThrownBy(() -> entry(1, EntryKind.REVERSAL, move(SHELF, MAKER, 1)))
        .hasMessage("reverses is \"\", wanted an original for a reversal and none for any other entry");
    assertThatThrownBy(() -> Entry.reversing(receive(1, 1), id(2), DAY, "Ida", " "))
        .hasMessage("note is \" \", wanted the reason for the reversal");
  }

  @Test
  void everyPlaceIsReadBackFromItsText() {
    for (Place.Kind kind : Place.Kind.values()) {
      Place place = Place.of(kind, kind.planned() ? "Quay (blue) towels)" : "");
      assertThat(Place.parse(place.text())).isEqualTo(place);
    }
    assertThat(SET_ASIDE.text()).isEqualTo("RESERVED(Quay towels)");
    for (String bad : List.of("", "shelf", "SHELF()", "LOOM", "LOOM()", "LOOM(a", "LOOM(a) ")) {
      assertThatThrownBy(() -> Place.parse(bad)).as(bad).isInstanceOf(IllegalArgumentException.class);
    }
  }

  @Test
  void theHashIsOverTextsWithTheirLengthsSoThatAnotherProgramCanCheckIt() throws Exception {
    String text = "16:hankbook entry 1\n64:" + "0".repeat(64) + "\n1:1\n36:00000000-0000-0000-0000-000000000001\n7:RECEIVE\n"
        + "10:2026-03-14\n3:Ida\n0:\n0:\n1:1\n15:Coral 8/2 no. 3\n5:MAKER\n5:SHELF\n7:1000000\n";
    assertThat(Chain.canonical(1, receive(1, 100), Chain.START)).isEqualTo(text);
    byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    assertThat(Chain.hash(1, receive(1, 100), Chain.START)).isEqualTo(HexFormat.of().formatHex(digest));
  }

  @Test
  void theAuditNamesAKeptBalanceThatIsWrong() {
    post(receive(1, 100));
    Balances kept = new Balances(Map.of(
        new Holding(CORAL, SHELF), Length.metres(-90), new Holding(CORAL, MAKER), Length.metres(-100)));
    assertThat(Audit.of(chain, kept).findings()).extracting(Finding::message).containsExactly(
        "The balances of Coral 8/2 no. 3 sum to -190 m over all places; they should sum to 0 m.",
        "Coral 8/2 no. 3: the shelf holds -90 m, less than nothing.",
        "Coral 8/2 no. 3: the shelf is kept as -90 m, but the entries add up to 100 m.");
  }

  @Test
  void theAuditNamesAnEntryThatBreaksTheRulesEvenWhenTheHashesWereMadeAnew() {
    ChainedEntry forged = Chain.link(1, entry(1, EntryKind.RESERVE, move(SHELF, SET_ASIDE, 60)), Chain.START);
    Audit audit = Audit.of(List.of(forged), Book.of(List.of(forged)).balances());
    assertThat(audit.firstBad()).contains(forged);
    assertThat(audit.findings().getFirst().message()).isEqualTo("Entry 1 (00000000-0000-0000-0000-000000000001) should not have been"
        + " taken: Not enough Coral 8/2 no. 3: the shelf holds 0 m, and 60 m would be taken (60 m short).");
  }

  @Test
  void theAuditNamesTheEntryAfterOneThatWasTakenOut() {
    for (int i = 1; i <= 3; i++) {
      post(receive(i, i));
    }
    ChainedEntry removed = chain.remove(1);
    assertThat(removed.number()).isEqualTo(2);
    assertThat(Audit.of(chain, Book.of(chain).balances()).findings()).extracting(Finding::message)
        .containsExactly("Entry 2 (00000000-0000-0000-0000-000000000003) is not as it was written: it bears the number 3.");
  }

  private void post(Entry entry) {
    Outcome outcome = book.post(entry);
    assertThat(outcome).isInstanceOf(Outcome.Posted.class);
    if (outcome instanceof Outcome.Posted(Book after, ChainedEntry link)) {
      book = after;
      chain.add(link);
    }
  }

  private String refused(Entry entry) {
    return book.post(entry) instanceof Outcome.Refused(Refusal refusal) ? refusal.message() : "not refused";
  }

  private static Entry receive(long id, long metres) {
    return entry(id, EntryKind.RECEIVE, move(MAKER, SHELF, metres));
  }

  private static Entry reverse(Entry original, long id) {
    return Entry.reversing(original, id(id), DAY, "Ida", "typed twice");
  }

  private static Entry entry(long id, EntryKind kind, Transfer... transfers) {
    return Entry.of(id(id), kind, DAY, "Ida", "", List.of(transfers));
  }

  private static Transfer move(Place from, Place to, long metres) {
    return new Transfer(CORAL, from, to, Length.metres(metres));
  }

  private static UUID id(long number) {
    return new UUID(0, number);
  }
}
