package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.ledger.ChainedEntry;
import hankbook.ledger.Entry;
import hankbook.studio.Studio;
import hankbook.studio.Undo;
import hankbook.studio.Undoing;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * Taking back the last thing that was done with yarn: first it is shown what that would do, then, asked for once more, it is done. What was undone so is passed
 * over the next time, so that one goes back step by step.
 */
final class UndoModel {
  private final Studio studio;
  private final Work work;
  private final Status status;
  private final Runnable after;
  private final Act act;
  private final Latest latest = new Latest();
  private Set<UUID> undone = new HashSet<>();
  private final ReadOnlyObjectWrapper<Optional<Undoing>> offered = new ReadOnlyObjectWrapper<>(Optional.empty());

  /** @param after what follows once something was taken back */
  UndoModel(Studio studio, Work work, Status status, Runnable after) {
    this.studio = studio;
    this.work = work;
    this.status = status;
    this.after = after;
    act = new Act(work);
  }

  /** Goes on where another one was: what was undone there, or still is being, is passed over here too. */
  void goesOnAfter(UndoModel before) {
    undone = before.undone;
  }

  /** What would be taken back; empty while nothing was asked. */
  ReadOnlyObjectProperty<Optional<Undoing>> offeredProperty() {
    return offered.getReadOnlyProperty();
  }

  Act act() {
    return act;
  }

  /** Shows what would be taken back or, where that is shown already, takes it back. */
  void ask() {
    if (offered.get().isPresent()) {
      confirm();
    } else {
      work.run(() -> new Undo(studio).last(Set.copyOf(undone)), latest.only(this::offer), latest.also(status::wrong));
    }
  }

  private void offer(Optional<Undoing> undoing) {
    act.renew();
    act.judge(undoing.flatMap(Undoing::whyNot).orElse(""));
    offered.set(undoing);
    if (undoing.isEmpty()) {
      status.done(Say.text("There is nothing of yours in the journal that could be taken back."));
    }
  }

  /** Takes back what is shown. */
  void confirm() {
    if (act.isPossible()) {
      Undoing undoing = offered.get().orElseThrow();
      String reason = Say.text("undone");
      act.attempt(id -> remember(id, new Undo(studio).takeBack(id, undoing, reason)), () -> {}, () -> done(undoing), this::refused);
    }
  }

  private void remember(UUID id, List<ChainedEntry> reversals) {
    work.here().execute(() -> {
      undone.add(id);
      reversals.forEach(link -> undone.add(link.entry().id()));
    });
  }

  private void done(Undoing undoing) {
    offered.set(Optional.empty());
    status.done(said(undoing));
    after.run();
  }

  private static String said(Undoing undoing) {
    Entry entry = undoing.main().entry();
    return DeedWords.isTakenBack(entry) ? Say.text("Brought back what entry {0} took back.", undoing.main().number()) : Say.text("Took back: {0}.", DeedWords.of(entry));
  }

  private void refused(Exception trouble) {
    act.judge(Status.words(trouble));
    status.wrong(trouble);
  }

  /** Leaves everything as it is. */
  void leave() {
    offered.set(Optional.empty());
  }
}
