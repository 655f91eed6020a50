package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.cost.Trait;
import hankbook.desktop.say.Language;
import hankbook.desktop.say.Say;
import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import hankbook.measure.Sett;
import hankbook.store.LedgerAddress;
import hankbook.studio.Plans;
import hankbook.studio.Reserve;
import hankbook.studio.SampleStudio;
import hankbook.studio.Shelf;
import hankbook.studio.Studio;
import hankbook.yarn.YarnColour;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import javafx.scene.control.TextField;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxToolkit;

/** Plans duplicated, varied and laid side by side, and how the list finds and orders them. */
class BesideModelTest {
  private static final PlanField SETT = PlanField.of(PlanPart.WARP, "sett");

  @TempDir private Path folder;
  private Studio studio;
  private PlansModel model;

  @BeforeEach
  void open() throws Exception {
    studio = Studio.open(new LedgerAddress.InFile(folder.resolve("ledger")), "Ida");
    SampleStudio.fill(studio);
    model = new PlansModel(new StudioPlanDesk(studio), new Work(Runnable::run, Runnable::run), () -> {});
    model.refresh();
  }

  @AfterEach
  void close() {
    studio.close();
  }

  private BesideModel beside() {
    return model.beside();
  }

  private BesideColumn column(int place) {
    return beside().columns().get(place);
  }

  private String said() {
    return model.acts().saidProperty().get().text();
  }

  private String keptSett(String plan) {
    return PlanDraft.of(new Plans(studio).text(plan).orElseThrow()).text(SETT);
  }

  private List<String> shown() {
    return model.list().shown().stream().map(PlanRow::name).toList();
  }

  private String figures(Trait trait) {
    return beside().answer().foundProperty().get().orElseThrow().alternatives().orElseThrow().aspects().stream()
        .filter(aspect -> aspect.trait() == trait).findFirst().orElseThrow().figures().toString();
  }

  @Test
  void aVariantMayBeTakenAwayWhileItsPlanIsBeingMade() {
    List<Runnable> away = new ArrayList<>();
    List<String> begun = new ArrayList<>();
    BesideModel late = new BesideModel(new StudioPlanDesk(studio), new Work(away::add, Runnable::run), begun::add);
    late.begin("Quay towels", PlanDraft.of(new Plans(studio).text("Quay towels").orElseThrow()));
    BesideColumn variant = late.columns().get(1);
    assertThat(late.isBegun()).isFalse();
    variant.width().textProperty().set("40 cm");
    assertThat(late.isBegun()).isTrue();
    late.makePlan(variant);
    late.remove(variant);
    List.copyOf(away).forEach(Runnable::run);
    assertThat(begun).hasSize(1);
    assertThat(late.columns()).extracting(BesideColumn::name).containsExactly("Quay towels");
  }

  @Test
  void aDuplicateIsOpenedWithEverythingCopiedAndNothingReserved() throws Exception {
    new Reserve(studio).plan(UUID.randomUUID(), "Quay towels", false);
    model.choose("Quay towels");
    model.editor().enter(SETT, "9/cm");
    model.duplicate();
    assertThat(model.editor().nameProperty().get()).isEqualTo("Quay towels 2");
    assertThat(keptSett("Quay towels 2")).isEqualTo("9/cm");
    assertThat(said()).isEqualTo("Quay towels 2 says the same as Quay towels, and nothing is reserved for it. Put it away to undo this.");
    assertThat(new Shelf(studio).skeins()).noneMatch(skein -> skein.reserved().containsKey("Quay towels 2"));
    model.act(PlanAct.PUT_AWAY);
    assertThat(model.names()).doesNotContain("Quay towels 2");
  }

  @Test
  void aVariantIsReckonedBesideItsPlanAndBecomesAPlanOnlyWhenThatIsAsked() {
    model.choose("Quay towels");
    model.layBeside();
    assertThat(beside().openProperty().get()).isTrue();
    assertThat(beside().columns()).extracting(BesideColumn::name).containsExactly("Quay towels", "Variant A");
    column(1).counts().values().iterator().next().textProperty().set("40");
    assertThat(figures(Trait.VERDICT)).contains("COVERED").contains("SHORT");
    column(1).sett().textProperty().set("many");
    assertThat(beside().answer().foundProperty().get()).isEmpty();
    column(1).sett().textProperty().set("8/cm");
    column(1).fromProperty().set(Optional.of(new YarnColour("Skerry 16/2", "Woad")));
    column(1).toProperty().set(Optional.of(new YarnColour("Skerry 16/2", "Moss")));
    assertThat(keptSett("Quay towels")).isEqualTo("10/cm");
    beside().makePlan(column(1));
    assertThat(beside().columns()).extracting(BesideColumn::name).containsExactly("Quay towels", "Quay towels 2");
    assertThat(keptSett("Quay towels 2")).isEqualTo("8/cm");
    assertThat(new Plans(studio).text("Quay towels 2").orElseThrow()).contains("Moss").doesNotContain("Woad");
    assertThat(keptSett("Quay towels")).isEqualTo("10/cm");
    assertThat(beside().openProperty().get()).isTrue();
  }

