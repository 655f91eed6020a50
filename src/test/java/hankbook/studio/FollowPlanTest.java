package hankbook.studio;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.exchange.ActualsDraft;
import hankbook.exchange.ActualsFile;
import hankbook.ledger.ChainedEntry;
import hankbook.ledger.EntryKind;
import hankbook.measure.Length;
import hankbook.reckon.Actuals;
import hankbook.store.Vendor;
import hankbook.studio.PlanStep.Stage;
import hankbook.studio.PlanStep.State;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** A scarf followed from its plan to its squared book, and back where things are taken back. */
@ParameterizedClass
@EnumSource
class FollowPlanTest {
  private static final String LEFT = """
      { "format": "hankbook-actuals/1", "date": "2026-03-14", "leftovers": [{"skein": "A", "left": "300 m"}, {"skein": "B", "left": "220 m"}], "reason": "woven short" }
      """;

  private final Vendor vendor;

  @TempDir private Path folder;
  private Studio studio;

  FollowPlanTest(Vendor vendor) {
    this.vendor = vendor;
  }

  @BeforeEach
  void keepTheScarf() throws Exception {
    studio = Studio.open(vendor.ledger(folder), "Ida", FinishTest.ticking(new AtomicLong()));
    new Receive(studio).file("stock.csv", FinishTest.STOCK);
    new Plans(studio).add("scarf.json", FinishTest.SCARF, false);
  }

  @AfterEach
  void close() {
    studio.close();
  }

  @Test
  void aPlanGoesFromStepToStepAndEachSaysItsYarnItsDayAndItsEntry() throws Exception {
    assertThat(states()).containsExactly(State.NOW, State.NEXT, State.LATER, State.LATER, State.LATER);
    new Reserve(studio).plan(UUID.randomUUID(), "Scarf", false);
    assertThat(states()).containsExactly(State.DONE, State.NOW, State.NEXT, State.LATER, State.LATER);
    Length reserved = step(Stage.RESERVED).amount();
    assertThat(reserved).isEqualTo(reservedFor("Scarf"));
    assertThat(step(Stage.RESERVED).skeins()).isEqualTo(2);
    assertThat(step(Stage.RESERVED).date()).contains(studio.today());
    assertThat(step(Stage.RESERVED).entry()).hasValue(number(EntryKind.RESERVE));
    new Draw(studio).plan(UUID.randomUUID(), "Scarf");
    assertThat(states()).containsExactly(State.DONE, State.DONE, State.NOW, State.NEXT, State.LATER);
    assertThat(step(Stage.RESERVED).amount()).isEqualTo(reserved);
    assertThat(step(Stage.ON_LOOM).amount()).isEqualTo(reserved);
    assertThat(step(Stage.ON_LOOM).entry()).hasValue(number(EntryKind.DRAW));
    new FinishedPlans(studio).keep("Scarf", ActualsDraft.of(LEFT));
    assertThat(states()).containsExactly(State.DONE, State.DONE, State.DONE, State.NOW, State.NEXT);
    assertThat(step(Stage.CUT_OFF).date()).contains(LocalDate.of(2026, 3, 14));
    new Finish(studio).plan(UUID.randomUUID(), "Scarf", actuals());
    assertThat(states()).containsExactly(State.DONE, State.DONE, State.DONE, State.DONE, State.NOW);
    assertThat(step(Stage.ON_LOOM).amount()).isEqualTo(reserved);
    assertThat(step(Stage.CUT_OFF).amount()).isEqualTo(Length.metres(120));
    assertThat(step(Stage.SQUARED).amount()).isEqualTo(reserved.minus(Length.metres(120)));
    assertThat(step(Stage.SQUARED).entry()).isPresent();
  }

  @Test
  void whatIsTakenBackIsNoStep() throws Exception {
    new Reserve(studio).plan(UUID.randomUUID(), "Scarf", false);
    new Release(studio).plan(UUID.randomUUID(), "Scarf");
    assertThat(states()).containsExactly(State.NOW, State.NEXT, State.LATER, State.LATER, State.LATER);
    new Reserve(studio).plan(UUID.randomUUID(), "Scarf", false);
    new Draw(studio).plan(UUID.randomUUID(), "Scarf");
    new Reverse(studio).entry(UUID.randomUUID(), last(EntryKind.DRAW), "too early");
    assertThat(states()).containsExactly(State.DONE, State.NOW, State.NEXT, State.LATER, State.LATER);
    new Reverse(studio).entry(UUID.randomUUID(), last(EntryKind.REVERSAL), "not too early");
    assertThat(states()).containsExactly(State.DONE, State.DONE, State.NOW, State.NEXT, State.LATER);
  }

  @Test
  void aSquaredBookThatIsOpenedAgainIsOnTheLoomAgain() throws Exception {
    new Reserve(studio).plan(UUID.randomUUID(), "Scarf", false);
    new Draw(studio).plan(UUID.randomUUID(), "Scarf");
    new Finish(studio).plan(UUID.randomUUID(), "Scarf", actuals());
    new Finish(studio).takeBack(UUID.randomUUID(), "Scarf", "not cut off yet");
    assertThat(states()).containsExactly(State.DONE, State.DONE, State.NOW, State.NEXT, State.LATER);
  }

  private List<State> states() {
    return new FollowPlan(studio).named("Scarf").stream().map(PlanStep::state).toList();
  }

  private PlanStep step(Stage stage) {
    return new FollowPlan(studio).named("Scarf").stream().filter(step -> step.stage() == stage).findFirst().orElseThrow();
  }

  private ChainedEntry newest(EntryKind kind) {
    return studio.read(session -> session.entries().chain()).reversed().stream().filter(entry -> entry.entry().kind() == kind).findFirst().orElseThrow();
  }

  private UUID last(EntryKind kind) {
    return newest(kind).entry().id();
  }

  private long number(EntryKind kind) {
    return newest(kind).number();
  }

  private Length reservedFor(String plan) {
    return new Shelf(studio).skeins().stream().map(skein -> skein.reserved().getOrDefault(plan, Length.ZERO)).reduce(Length.ZERO, Length::plus);
  }

  private static Actuals actuals() throws Exception {
    return ActualsFile.read("left", LEFT).actuals();
  }
}
