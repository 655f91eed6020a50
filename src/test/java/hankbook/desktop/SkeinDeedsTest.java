package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.measure.Length;
import hankbook.studio.Draw;
import hankbook.studio.Journal;
import hankbook.studio.Plans;
import hankbook.studio.Receive;
import hankbook.studio.Reserve;
import hankbook.studio.SampleStudio;
import hankbook.studio.Shelf;
import hankbook.studio.ShelfSkein;
import hankbook.studio.Studio;
import hankbook.store.LedgerAddress;
import hankbook.yarn.PackageForm;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is done with the chosen skein beside the shelf, without a window. */
class SkeinDeedsTest {
  private static final String STOCK = """
      code,yarn,colour,fibre,grist,form,length,lot,location,received
      S1,Skerry 16/2,Woad,cotton,16/2 cotton,cone,1000 m,K1,Left shelf,2025-02-11
      S2,Skerry 16/2,Woad,cotton,16/2 cotton,cone,500 m,K1,Left shelf,2025-02-11
      S3,Skerry 16/2,Woad,cotton,16/2 cotton,cone,400 m,K2,Chest,2025-02-11
      S4,Tussock,Peat,wool,5.5 run,skein,100 m,,Chest,2025-02-11
      """;

  @TempDir private Path folder;
  private final Work atOnce = new Work(Runnable::run, Runnable::run);
  private final Status status = new Status();
  private Studio studio;
  private ShelfModel shelf;
  private SkeinDeeds deeds;

  @BeforeEach
  void open() throws Exception {
    studio = Studio.open(new LedgerAddress.InFile(folder.resolve("ledger")), "Ada");
    new Receive(studio).file("stock.csv", STOCK);
    shelf = new ShelfModel(studio, atOnce, status);
    deeds = SkeinDeeds.of(studio, atOnce, status, shelf);
    shelf.chosenProperty().subscribe(chosen -> deeds.turnTo(chosen));
    shelf.refresh();
  }

  @AfterEach
  void close() {
    studio.close();
  }

  @Test
  void turning_to_a_skein_outlives_the_shelf_being_read_anew_meanwhile() {
    List<Runnable> away = new ArrayList<>();
    ShelfModel late = new ShelfModel(studio, new Work(away::add, Runnable::run), status);
    late.open("S2");
    late.refresh();
    away.forEach(Runnable::run);
    assertThat(late.chosenProperty().get().map(SkeinRow::code)).contains("S2");
  }

  @Test
  void nothing_can_be_wound_off_while_the_preview_is_to_an_earlier_length() {
    choose("S1");
    List<Runnable> away = new ArrayList<>();
    WindingOff winding = new WindingOff(studio, new Work(away::add, Runnable::run), status, shelf);
    winding.turnTo(shelf.chosenProperty().get());
    winding.watch(true);
    winding.length().set("300 m");
    List.copyOf(away).forEach(Runnable::run);
    assertThat(winding.act().isPossible()).isTrue();
    winding.length().set("200 m");
    assertThat(winding.act().whyNotProperty().get()).isEqualTo("It is being reckoned.");
    List.copyOf(away).forEach(Runnable::run);
    assertThat(winding.act().isPossible()).isTrue();
  }

  @Test
  void what_is_half_typed_beside_a_skein_is_known_as_begun() {
    choose("S1");
    deeds.windingOff().watch(true);
    assertThat(deeds.isBegun()).as("a proposed code and what is said already").isFalse();
    deeds.moving().placeProperty().set("Attic");
    assertThat(deeds.isBegun()).isTrue();
    deeds.moving().placeProperty().set("");
    deeds.describing().lotProperty().set("K9");
    assertThat(deeds.isBegun()).isTrue();
    choose("S2");
    assertThat(deeds.isBegun()).isFalse();
  }

  @Test
  void yarn_is_wound_off_onto_a_new_code_after_both_results_were_shown() {
    choose("S1");
    WindingOff winding = deeds.windingOff();
    winding.watch(true);
    assertThat(winding.codeProperty().get()).isEqualTo("S5");
    assertThat(winding.act().whyNotProperty().get()).isEqualTo("Type how much is wound off.");
    winding.length().set("300 m");
    winding.formProperty().set(PackageForm.BALL);
    assertThat(winding.previewProperty().get()).isEqualTo("S1 would hold 700.0 m ± 35.2 m.\nS5 would hold 300.0 m ± 9.0 m.");
    winding.wind();
    assertThat(skein("S5").free()).isEqualTo(Length.metres(300));
    assertThat(skein("S5").skein().form()).isEqualTo(PackageForm.BALL);
    assertThat(status.lastProperty().get().text()).isEqualTo("Wound yarn of S1 onto S5.");
    assertThat(winding.act().isPossible()).isFalse();
  }

  @Test
  void more_than_is_free_and_a_code_that_is_taken_are_refused_beside_the_button() {
    choose("S1");
    WindingOff winding = deeds.windingOff();
    winding.watch(true);
    winding.length().set("1001 m");
    assertThat(winding.act().whyNotProperty().get()).startsWith("Of S1 only 1\u202F000.0 m are free");
    winding.length().set("10 m");
    winding.codeProperty().set("S2");
    assertThat(winding.act().whyNotProperty().get()).startsWith("There is a skein S2 already");
    assertThat(winding.act().isPossible()).isFalse();
    assertThat(winding.previewProperty().get()).isEmpty();
    winding.codeProperty().set("");
    winding.allProperty().set(true);
    assertThat(winding.act().whyNotProperty().get()).isEqualTo("Type a code for the new one.");
  }

