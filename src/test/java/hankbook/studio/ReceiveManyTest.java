package hankbook.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.ledger.EntryKind;
import hankbook.measure.Length;
import hankbook.store.Vendor;
import hankbook.yarn.PackageForm;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.joda.money.Money;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource
class ReceiveManyTest {
  private final Vendor vendor;

  @TempDir private Path folder;
  private Studio studio;
  private ReceiveMany receive;

  ReceiveManyTest(Vendor vendor) {
    this.vendor = vendor;
  }

  @BeforeEach
  void open() throws Exception {
    studio = Studio.open(vendor.ledger(folder), "Ida");
    receive = new ReceiveMany(studio);
  }

  @AfterEach
  void auditAndClose() {
    assertThat(new AuditLedger(studio).audit().audit().findings()).isEmpty();
    studio.close();
  }

  @Test
  void skeins_of_one_lot_come_in_one_entry_and_are_taken_back_together() throws Exception {
    receive.skeins(UUID.randomUUID(), List.of(skein("S1", 100), skein("S2", 99), skein("S3", 101)));
    List<JournalEntry> journal = new Journal(studio).newestFirst();
    assertThat(journal).hasSize(1);
    assertThat(journal.getFirst().chained().entry().kind()).isEqualTo(EntryKind.RECEIVE);
    assertThat(journal.getFirst().chained().entry().date()).isEqualTo(LocalDate.of(2026, 3, 1));
    assertThat(new Shelf(studio).skeins()).extracting(ShelfSkein::free).containsExactly(Length.metres(100), Length.metres(99), Length.metres(101));
    new Reverse(studio).entry(UUID.randomUUID(), journal.getFirst().chained().entry().id(), "sent back");
    assertThat(new Shelf(studio).skeins()).isEmpty();
  }

  @Test
  void the_same_is_received_once() throws Exception {
    UUID id = UUID.randomUUID();
    List<Skein> skeins = List.of(skein("S1", 100), skein("S2", 99));
    receive.skeins(id, skeins);
    receive.skeins(id, skeins);
    receive.skeins(UUID.randomUUID(), skeins);
    assertThat(new Journal(studio).newestFirst()).hasSize(1);
  }

  @Test
  void a_lot_that_was_taken_back_is_received_again_with_what_is_said_of_it_now() throws Exception {
    List<Skein> skeins = List.of(skein("S1", 100), skein("S2", 99), unmeasured("S3"));
    receive.skeins(UUID.randomUUID(), skeins);
    new Reverse(studio).entry(UUID.randomUUID(), new Journal(studio).newestFirst().getFirst().chained().entry().id(), "sent back");
    assertThat(new Shelf(studio).takenBack()).containsExactlyInAnyOrder("S1", "S2");
    receive.skeins(UUID.randomUUID(), List.of(skein("S1", 100), skein("S2", 95), unmeasured("S3")));
    receive.skeins(UUID.randomUUID(), List.of(skein("S1", 100), unmeasured("S3")));
    assertThat(new Shelf(studio).takenBack()).isEmpty();
    assertThat(new Shelf(studio).everySkein()).extracting(ShelfSkein::free).containsExactly(Length.metres(100), Length.metres(95), Length.ZERO);
    assertThat(new Journal(studio).newestFirst()).extracting(entry -> entry.chained().entry().kind())
        .containsExactly(EntryKind.RECOUNT, EntryKind.RECEIVE, EntryKind.REVERSAL, EntryKind.RECEIVE);
  }

  @Test
  void a_taken_back_skein_does_not_come_again_as_another_yarn() throws Exception {
    receive.skeins(UUID.randomUUID(), List.of(skein("S1", 100)));
    new Reverse(studio).entry(UUID.randomUUID(), new Journal(studio).newestFirst().getFirst().chained().entry().id(), "sent back");
    Skein other = new Skein(
        "S1", new YarnColour("Beck", "Milk"), "", "", Optional.empty(), PackageForm.SKEIN, Optional.of(Length.metres(9)), Optional.empty(), false, "", "", Optional.empty(), Optional.empty(), Optional.empty());
    assertThatThrownBy(() -> receive.skeins(UUID.randomUUID(), List.of(other, skein("S2", 9)))).isInstanceOf(NotDone.class).hasMessageStartingWith("There is another skein S1 already");
    assertThat(new Shelf(studio).skein("S2")).isEmpty();
  }

