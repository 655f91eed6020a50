package hankbook.desktop;

import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import hankbook.studio.NotDone;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.jspecify.annotations.Nullable;

/** The plan that is open: its texts, and the answer to them as they stand. */
public final class PlanEditor {
  private final PlanDesk desk;
  private final Work work;
  private final Consumer<Exception> wrong;
  private final AtomicLong asked = new AtomicLong();
  private final ReadOnlyStringWrapper name = new ReadOnlyStringWrapper("");
  private final ReadOnlyObjectWrapper<PlanDraft> draft = new ReadOnlyObjectWrapper<>(PlanDraft.BLANK);
  private final ReadOnlyObjectWrapper<PlanAnswer> answer = new ReadOnlyObjectWrapper<>(new PlanAnswer.Reckoning());
  private final ReadOnlyBooleanWrapper reckoning = new ReadOnlyBooleanWrapper(false);
  private volatile @Nullable PlanAnswer latest;
  private PlanDraft kept = PlanDraft.BLANK;

  PlanEditor(PlanDesk desk, Work work, Consumer<Exception> wrong) {
    this.desk = desk;
    this.work = work;
    this.wrong = wrong;
  }

  /** The name of the plan that is open; empty where none is. */
  ReadOnlyStringProperty nameProperty() {
    return name.getReadOnlyProperty();
  }

  ReadOnlyObjectProperty<PlanDraft> draftProperty() {
    return draft.getReadOnlyProperty();
  }

  ReadOnlyObjectProperty<PlanAnswer> answerProperty() {
    return answer.getReadOnlyProperty();
  }

  /** Whether the answer shown is to earlier texts and a new one is on its way. */
  ReadOnlyBooleanProperty reckoningProperty() {
    return reckoning.getReadOnlyProperty();
  }

  /** Whether an answer is to the texts as they stand; may be asked from any thread. */
  boolean isLatest(PlanAnswer given) {
    return given.equals(latest);
  }

  /** Opens a plan as it is kept. */
  void open(String plan, PlanDraft text) {
    name.set("");
    draft.set(text);
    kept = text;
    answer.set(new PlanAnswer.Reckoning());
    name.set(plan);
    ask();
  }

  /** Leaves no plan open. */
  void close() {
    asked.incrementAndGet();
    name.set("");
    reckoning.set(false);
  }

  /** Takes what was typed into a field. */
  void enter(PlanField field, String text) {
    change(draft.get().with(field, text));
  }

  void addRow(PlanPart part) {
    change(draft.get().withRow(part, NewPlan.row(part)));
    keep();
  }

  void removeRow(PlanPart part, int row) {
    change(draft.get().withoutRow(part, row));
    keep();
  }

  private void change(PlanDraft changed) {
    if (!changed.equals(draft.get())) {
      draft.set(changed);
      ask();
    }
  }

  /** Puts what was entered into the ledger, readable or not. */
  void keep() {
    if (name.get().isEmpty() || kept.equals(draft.get())) {
      return;
    }
    String plan = name.get();
    PlanDraft before = kept;
    PlanDraft entered = draft.get();
    kept = entered;
    work.run(() -> keep(plan, entered), _ -> {}, trouble -> notKept(plan, before, trouble));
  }

  private PlanDraft keep(String plan, PlanDraft text) throws NotDone {
    desk.keep(plan, text.json());
    return text;
  }

  private void notKept(String plan, PlanDraft before, Exception trouble) {
    if (plan.equals(name.get())) {
      kept = before;
    }
    wrong.accept(trouble);
  }

  /** Asks for the answer anew; an answer to a question that is no longer the latest is dropped. */
  void ask() {
    if (name.get().isEmpty()) {
      return;
    }
    long mine = asked.incrementAndGet();
    latest = null;
    PlanDraft text = draft.get();
    reckoning.set(true);
    work.run(
        () -> asked.get() == mine ? Optional.of(PlanAnswer.of(text, desk)) : Optional.<PlanAnswer>empty(),
        found -> found.filter(_ -> asked.get() == mine).ifPresent(this::answered),
        trouble -> failed(mine, trouble));
  }

  private void answered(PlanAnswer found) {
    latest = found;
    answer.set(found);
    reckoning.set(false);
  }

  private void failed(long mine, Exception trouble) {
    if (asked.get() == mine) {
      reckoning.set(false);
      wrong.accept(trouble);
    }
  }
}
