package hankbook.desktop;

import hankbook.allot.Fit;
import hankbook.allot.PlanCheck;
import hankbook.allot.Remedy;
import hankbook.allot.StandIn;
import hankbook.desktop.say.Say;
import hankbook.exchange.BadInput;
import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanPart;
import hankbook.exchange.RemedyDraft;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** What would make the open plan fit where it is short; each can be tried and put back. */
final class PlanRemedies {
  /**
   * A remedy that was tried.
   *
   * @param words what it is, in a sentence
   * @param before the texts that it changed
   * @param after what it changed them to
   */
  record Tried(String words, PlanDraft before, PlanDraft after) {}

  private final PlanDesk desk;
  private final Work work;
  private final PlanEditor editor;
  private final Consumer<Exception> wrong;
  private final Latest latest = new Latest();
  private final ReadOnlyObjectWrapper<Optional<Fit>> found = new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Optional<Tried>> tried = new ReadOnlyObjectWrapper<>(Optional.empty());

  PlanRemedies(PlanDesk desk, Work work, PlanEditor editor, Consumer<Exception> wrong) {
    this.desk = desk;
    this.work = work;
    this.editor = editor;
    this.wrong = wrong;
    editor.answerProperty().subscribe(this::look);
    editor.openedProperty().subscribe(_ -> tried.set(Optional.empty()));
    editor.draftProperty().subscribe((was, now) -> {
      if (Arrays.stream(PlanPart.values()).anyMatch(part -> was.rows(part).size() != now.rows(part).size())) {
        tried.set(Optional.empty());
      }
    });
  }

  /** What fits of a plan that is short; empty while that is not known, and for one that is not short. */
  ReadOnlyObjectProperty<Optional<Fit>> foundProperty() {
    return found.getReadOnlyProperty();
  }

  /** The remedies, the least change first. */
  List<Remedy> found() {
    return found.get().map(Fit::remedies).orElse(List.of());
  }

  /** The yarns that are like one that is short, but do not cover what it was to serve, each in a sentence. */
  List<String> notEnough() {
    return found.get().map(Fit::standIns).orElse(List.of()).stream().filter(standIn -> !standIn.covers()).map(PlanRemedies::notEnough).toList();
  }

  private static String notEnough(StandIn standIn) {
    return Say.text("{0} is like {1}, but with {2} free not enough.", standIn.yarn(), standIn.place(), Wording.yarn(standIn.free()));
  }

  /** The remedy that was tried last and can be put back. */
  ReadOnlyObjectProperty<Optional<Tried>> triedProperty() {
    return tried.getReadOnlyProperty();
  }

  /** Whether a remedy lies in the plan, so that it can be tried, and not in what is to be bought. */
  boolean canBeTried(Remedy remedy) {
    return editor.answerProperty().get() instanceof PlanAnswer.Reckoned(PlanCheck check) && !remedy.plan().equals(check.plan());
  }

  private void look(PlanAnswer answer) {
    found.set(Optional.empty());
    Consumer<Optional<Fit>> show = latest.only(found::set);
    if (answer instanceof PlanAnswer.Reckoned(PlanCheck check) && check.isShort()) {
      work.run(() -> fit(answer, check), show, wrong);
    }
  }

  /** Trying larger and smaller plans takes long, so it is not begun for an answer that was overtaken. */
  private Optional<Fit> fit(PlanAnswer answer, PlanCheck check) throws BadInput {
    return editor.isLatest(answer) ? Optional.of(desk.fit(check.plan())) : Optional.empty();
  }

  /** Tries a remedy: the texts of its fields are changed. A remedy for texts that have changed meanwhile is not tried any more. */
  void attempt(Remedy remedy) {
    PlanAnswer answer = editor.answerProperty().get();
    if (answer instanceof PlanAnswer.Reckoned(PlanCheck check) && editor.isLatest(answer)) {
      PlanDraft before = editor.draftProperty().get();
      PlanDraft after = RemedyDraft.apply(before, check.plan(), remedy.plan());
      editor.enter(after);
      tried.set(Optional.of(new Tried(Wording.phrase(remedy.phrase()), before, after)));
      editor.keep();
    }
  }

  /** Puts back what was there before the last remedy was tried. */
  void putBack() {
    tried.get().ifPresent(last -> {
      tried.set(Optional.empty());
      editor.enter(editor.draftProperty().get().takingBack(last.before(), last.after()));
      editor.keep();
    });
  }
}
