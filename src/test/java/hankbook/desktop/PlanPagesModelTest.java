package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.allot.WindingSheet;
import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import hankbook.exchange.WindingText;
import hankbook.measure.Sett;
import hankbook.store.LedgerAddress;
import hankbook.studio.Plans;
import hankbook.studio.SampleStudio;
import hankbook.studio.Studio;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The models of the pages beside a plan's form, on the sample studio. */
class PlanPagesModelTest {
  private static final PlanField SETT = PlanField.of(PlanPart.WARP, "sett");
  private static final PlanField ENDS = PlanField.of(PlanPart.WARP, "ends");

  private final Deque<Runnable> waiting = new ArrayDeque<>();
  private final List<String> asked = new ArrayList<>();
  @TempDir private Path folder;
  private Studio studio;
  private PlansModel model;

  @BeforeEach
  void open() throws Exception {
    studio = Studio.open(new LedgerAddress.InFile(folder.resolve("ledger")), "Ida");
    SampleStudio.fill(studio);
    model = new PlansModel(counting(), new Work(Runnable::run, Runnable::run), () -> {});
  }

  @AfterEach
  void close() {
    studio.close();
  }

  /** A desk that writes down what it is asked. */
  private PlanDesk counting() {
    PlanDesk desk = new StudioPlanDesk(studio);
    return (PlanDesk) Proxy.newProxyInstance(getClass().getClassLoader(), new Class<?>[] {PlanDesk.class}, (_, method, given) -> {
      asked.add(method.getName());
      try {
        return method.invoke(desk, given);
      } catch (InvocationTargetException refused) {
        throw refused.getCause();
      }
    });
  }

  private PlansModel open(String name) {
    model.refresh();
    model.choose(name);
    return model;
  }

  private String kept(String plan, PlanField field) {
    return PlanDraft.of(new Plans(studio).text(plan).orElseThrow()).text(field);
  }

  private WindingSheet sheet() {
    return model.winding().sheet().foundProperty().get().orElseThrow().sheet();
  }

  @Test
  void aSheetIsWorkedOutOnlyWhileSomeoneLooksAtIt() {
    open("Quay towels").winding().threads().textProperty().set("2");
    assertThat(asked).doesNotContain("winding", "fit");
    model.winding().sheet().watch(true);
    assertThat(sheet().wish().threads()).isEqualTo(2);
    assertThat(asked).containsOnlyOnce("winding").doesNotContain("fit");
  }

  @Test
  void theThreadsThatAreTriedArePutIntoThePlanOnlyWhenTheyAreTaken() {
    open("Quay towels").winding().sheet().watch(true);
    assertThat(sheet().passes()).isEqualTo(556);
    model.winding().threads().textProperty().set("2");
    assertThat(sheet().passes()).isLessThan(556);
    assertThat(model.winding().text()).isEqualTo(WindingText.of(sheet(), 1)).contains("let the plan say 2 before you reserve.");
    model.winding().takeThreads();
    assertThat(kept("Quay towels", PlanField.of(PlanPart.WINDING, "threads"))).isEqualTo("2");
    assertThat(model.winding().text()).doesNotContain("let the plan say");
  }

  @Test
  void whatCannotBeReadIsSaidBesideItsFieldAndLeavesNoSheet() {
    open("Quay towels").winding().sheet().watch(true);
    model.winding().threads().textProperty().set("a few");
    assertThat(model.winding().threads().messageProperty().get()).startsWith("Wanted: a whole number");
    assertThat(model.winding().sheet().foundProperty().get()).isEmpty();
    model.winding().threads().textProperty().set("4");
    model.winding().acrossProperty().set(true);
    model.winding().bout().textProperty().set("1");
    assertThat(model.winding().sheet().troubleProperty().get()).matches("Found '1', wanted a bout of at least \\d ends, which one pass there and back lays\\.");
  }

  @Test
  void anAnswerThatWasOvertakenIsNeitherWorkedOutNorShown() {
    model = new PlansModel(counting(), new Work(waiting::add, Runnable::run), () -> {});
    model.choose("Quay towels");
    runAll();
    model.winding().sheet().watch(true);
    model.winding().threads().textProperty().set("2");
    model.winding().threads().textProperty().set("3");
    assertThat(model.winding().sheet().reckoningProperty().get()).isTrue();
    runAll();
    assertThat(asked).containsOnlyOnce("winding");
    assertThat(sheet().wish().threads()).isEqualTo(3);
    assertThat(model.winding().sheet().reckoningProperty().get()).isFalse();
    model.choose("Gorse shawl");
    assertThat(model.winding().threads().textProperty().get()).isEqualTo("3");
    runAll();
    assertThat(sheet().check().plan().name()).isEqualTo("Gorse shawl");
    assertThat(sheet().wish().threads()).isEqualTo(2);
  }