  @Test
  void aVariantIsTypedWithTheUsersDecimalMarkAndShowsItsPlansOwnValue() throws Exception {
    FxToolkit.registerPrimaryStage();
    Say.in(Language.GERMAN);
    try {
      model.choose("Quay towels");
      model.editor().enter(SETT, "9.5/cm");
      model.layBeside();
      TextField sett = (TextField) new BesideHead(beside(), column(1), 1, List::of).lookup("#beside-a-sett");
      assertThat(sett.getPromptText()).isEqualTo("9,5/cm");
      sett.setText("8,5/cm");
      assertThat(column(1).sett().value()).contains(Sett.parse("8.5/cm"));
      sett.setText("8.5/cm");
      assertThat(column(1).isBad()).isTrue();
      column(1).sett().textProperty().set("7.25/cm");
      assertThat(sett.getText()).isEqualTo("7,25/cm");
    } finally {
      Say.in(Language.ENGLISH);
    }
  }

  @Test
  void atMostFourLieSideBySideAndOneThatCannotBeReckonedHidesNoOther() {
    model.choose("Quay towels");
    model.layBeside();
    beside().addPlan("Linen runner");
    assertThat(beside().others(model.names())).containsExactly("Ash blanket", "Gorse shawl");
    beside().addVariant();
    assertThat(beside().columns().getLast().name()).isEqualTo("Variant B");
    assertThat(beside().noMoreProperty().get()).isEqualTo("Four lie side by side; take one away first.");
    beside().addPlan("Ash blanket");
    assertThat(beside().columns()).hasSize(4);
    column(1).width().textProperty().set("90000 km");
    column(1).width().textProperty().set("");
    column(1).fromProperty().set(Optional.of(new YarnColour("Beck", "Milk")));
    column(1).toProperty().set(Optional.of(new YarnColour("Beck", "Slate")));
    assertThat(beside().answer().foundProperty().get().orElseThrow().all()).extracting(one -> one.contender().isPresent()).containsExactly(true, false, true, true);
    beside().remove(column(1));
    beside().remove(column(0));
    assertThat(beside().columns()).extracting(BesideColumn::name).containsExactly("Quay towels", "Linen runner", "Variant B");
    model.choose("Linen runner");
    model.layBeside();
    assertThat(beside().columns()).extracting(BesideColumn::name).containsExactly("Linen runner", "Variant A");
  }

  @Test
  void aNameThatDiffersInCapitalsAloneIsTakenOnlyWhereItIsMeant() {
    model.begin("quay TOWELS");
    assertThat(model.names()).doesNotContain("quay TOWELS");
    assertThat(model.beginning().nearlyProperty().get().orElseThrow().words()).isEqualTo("There is a plan Quay towels already, the same but for capitals.");
    model.beginning().openThat();
    assertThat(model.editor().nameProperty().get()).isEqualTo("Quay towels");
    model.begin("quay TOWELS");
    model.beginning().beginAllTheSame();
    assertThat(model.editor().nameProperty().get()).isEqualTo("quay TOWELS");
    assertThat(model.beginning().nearlyProperty().get()).isEmpty();
    model.choose("Linen runner");
    model.rename("ash BLANKET");
    assertThat(said()).isEqualTo("There is also a plan Ash blanket, the same but for capitals.");
  }

  @Test
  void plansAreFoundByPlainWordsAndPutInOrder() {
    PlanList list = model.list();
    assertThat(shown()).containsExactly("Ash blanket", "Gorse shawl", "Linen runner", "Quay towels");
    list.orderProperty().set(PlanOrdering.BY_VERDICT);
    assertThat(shown().getFirst()).isEqualTo("Gorse shawl");
    list.orderProperty().set(PlanOrdering.BY_DATE);
    model.choose("Linen runner");
    model.editor().enter(SETT, "9/cm");
    model.keep();
    model.refresh();
    assertThat(shown().getFirst()).isEqualTo("Linen runner");
    list.wordsProperty().set("SHORT");
    assertThat(shown()).contains("Gorse shawl").doesNotContain("Quay towels");
    list.wordsProperty().set("chalk covered");
    assertThat(shown()).contains("Quay towels").doesNotContain("Gorse shawl");
    list.wordsProperty().set("nothing like it");
    assertThat(shown()).isEmpty();
  }
}
