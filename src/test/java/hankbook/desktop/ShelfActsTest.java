package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.store.LedgerAddress;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.Grists;
import hankbook.studio.Journal;
import hankbook.studio.NotDone;
import hankbook.studio.PartWith;
import hankbook.studio.Reverse;
import hankbook.studio.Shelf;
import hankbook.studio.ShelfSkein;
import hankbook.studio.Studio;
import hankbook.yarn.Doubts;
import hankbook.yarn.GristSample;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShelfActsTest {
  @TempDir
  Path dir;

  private final List<Runnable> waiting = new ArrayList<>();
  private final Work slow = new Work(waiting::add, Runnable::run);
  private final Work atOnce = new Work(Runnable::run, Runnable::run);
  private final Status status = new Status();
  private Studio studio;
  private ShelfModel shelf;
  private ReceiveModel receiving;

  @BeforeEach
  void openAndReceiveOne() throws LedgerUnavailable {
    studio = Studio.open(new LedgerAddress.InFile(dir.resolve("ledger")), "Ada");
    shelf = new ShelfModel(studio, atOnce, status);
    receiving = new ReceiveModel(studio, slow, status, shelf);
    receiving.begin();
    type("yarn", "Skerry 16/2");
    type("colour", "Woad");
    type("length", "1600 m");
    receiving.receive();
    doWhatWaits();
  }

  @AfterEach
  void close() {
    studio.close();
  }

  @Test
  void aDoubleClickReceivesOnce() {
    type("length", "100 m");
    receiving.receive();
    receiving.receive();
    doWhatWaits();
    assertThat(new Journal(studio).newestFirst()).hasSize(2);
    assertThat(shelf.shown()).extracting(SkeinRow::code).containsExactly("S001", "S002");
  }

  @Test
  void aSkeinWhoseReceiptWasTakenBackIsReceivedOnceMore() throws NotDone {
    new Reverse(studio).entry(UUID.randomUUID(), new Journal(studio).newestFirst().getFirst().chained().entry().id(), "sent back");
    ReceiveModel again = new ReceiveModel(studio, atOnce, status, shelf);
    Map.of("code", "S001", "yarn", "Skerry 16/2", "colour", "Woad", "length", "1600 m").forEach((column, text) -> again.field(column).set(text));
    assertThat(again.act().isPossible()).isFalse();
    shelf.refresh();
    again.begin();
    assertThat(again.act().isPossible()).isTrue();
    again.receive();
    assertThat(new Shelf(studio).skein("S001").orElseThrow().free()).isEqualTo(Length.metres(1600));
  }

  @Test
  void aSuccessIsToldEvenIfSomethingElseWasTypedMeanwhile() {
    type("length", "100 m");
    receiving.receive();
    assertThat(receiving.act().isPossible()).isFalse();
    type("location", "the attic");
    assertThat(receiving.act().isPossible()).isFalse();
    receiving.receive();
    doWhatWaits();
    assertThat(status.lastProperty().get().text()).startsWith("Received S002, ");
    assertThat(shelf.shown()).extracting(SkeinRow::code).containsExactly("S001", "S002");
    assertThat(receiving.field("length").get()).isEqualTo("100 m");
    assertThat(receiving.message("code").get()).isEqualTo("Another skein bears this code.");
    assertThat(receiving.act().isPossible()).isFalse();
  }

  @Test
  void aMeasureThatIsUnderWayIsClearedThoughTheShelfWasReadAnewMeanwhile() {
    Recounting recounting = new Recounting(studio, slow, status, shelf::refresh);
    recounting.turnTo(Optional.of(shelf.shown().getFirst()));
    recounting.fields().found.textProperty().set("1580 m");
    recounting.record();
    recounting.turnTo(Optional.of(shelf.shown().getFirst()));
    doWhatWaits();
    assertThat(recounting.fields().found.textProperty().get()).isEmpty();
    assertThat(status.lastProperty().get().text()).startsWith("Measured S001 again");
  }

  @Test
  void aCodeOfAUsedUpSkeinIsNotProposedNorTaken() throws NotDone {
    new PartWith(studio).skein(UUID.randomUUID(), "S001", Length.metres(1600), "sold");
    shelf.refresh();
    assertThat(shelf.shown()).isEmpty();
    assertThat(receiving.field("code").get()).isEqualTo("S002");
    type("code", "S001");
    assertThat(receiving.message("code").get()).isEqualTo("Another skein bears this code.");
    assertThat(receiving.act().isPossible()).isFalse();
  }

  @Test
  void theFormSaysWithWhatLengthASkeinWillCount() {
    type("length", "");
    assertThat(receiving.readingProperty().get()).startsWith("Counts as unmeasured");
    type("gross", "240 g");
    assertThat(receiving.readingProperty().get()).isEqualTo("The weight alone gives no length: give the grist too.");
    type("tare", "40 g");
    type("grist", "tex 100");
    assertThat(receiving.readingProperty().get()).isEqualTo("Counts with 2\u202F000.0 m, weighed: 200 g of yarn at 100 tex.");
    type("tare", "400 g");
    assertThat(receiving.message("tare").get()).isEqualTo("Wanted: at most the gross, 240 g.");
  }

  @Test
  void aYarnsOwnGristIsUsedForWhatIsReceivedAndSaidBeforehand() throws NotDone {
    new Grists(studio).weigh("Skerry 16/2", new GristSample(Length.metres(10), new Mass(700), new Mass(10), Length.parse("5 cm")));
    shelf.refresh();
    type("gross", "70 g");
    assertThat(receiving.readingProperty().get()).isEqualTo("Counts with 1\u202F000.0 m, weighed: 70 g of yarn at 70 tex.");
    assertThat(receiving.surenessProperty().get()).isEqualTo("± 8.7 m, by the yarn's own grist.");
    type("regain", "12 %");
    assertThat(receiving.act().whyNotProperty().get()).startsWith("Still wanted: a fibre whose standard regain is known");
    type("fibre", "cotton");
    type("regain", "8.5 %");
    receiving.receive();
    doWhatWaits();
    assertThat(status.lastProperty().get().text()).endsWith(" 1\u202F000.0 m.");
    assertThat(new Shelf(studio).skein("S002").orElseThrow().free()).isEqualTo(Length.metres(1000));
  }

  @Test
  void aWeightThatIsLessThanWhatIsSetAsideIsNotWrittenDown() throws NotDone {
    new Grists(studio).weigh("Skerry 16/2", new GristSample(Length.metres(10), new Mass(700), new Mass(10), Length.parse("5 cm")));
    shelf.refresh();
    ShelfSkein held = new Shelf(studio).skein("S001").orElseThrow();
    ShelfSkein promised = new ShelfSkein(held.skein(), Length.metres(600), Map.of("Towels", Length.metres(1000)), Map.of());
    Recounting recounting = new Recounting(studio, atOnce, status, shelf::refresh);
    recounting.turnTo(Optional.of(SkeinRow.of(promised, Doubts.DEFAULT)));
    recounting.fields().way.set(RecountWay.WEIGHT);
    recounting.fields().gross.set("63 g");
    assertThat(recounting.act().whyNotProperty().get()).isEqualTo("That is less than the 1\u202F000.0 m set aside; release those first.");
    recounting.fields().gross.set("70");
    assertThat(recounting.act().whyNotProperty().get()).startsWith("Wanted: a mass such as 100 g");
    recounting.fields().gross.set("77 g");
    assertThat(recounting.act().isPossible()).isTrue();
    assertThat(recounting.readingProperty().get()).startsWith("500.0 m less than the ledger says.");
  }

  @Test
  void measuringAgainSaysTheDifferenceBeforeItIsWrittenDown() {
    Recounting recounting = new Recounting(studio, atOnce, status, shelf::refresh);
    recounting.turnTo(Optional.of(shelf.shown().getFirst()));
    recounting.fields().found.textProperty().set("1,2 m");
    assertThat(recounting.fields().found.messageProperty().get()).startsWith("Wanted: a length such as");
    recounting.record();
    recounting.fields().found.textProperty().set("1600 m");
    assertThat(recounting.act().whyNotProperty().get()).isEqualTo("That is what the ledger says already.");
    recounting.fields().found.textProperty().set("1580 m");
    assertThat(recounting.readingProperty().get()).isEqualTo("20.0 m less than the ledger says.");
    recounting.record();
    assertThat(new Shelf(studio).skein("S001").orElseThrow().free()).isEqualTo(Length.metres(1580));
    assertThat(recounting.fields().found.textProperty().get()).isEmpty();
  }

  private void type(String column, String text) {
    receiving.field(column).set(text);
  }

  private void doWhatWaits() {
    List<Runnable> now = List.copyOf(waiting);
    waiting.clear();
    now.forEach(Runnable::run);
  }
}
