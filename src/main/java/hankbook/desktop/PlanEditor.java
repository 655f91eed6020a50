package hankbook.desktop;

import hankbook.exchange.DraftRow;
import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyLongProperty;
import javafx.beans.property.ReadOnlyLongWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.jspecify.annotations.Nullable;

/** The plan that is open: its texts, and the answer to them as they stand. */
public final class PlanEditor {
  /** A row that was taken away, and where it stood. */
  record Removed(PlanPart part, int row, DraftRow texts) {}

  private final PlanDesk desk;
  private final Work work;
  private final Consumer<Exception> wrong;
  private final AtomicLong asked = new AtomicLong();
  private final ReadOnlyStringWrapper name = new ReadOnlyStringWrapper("");
  private final ReadOnlyObjectWrapper<PlanDraft> draft = new ReadOnlyObjectWrapper<>(PlanDraft.BLANK);
  private final ReadOnlyObjectWrapper<PlanAnswer> answer = new ReadOnlyObjectWrapper<>(new PlanAnswer.Reckoning());
  private final ReadOnlyBooleanWrapper reckoning = new ReadOnlyBooleanWrapper(false);
  private final ReadOnlyObjectWrapper<Optional<Removed>> removed = new ReadOnlyObjectWrapper<>(Optional.empty());
  private volatile @Nullable PlanAnswer latest;
  private final PlanKeeping keeping;
  private final ReadOnlyLongWrapper opened = new ReadOnlyLongWrapper();

  PlanEditor(PlanDesk desk, Work work, Consumer<Exception> wrong) {
    this.desk = desk;
    this.work = work;
    this.wrong = wrong;
    this.keeping = new PlanKeeping(desk, work, wrong);
  }

  /** The name of the plan that is open; empty where none is. */
  ReadOnlyStringProperty nameProperty() {
    return name.getReadOnlyProperty();
  }

  /** Which opening of a plan this is; another name for the same plan is none. */
  ReadOnlyLongProperty openedProperty() {
    return opened.getReadOnlyProperty();
  }

  PlanKeeping keeping() {
    return keeping;
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

  /** Opens a plan as it is kept, or as it was left where the ledger would not take that. */
  void open(KeptCopy copy) {
    begin(copy.name(), keeping.open(copy));
    keep();
  }

  /** Opens a plan as it is kept, whatever was entered here instead. */
  void giveIn(KeptCopy copy) {
    begin(copy.name(), keeping.giveIn(copy));
  }

  private void begin(String plan, PlanDraft text) {
    name.set("");
    removed.set(Optional.empty());
    draft.set(text);
    answer.set(new PlanAnswer.Reckoning());
    opened.set(opened.get() + 1);
    name.set(plan);
    ask();
  }

  /** Keeps what was entered and leaves no plan open. */
  void close() {
    keeping.leave(draft.get());
    asked.incrementAndGet();
    name.set("");
    reckoning.set(false);
  }

  /** Gives the open plan another name; what is typed meanwhile stays as it is. */
  void rename(String to, Consumer<String> then) {
    keep();
    keeping.rename(to, draft.get(), copy -> {
      if (keeping.open().filter(open -> open == copy).isPresent()) {
        draft.set(draft.get().with(PlanField.of(PlanPart.PLAN, "name"), copy.name()));
        name.set(copy.name());
      }
      then.accept(copy.name());
    });
  }

  /** Asks whether someone else has kept another version: it is shown, unless something here is not kept yet. */
  void lookAgain() {
    keeping.open().ifPresent(copy -> work.run(() -> copy.newer(desk), newer -> newer.ifPresent(found -> overtaken(copy, found)), wrong));
  }

  private void overtaken(KeptCopy copy, KeptCopy newer) {
    if (keeping.open().filter(open -> open == copy).isEmpty()) {
      return;
    }
    if (keeping.isUnkept(draft.get())) {
      keep();
    } else {
      removed.set(Optional.empty());
      draft.set(keeping.giveIn(newer));
      ask();
    }
  }

  /** Takes what was typed into a field. */
  void enter(PlanField field, String text) {
    change(draft.get().with(field, text));
  }

  /** Takes the texts of a changed draft, in several fields at once. */
  void enter(PlanDraft changed) {
    change(changed);
  }

  /** The row that was taken away last, until rows change again. */
  ReadOnlyObjectProperty<Optional<Removed>> removedProperty() {
    return removed.getReadOnlyProperty();
  }

  void addRow(PlanPart part) {
    removed.set(Optional.empty());
    change(draft.get().withRow(part, NewPlan.row(part)));
    keep();
  }

  void removeRow(PlanPart part, int row) {
    DraftRow taken = draft.get().rows(part).get(row - 1);
    removed.set(Optional.of(new Removed(part, row, taken)).filter(gone -> !gone.texts().equals(NewPlan.row(part)) && !gone.texts().equals(DraftRow.BLANK)));
    change(draft.get().withoutRow(part, row));
    keep();
  }

  /** Puts the row back that was taken away last. */
  void putBackRow() {
    removed.get().ifPresent(gone -> {
      removed.set(Optional.empty());
      change(draft.get().withRow(gone.part(), gone.row(), gone.texts()));
      keep();
    });
  }

  /** Puts a row of a list in the place of another, both counted from 1; tells whether there is such a place. */
  boolean moveRow(PlanPart part, int from, int to) {
    boolean there = to >= 1 && to <= draft.get().rows(part).size();
    if (there) {
      removed.set(Optional.empty());
      change(draft.get().withRowMoved(part, from, to));
      keep();
    }
    return there;
  }

  /** Gives the warp as many ends as its order makes. */
  void takeEnds(long ends) {
    change(draft.get().with(PlanField.of(PlanPart.WARP, "ends"), Long.toString(ends)));
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
    keeping.keep(draft.get());
  }

  /** Keeps what was entered in the place of what someone else has kept meanwhile. */
  void keepInstead() {
    keeping.keepInstead(draft.get());
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