  @Test
  void two_of_one_lot_are_joined_and_those_of_its_lot_are_offered_first() {
    choose("S2");
    Joining joining = deeds.joining();
    joining.watch(true);
    assertThat(joining.others()).extracting(like -> like.code()).containsExactly("S1", "S3");
    joining.otherProperty().set(Optional.of(joining.others().getFirst()));
    assertThat(joining.differProperty().get()).isFalse();
    assertThat(joining.previewProperty().get()).isEqualTo("S2 would be empty.\nS1 would hold 1\u202F500.0 m ± 45.0 m.");
    joining.join();
    assertThat(skein("S1").free()).isEqualTo(Length.metres(1500));
    assertThat(skein("S2").isUsedUp()).isTrue();
  }

  @Test
  void lots_are_mixed_only_where_that_is_said() {
    choose("S2");
    Joining joining = deeds.joining();
    joining.watch(true);
    joining.otherProperty().set(Optional.of(joining.others().getLast()));
    assertThat(joining.act().whyNotProperty().get()).startsWith("They are of different lots");
    joining.mixProperty().set(true);
    joining.join();
    assertThat(skein("S3").skein().lot()).isEqualTo("K1 + K2");
    choose("S4");
    assertThat(joining.act().whyNotProperty().get()).isEqualTo("There is no other skein of this yarn and colour with yarn on it.");
  }

  @Test
  void one_skein_or_all_of_its_lot_or_of_its_place_are_moved() {
    choose("S1");
    Moving moving = deeds.moving();
    assertThat(moving.codesProperty().get()).isEqualTo("S1");
    assertThat(moving.act().whyNotProperty().get()).isEqualTo("Type where they will lie.");
    moving.withItsLot();
    assertThat(moving.wordsProperty().get()).isEqualTo("Move 2 skeins");
    moving.placeProperty().set("Shelf 2, left");
    moving.move();
    assertThat(skein("S1").skein().location()).isEqualTo("Shelf 2, left");
    assertThat(skein("S2").skein().location()).isEqualTo("Shelf 2, left");
    assertThat(skein("S3").skein().location()).isEqualTo("Chest");
    assertThat(status.lastProperty().get().text()).isEqualTo("2 skeins lie in Shelf 2, left now.");
    choose("S3");
    moving.withItsPlace();
    assertThat(moving.codesProperty().get()).isEqualTo("S3 S4");
    moving.codesProperty().set("S3, S9");
    assertThat(moving.act().whyNotProperty().get()).isEqualTo("There is no skein S9.");
  }

  @Test
  void lot_and_day_are_put_right_and_nothing_is_written_twice() {
    choose("S4");
    Describing describing = deeds.describing();
    assertThat(describing.act().whyNotProperty().get()).isEqualTo("So it is said already; change what was wrong.");
    describing.lotProperty().set("P7");
    describing.received().textProperty().set("2025-02-31");
    assertThat(describing.act().isPossible()).isFalse();
    describing.received().textProperty().set("2025-02-12");
    describing.write();
    assertThat(skein("S4").skein().lot()).isEqualTo("P7");
    assertThat(skein("S4").skein().received()).hasValueSatisfying(day -> assertThat(day).hasToString("2025-02-12"));
    assertThat(describing.act().isPossible()).isFalse();
  }

  @Test
  void what_a_loom_did_not_use_comes_back_to_the_shelf() throws Exception {
    Studio sample = Studio.open(new LedgerAddress.InFile(folder.resolve("sample")), "Ada");
    try (sample) {
      SampleStudio.fill(sample);
      String plan = "Quay towels";
      assertThat(new Plans(sample).names()).contains(plan);
      new Reserve(sample).plan(UUID.randomUUID(), plan, false);
      new Draw(sample).plan(UUID.randomUUID(), plan);
      ShelfModel there = new ShelfModel(sample, atOnce, status);
      there.refresh();
      Returning returning = new Returning(sample, atOnce, status, there::refresh);
      SkeinRow row = there.shown().stream().filter(each -> each.onLoom().length().isPositive()).findFirst().orElseThrow();
      returning.turnTo(Optional.of(row));
      assertThat(returning.planProperty().get()).contains(plan);
      returning.length().set("1000000 m");
      assertThat(returning.act().whyNotProperty().get()).startsWith("Only ");
      returning.length().set("10 m");
      int before = new Journal(sample).newestFirst().size();
      returning.record();
      assertThat(new Journal(sample).newestFirst()).hasSize(before + 1);
      assertThat(new Shelf(sample).skein(row.code()).orElseThrow().allOnLoom()).isEqualTo(row.onLoom().length().minus(Length.metres(10)));
    }
  }

  private void choose(String code) {
    shelf.choose(shelf.shown().stream().filter(row -> row.code().equals(code)).findFirst());
  }

  private ShelfSkein skein(String code) {
    return new Shelf(studio).skein(code).orElseThrow();
  }
}
