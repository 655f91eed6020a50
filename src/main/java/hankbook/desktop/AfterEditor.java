package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.ActualsDraft;
import hankbook.exchange.ActualsPart;
import hankbook.exchange.DraftRow;
import hankbook.reckon.Actuals;
import hankbook.studio.Finish;
import hankbook.studio.Finishing;
import hankbook.studio.Studio;
import hankbook.studio.ToFinish;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** What was found after the cloth of one plan, as it is being filled in, and what it comes to. */
final class AfterEditor {
  private final Finish finish;
  private final FoundKeeping keeping;
  private final Status status;
  private final Consumer<Optional<Finishing>> after;
  private final Act act;
  private final ReadOnlyObjectWrapper<Optional<ToFinish>> ground = new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<ActualsDraft> draft = new ReadOnlyObjectWrapper<>(ActualsDraft.BLANK);
  private final StringProperty whyAgain = new SimpleStringProperty("");
  private final LiveAnswer<AfterPreview> preview;
  private final Map<String, LeftWay> ways = new HashMap<>();
  private final Map<String, DraftRow> aside = new HashMap<>();
  private final Map<String, String> reasons = new HashMap<>();
  private int opened;

  /**
   * @param work on the ledger
   * @param reckoning of what it comes to
   * @param after what follows once the book is squared
   */
  AfterEditor(Studio studio, Work work, Work reckoning, Status status, FoundKeeping keeping, Consumer<Optional<Finishing>> after) {
    this.finish = new Finish(studio);
    this.keeping = keeping;
    this.status = status;
    this.after = after;
    act = new Act(work);
    preview = new LiveAnswer<>(reckoning, this::question, Status::words);
    preview.foundProperty().subscribe(_ -> judge());
    preview.reckoningProperty().subscribe(_ -> judge());
    preview.watch(true);
    whyAgain.subscribe(_ -> changed());
  }

  /** The plan whose form is open; empty where none is. */
  ReadOnlyObjectProperty<Optional<ToFinish>> groundProperty() {
    return ground.getReadOnlyProperty();
  }

  ReadOnlyObjectProperty<ActualsDraft> draftProperty() {
    return draft.getReadOnlyProperty();
  }

  /** What it comes to. */
  LiveAnswer<AfterPreview> preview() {
    return preview;
  }

  /** Why a plan is finished again. */
  StringProperty whyAgainProperty() {
    return whyAgain;
  }

  Act act() {
    return act;
  }

  /** Opens a form as it was kept. */
  void open(ToFinish toFinish, ActualsDraft kept) {
    close();
    ways.clear();
    aside.clear();
    String plan = toFinish.plan().name();
    ActualsDraft begun = FoundRows.begun(toFinish, keeping.held(plan).orElse(kept));
    keeping.begin(plan, begun);
    whyAgain.set(reasons.getOrDefault(plan, ""));
    draft.set(begun);
    ground.set(Optional.of(toFinish));
    opened = toFinish.finish();
    act.renew();
    preview.ask();
  }

  /** Looks at what the ledger has of the plan now, where that is another; what is filled in stays. */
  void lookAgain(ToFinish before, ToFinish now) {
    if (ground.get().equals(Optional.of(before)) && !before.equals(now)) {
      draft.set(FoundRows.begun(now, draft.get()));
      ground.set(Optional.of(now));
      act.renew();
    }
    preview.ask();
  }

  /** Keeps what was filled in and leaves no form open. */
  void close() {
    keep();
    name().ifPresent(plan -> reasons.put(plan, whyAgain.get()));
    ground.set(Optional.empty());
    preview.ask();
  }

  private Optional<String> name() {
    return ground.get().map(open -> open.plan().name());
  }

  /** Puts what was filled in into the ledger, readable or not. */
  void keep() {
    name().ifPresent(plan -> keeping.keep(plan, draft.get()));
  }

  /** How what is left of the skein of a row is said. */
  LeftWay way(DraftRow row) {
    return Optional.ofNullable(ways.get(FoundRows.code(row))).or(() -> LeftWay.of(row)).orElse(LeftWay.LENGTH);
  }

  /** Says what is left of a row's skein in another way; what was said in the one before comes back with it. */
  void choose(int row, LeftWay way) {
    DraftRow before = draft.get().rows(ActualsPart.LEFTOVERS).get(row - 1);
    String code = FoundRows.code(before);
    LeftWay left = way(before);
    if (left == way) {
      return;
    }
    aside.put(code + left.name(), before);
    ways.put(code, way);
    ground.get().ifPresent(open -> {
      DraftRow now = Optional.ofNullable(aside.get(code + way.name())).orElseGet(() -> FoundRows.begun(open, code, way));
      enter(FoundRows.with(draft.get(), ActualsPart.LEFTOVERS, row, now));
    });
    keep();
  }

  /** Takes a changed draft, which is kept with the field that is left next. */
  void enter(ActualsDraft changed) {
    if (!changed.equals(draft.get())) {
      draft.set(changed);
      changed();
      preview.ask();
    }
  }

  private void changed() {
    act.renew();
    judge();
  }

  /** Squares the book by what is filled in. */
  void square() {
    judge();
    if (act.isPossible()) {
      String plan = name().orElseThrow();
      boolean again = ground.get().orElseThrow().isSquared();
      Actuals actuals = preview.foundProperty().get().flatMap(AfterPreview::actuals).orElseThrow();
      String why = whyAgain.get();
      int seen = opened;
      keep();
      AtomicReference<Optional<Finishing>> done = new AtomicReference<>(Optional.empty());
      act.attempt(
          id -> done.set((again ? finish.again(id, plan, actuals, why, seen) : finish.plan(id, plan, actuals)).finishing()),
          () -> reasons.remove(plan), () -> squared(plan, Objects.requireNonNull(done.get())), this::refused);
    }
  }

  private void squared(String plan, Optional<Finishing> done) {
    keeping.forget(plan);
    if (name().equals(Optional.of(plan))) {
      ground.set(Optional.empty());
    }
    after.accept(done);
  }

  private void refused(Exception trouble) {
    status.wrong(trouble);
    preview.ask();
  }

  private Optional<Callable<AfterPreview>> question() {
    ActualsDraft said = draft.get();
    return ground.get().map(open -> () -> AfterPreview.of(open, said, finish));
  }

  private void judge() {
    Optional<AfterPreview> found = preview.foundProperty().get();
    if (ground.get().isEmpty()) {
      act.judge(Say.text("Choose a plan."));
    } else if (preview.reckoningProperty().get()) {
      act.judge(Say.text("It is being reckoned."));
    } else {
      act.judge(found.map(this::whyNot).orElse(preview.troubleProperty().get()));
    }
  }

  private String whyNot(AfterPreview found) {
    boolean unexplained = !found.wantingReason().isEmpty() && draft.get().text(ActualsPart.ACTUALS, 1, "reason").isBlank();
    boolean again = ground.get().filter(ToFinish::isSquared).isPresent();
    if (!found.whyNot().isEmpty()) {
      return found.whyNot();
    }
    return unexplained
        ? Say.text("Say why what cannot be explained is accepted, or measure again.")
        : again && whyAgain.get().isBlank()
        ? Say.text("Say why it is finished again.")
        : "";
  }
}
