package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.ledger.ChainedEntry;
import hankbook.ledger.Entry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.studio.NumberedEntry;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;

class JournalRowTest {
  private static final Place SHELF = new Place.Shelf();
  private static final Place REWOUND = new Place.Rewound();

  @Test
  void whatIsWoundOffIsSaidOnceThoughItLeavesOneSkeinAndComesOntoAnother() {
    assertThat(yarn(EntryKind.REWIND, transfer("A", SHELF, REWOUND), transfer("B", REWOUND, SHELF))).isEqualTo("12.0 m of A, B");
  }

  @Test
  void whatIsReceivedOfTwoSkeinsIsSaidTogether() {
    assertThat(yarn(EntryKind.RECEIVE, transfer("A", new Place.Maker(), SHELF), transfer("B", new Place.Maker(), SHELF))).isEqualTo("24.0 m of A, B");
  }

  private static Transfer transfer(String skein, Place from, Place to) {
    return new Transfer(skein, from, to, Length.metres(12));
  }

  private static String yarn(EntryKind kind, Transfer... transfers) {
    Entry entry = new Entry(UUID.randomUUID(), kind, LocalDate.of(2026, 3, 14), "Ada", "", List.of(transfers), Optional.empty());
    return JournalRow.of(new NumberedEntry(new ChainedEntry(1, entry, "", ""), Instant.EPOCH, Optional.empty(), Optional.empty())).yarn();
  }
}