  @Test
  void one_that_cannot_be_taken_is_named_and_none_is_received() throws Exception {
    receive.skeins(UUID.randomUUID(), List.of(skein("S2", 50)));
    assertThatThrownBy(() -> receive.skeins(UUID.randomUUID(), List.of(skein("S1", 100), skein("S2", 99)))).isInstanceOf(NotDone.class)
        .hasMessage("There is another skein S2 already, Skerry 16/2 Woad; give another code. Nothing was changed.");
    assertThatThrownBy(() -> receive.skeins(UUID.randomUUID(), List.of(skein("S3", 100), skein("S3", 99)))).isInstanceOf(NotDone.class).hasMessageStartingWith("S3 is given to two skeins");
    assertThatThrownBy(() -> receive.skeins(UUID.randomUUID(), List.of(skein("S3", 100), skein("S4", 0)))).isInstanceOf(NotDone.class).hasMessageStartingWith("S4 has nothing on it");
    assertThatThrownBy(() -> receive.skeins(UUID.randomUUID(), List.of(priced("S3", "EUR 5"), priced("S4", "SEK 50")))).isInstanceOf(NotDone.class).hasMessageContaining("S4");
    assertThat(new Shelf(studio).everySkein()).extracting(held -> held.skein().code()).containsExactly("S2");
  }

  @Test
  void those_whose_length_is_not_known_are_written_down_and_count_as_nothing() throws Exception {
    receive.skeins(UUID.randomUUID(), List.of(skein("S1", 100), unmeasured("S2")));
    assertThat(new Journal(studio).newestFirst().getFirst().chained().entry().transfers()).hasSize(1);
    assertThat(new Shelf(studio).skein("S2").orElseThrow().skein().isMeasured()).isFalse();
  }

  @Test
  void what_happened_to_one_skein_is_found_without_the_rest() throws Exception {
    receive.skeins(UUID.randomUUID(), List.of(skein("S1", 100), skein("S2", 99)));
    new PartWith(studio).skein(UUID.randomUUID(), "S1", Length.metres(10), "given");
    new PartWith(studio).skein(UUID.randomUUID(), "S2", Length.metres(10), "sold");
    UUID given = new Journal(studio).ofSkein("S1").getFirst().chained().entry().id();
    new Reverse(studio).entry(UUID.randomUUID(), given, "came back");
    Journal journal = new Journal(studio);
    for (String code : List.of("S1", "S2", "S9")) {
      assertThat(journal.ofSkein(code)).as(code).isEqualTo(journal.newestFirst().stream().filter(entry -> entry.moves(code)).toList());
    }
    assertThat(journal.ofSkein("S1")).extracting(entry -> entry.chained().entry().kind()).containsExactly(EntryKind.REVERSAL, EntryKind.PART_WITH, EntryKind.RECEIVE);
    assertThat(journal.ofSkein("S1").get(1).reversedBy()).isPresent();
  }

  private static Skein skein(String code, long metres) {
    return skein(code, Optional.of(Length.metres(metres)), Optional.empty());
  }

  private static Skein unmeasured(String code) {
    return skein(code, Optional.empty(), Optional.empty());
  }

  private static Skein priced(String code, String cost) {
    return skein(code, Optional.of(Length.metres(10)), Optional.of(Money.parse(cost)));
  }

  private static Skein skein(String code, Optional<Length> label, Optional<Money> cost) {
    return new Skein(
        code, new YarnColour("Skerry 16/2", "Woad"), "", "", Optional.empty(), PackageForm.SKEIN, label, Optional.empty(), false, "K7", "", cost, Optional.of(LocalDate.of(2026, 3, 1)),
        Optional.empty());
  }
}
