package hankbook.desktop.find;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** What the box that finds anything does with answers of the ledger that come late, or not at all. */
class FindModelTest {
  private final List<Consumer<List<Thing>>> asked = new ArrayList<>();
  private final List<Consumer<Exception>> failing = new ArrayList<>();
  private final FindModel model = new FindModel(List::of, List::of, _ -> List.of(), (_, then, otherwise) -> {
    asked.add(then);
    failing.add(otherwise);
  }, Runnable::run, Runnable::run);

  private static Thing plan(String name) {
    return Thing.of(Sort.PLAN, name, "", () -> {});
  }

  @Test
  void what_was_gathered_for_an_earlier_opening_is_dropped() {
    model.open();
    model.close();
    model.open();
    model.typedProperty().set("towel");
    asked.getLast().accept(List.of(plan("Quay towels")));
    asked.getFirst().accept(List.of());
    failing.getFirst().accept(new IllegalStateException("the first one broke"));
    model.typedProperty().set("towels");
    assertThat(model.foundProperty().get()).extracting(Thing::title).containsExactly("Quay towels");
    assertThat(model.troubleProperty().get()).isEmpty();
  }

  @Test
  void a_ledger_that_does_not_answer_is_said() {
    model.open();
    failing.getLast().accept(new IllegalStateException("it broke"));
    assertThat(model.troubleProperty().get()).startsWith("The ledger does not answer");
  }
}
