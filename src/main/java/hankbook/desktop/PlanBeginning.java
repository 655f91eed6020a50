package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.measure.Unreadable;
import hankbook.plan.PlanName;
import hankbook.studio.NotDone;
import hankbook.yarn.OneLine;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** Begins plans, each under a name of its own; under one that differs from another in capitals alone only where that is meant. */
final class PlanBeginning {
  /**
   * A name that is like that of a plan.
   *
   * @param name that was typed
   * @param like the plan's
   */
  record Nearly(String name, String like) {
    String words() {
      return Say.text("There is a plan {0} already, the same but for capitals.", like);
    }
  }

  private final PlanDesk desk;
  private final Work work;
  private final PlanList list;
  private final Consumer<String> open;
  private final Consumer<PlanSaid> say;
  private String begun = "";
  private final ReadOnlyObjectWrapper<Optional<Nearly>> nearly = new ReadOnlyObjectWrapper<>(Optional.empty());

  /**
   * @param open shows a plan
   * @param say tells what hinders
   */
  PlanBeginning(PlanDesk desk, Work work, PlanList list, Consumer<String> open, Consumer<PlanSaid> say) {
    this.desk = desk;
    this.work = work;
    this.list = list;
    this.open = open;
    this.say = say;
  }

  /** A name that waits until it is said which plan is meant. */
  ReadOnlyObjectProperty<Optional<Nearly>> nearlyProperty() {
    return nearly.getReadOnlyProperty();
  }

  /** Begins a plan of the name that was typed, or of one that is not taken where none was. */
  void begin(String typed) {
    nearly.set(Optional.empty());
    named(typed.isBlank() ? NewPlan.name(list.names()) : typed).ifPresent(name -> {
      Optional<String> like = PlanName.like(name, list.names());
      if (list.row(name).isPresent()) {
        say.accept(new PlanSaid(Say.text("There is a plan named {0} already.", name), true));
      } else if (like.isPresent()) {
        nearly.set(Optional.of(new Nearly(name, like.get())));
      } else {
        make(name);
      }
    });
  }

  /** Opens the plan whose name is like the one that was typed. */
  void openThat() {
    nearly.get().ifPresent(now -> {
      nearly.set(Optional.empty());
      open.accept(now.like());
    });
  }

  /** Begins the plan under the name that was typed. */
  void beginAllTheSame() {
    nearly.get().ifPresent(now -> {
      nearly.set(Optional.empty());
      make(now.name());
    });
  }

  private void make(String name) {
    work.run(() -> made(name), this::opened, wrong -> say.accept(new PlanSaid(PlanWords.trouble(wrong), true)));
  }

  private void opened(String name) {
    begun = name;
    open.accept(name);
  }

  /** Whether a plan was begun just now; of each that is true once. */
  boolean isJustBegun(String name) {
    boolean just = begun.equals(name);
    begun = "";
    return just;
  }

  private String made(String name) throws NotDone {
    desk.keep(name, NewPlan.draft(name, desk.judgement()).json(), 0);
    return name;
  }

  /** A name as the ledger takes it, or a word on why it does not. */
  Optional<String> named(String typed) {
    try {
      return Optional.of(OneLine.of(typed));
    } catch (Unreadable unreadable) {
      say.accept(new PlanSaid(Wording.wanted(unreadable), true));
      return Optional.empty();
    }
  }
}
