package hankbook.desktop;

import hankbook.allot.PlanCheck;
import hankbook.exchange.BadInput;
import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanPart;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** What would make the open plan fit where it is short; each can be tried and put back. */
final class PlanRemedies {
  private final PlanDesk desk;
  private final Work work;
  private final PlanEditor editor;
  private final Consumer<Exception> wrong;
  private final Latest latest = new Latest();
  private final ReadOnlyObjectWrapper<List<Remedy>> found = new ReadOnlyObjectWrapper<>(List.of());
  private final ReadOnlyObjectWrapper<Optional<Remedy.Change>> before = new ReadOnlyObjectWrapper<>(Optional.empty());

  PlanRemedies(PlanDesk desk, Work work, PlanEditor editor, Consumer<Exception> wrong) {
    this.desk = desk;
    this.work = work;
    this.editor = editor;
    this.wrong = wrong;
    editor.answerProperty().subscribe(this::look);
    editor.openedProperty().subscribe(_ -> before.set(Optional.empty()));
    editor.draftProperty().subscribe((was, now) -> {
      if (Arrays.stream(PlanPart.values()).anyMatch(part -> was.rows(part).size() != now.rows(part).size())) {
        before.set(Optional.empty());
      }
    });
  }

  ReadOnlyObjectProperty<List<Remedy>> foundProperty() {
    return found.getReadOnlyProperty();
  }

  /** What a remedy that was tried has changed, as it was before. */
  ReadOnlyObjectProperty<Optional<Remedy.Change>> beforeProperty() {
    return before.getReadOnlyProperty();
  }

  private void look(PlanAnswer answer) {
    found.set(List.of());
    Consumer<List<Remedy>> show = latest.only(found::set);
    if (answer instanceof PlanAnswer.Reckoned(PlanCheck check) && check.isShort()) {
      PlanDraft draft = editor.draftProperty().get();
      work.run(() -> remedies(draft, answer, check), show, wrong);
    }
  }

  /** Trying larger and smaller plans takes long, so it is not begun for an answer that was overtaken. */
  private List<Remedy> remedies(PlanDraft draft, PlanAnswer answer, PlanCheck check) throws BadInput {
    return editor.isLatest(answer) ? Remedy.of(draft, check, desk.fit(check.plan())) : List.of();
  }

  /** Tries a remedy: the text of its field is changed. */
  void attempt(Remedy.Change change) {
    before.set(Optional.of(new Remedy.Change(change.field(), editor.draftProperty().get().text(change.field()))));
    editor.enter(change.field(), change.text());
    editor.keep();
  }

  /** Puts back what was there before the last remedy was tried. */
  void putBack() {
    before.get().ifPresent(change -> {
      before.set(Optional.empty());
      editor.enter(change.field(), change.text());
      editor.keep();
    });
  }
}