  private void runAll() {
    while (!waiting.isEmpty()) {
      waiting.remove().run();
    }
  }

  private SettTrial trial() {
    return model.sett().trial().foundProperty().get().orElseThrow();
  }

  /** The diameters are 0.9 √(8 × 840 yards), after Ashenhurst; plain weave leaves half of them for ends: 36.89 to the inch, 14.5 to the centimetre. */
  @Test
  void aSettIsTriedAndThenTaken() {
    open("Quay towels").sett().trial().watch(true);
    assertThat(trial().advised().fullest()).contains(Sett.parse("14.5/cm"));
    assertThat(trial().advised().working()).contains(Sett.parse("10.8/cm"));
    assertThat(model.sett().noSettProperty().get()).isEqualTo("The plan has this sett.");
    model.sett().attempt(Sett.parse("12/cm"));
    assertThat(kept("Quay towels", SETT)).isEqualTo("10/cm");
    assertThat(trial().choices()).first().satisfies(choice -> assertThat(choice.reed().name() + " " + choice.sley()).isEqualTo("40/10 cm 3"));
    model.sett().takeSett();
    assertThat(kept("Quay towels", SETT)).isEqualTo("12/cm");
    assertThat(kept("Quay towels", ENDS)).isEmpty();
    assertThat(model.editor().answerProperty().get().standing()).isNotEqualTo(Standing.UNFINISHED);
    assertThat(model.sett().sett().textProperty().get()).isEmpty();
  }

  @Test
  void anotherSleyingIsChosenAndTakenWithItsReed() {
    open("Quay towels").sett().trial().watch(true);
    model.sett().choose(trial().choices().get(1));
    assertThat(trial().sleyed().orElseThrow().choice()).isEqualTo(trial().choices().get(1));
    model.sett().takeSleying();
    assertThat(kept("Quay towels", PlanField.of(PlanPart.PLAN, "reed"))).isEqualTo("40/10 cm");
    assertThat(kept("Quay towels", PlanField.of(PlanPart.WARP, "sley"))).isEqualTo("2-3");
    assertThat(model.sett().noSleyingProperty().get()).isEqualTo("The plan has this sleying.");
    assertThat(trial().choices()).hasSizeGreaterThan(1);
  }

  @Test
  void aWarpThatIsBeamedKeepsItsEndsAtAnotherSett() {
    open("Quay towels").sett().trial().watch(true);
    model.sett().attempt(Sett.parse("9/cm"));
    assertThat(trial().change().orElseThrow().ends()).isEqualTo(556);
    model.sett().keepBeamed();
    assertThat(kept("Quay towels", SETT)).isEqualTo("9/cm");
    assertThat(kept("Quay towels", ENDS)).isEqualTo("556");
    assertThat(model.editor().keeping().conflictProperty().get()).isEmpty();
  }

  @Test
  void everySamplePlanHasItsSettAndSleyingWorkedOut() {
    model.sett().trial().watch(true);
    for (String plan : List.of("Ash blanket", "Gorse shawl", "Linen runner", "Quay towels")) {
      open(plan);
      assertThat(model.sett().trial().troubleProperty().get()).as(plan).isEmpty();
      assertThat(trial().advised().kinds()).as(plan).isNotEmpty();
      assertThat(trial().choices()).as(plan).isNotEmpty();
    }
  }

  @Test
  void aCoveredPlanIsToldWhatMoreTheShelfAllowsAndAShortOneWhatIsNotEnough() {
    open("Quay towels").fit().fit().watch(true);
    assertThat(model.fit().surplus()).isEqualTo("At the most the shelf would allow a warp of 6.46 m, or pieces up to 88 cm long.");
    assertThat(model.remedies().notEnough()).isEmpty();
    model.choose("Linen runner");
    assertThat(model.fit().surplus()).isEmpty();
    assertThat(model.remedies().notEnough()).allSatisfy(words -> assertThat(words).endsWith("free not enough."));
  }
}
