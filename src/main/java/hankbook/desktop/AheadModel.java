package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.studio.ExpectedBy;
import hankbook.studio.PlanMove;
import hankbook.studio.QueuePlans;
import hankbook.studio.Shelf;
import hankbook.studio.Studio;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;

/** All plans against all yarns, each plan taking its yarn in its turn, and the order that is tried before it is kept. */
public final class AheadModel {
  private final QueuePlans plans;
  private final Shelf shelf;
  private final Work work;
  private final Status status;
  private final Latest latest = new Latest();
  private final Act keep;
  private final Act up;
  private final Act down;
  private final BooleanProperty counting = new SimpleBooleanProperty(false);
  private final TypedDay until = new TypedDay();
  private final ReadOnlyObjectWrapper<Ahead> ahead = new ReadOnlyObjectWrapper<>(Ahead.NOTHING);
  private final ReadOnlyObjectWrapper<Optional<PlanMove>> tried = new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyBooleanWrapper reckoning = new ReadOnlyBooleanWrapper(false);
  private final ReadOnlyStringWrapper turnWords = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper chosen = new ReadOnlyStringWrapper("");
  /** The order asked for last, which its answer may still be on the way for. */
  private List<String> order = List.of();

  /** @param work where plans are reckoned, which may take long */
  public AheadModel(Studio studio, Work work, Status status) {
    this.plans = new QueuePlans(studio);
    this.shelf = new Shelf(studio);
    this.work = work.inOrder();
    this.status = status;
    keep = new Act(this.work);
    up = new Act(this.work);
    down = new Act(this.work);
    counting.subscribe((_, _) -> refresh());
    until.dayProperty().subscribe((_, _) -> refresh());
    judge();
  }

  /** What is shown. */
  ReadOnlyObjectProperty<Ahead> aheadProperty() {
    return ahead.getReadOnlyProperty();
  }

  /** Whether a newer answer is on its way. */
  ReadOnlyBooleanProperty reckoningProperty() {
    return reckoning.getReadOnlyProperty();
  }

  /** The move whose effect is shown and which is not kept yet. */
  ReadOnlyObjectProperty<Optional<PlanMove>> triedProperty() {
    return tried.getReadOnlyProperty();
  }

  /** The name of the plan that is chosen, or empty. */
  ReadOnlyStringProperty chosenProperty() {
    return chosen.getReadOnlyProperty();
  }

  /** Whether yarn on order counts. */
  BooleanProperty countingProperty() {
    return counting;
  }

  /** The day until which yarn on order counts; any day where nothing is typed. */
  TypedDay until() {
    return until;
  }

  Act keepAct() {
    return keep;
  }

  Act upAct() {
    return up;
  }

  Act downAct() {
    return down;
  }

  /** How the chosen plan is moved, or why it is not. */
  ReadOnlyStringProperty turnWordsProperty() {
    return turnWords.getReadOnlyProperty();
  }

  /** Asks the ledger anew; an order that is tried stays tried. */
  public void refresh() {
    if (until.messageProperty().get().isEmpty()) {
      ExpectedBy by = by();
      ask(tried.get().<Callable<Ahead>>map(move -> () -> Ahead.of(plans.tried(move, by), palette())).orElse(() -> Ahead.of(plans.all(by), palette())));
    }
  }

  private void ask(Callable<Ahead> question) {
    var answered = latest.only(this::show);
    var failed = latest.<Exception>also(this::failed);
    reckoning.set(true);
    work.run(question, answered, failed);
  }

  private YarnPalette palette() {
    return YarnPalette.of(shelf.everySkein());
  }

  private ExpectedBy by() {
    return counting.get() ? until.day().map(ExpectedBy::new).orElse(ExpectedBy.ANY_DAY) : ExpectedBy.NOTHING;
  }

  /** A move that cannot be tried any more is given up. */
  private void failed(Exception trouble) {
    reckoning.set(false);
    status.wrong(trouble);
    if (tried.get().isPresent()) {
      leave();
    }
  }

  private void show(Ahead found) {
    reckoning.set(false);
    ahead.set(found);
    order = found.names();
    if (!order.contains(chosen.get())) {
      chosen.set("");
    }
    judge();
  }

  /** Chooses a plan by its name, or none by an empty one. */
  void choose(String plan) {
    chosen.set(plan);
    judge();
  }

  /** Tries the chosen plan one turn sooner. */
  void up() {
    if (up.isPossible()) {
      turn(-1);
    }
  }

  /** Tries the chosen plan one turn later. */
  void down() {
    if (down.isPossible()) {
      turn(1);
    }
  }

  private void turn(int by) {
    int turn = order.indexOf(chosen.get()) + by;
    List<String> moved = new ArrayList<>(order);
    moved.remove(chosen.get());
    PlanMove move = turn == 0 ? new PlanMove(chosen.get(), moved.getFirst(), true) : new PlanMove(chosen.get(), moved.get(turn - 1), false);
    moved.add(turn, chosen.get());
    order = List.copyOf(moved);
    keep.renew();
    tried.set(order.equals(ahead.get().kept()) ? Optional.empty() : Optional.of(move));
    judge();
    refresh();
  }

  /** Keeps the order that is tried. */
  void keep() {
    if (keep.isPossible()) {
      PlanMove move = tried.get().orElseThrow();
      ExpectedBy by = by();
      keep.attempt(_ -> plans.moved(move, by), () -> tried.set(Optional.empty()), () -> kept(move), status::wrong);
    }
  }

  private void kept(PlanMove move) {
    status.done(move.before()
        ? Say.text("{0} takes its yarn just before {1} now.", move.plan(), move.beside())
        : Say.text("{0} takes its yarn just after {1} now.", move.plan(), move.beside()));
    judge();
    refresh();
  }

  /** Goes back to the order that is kept. */
  void leave() {
    tried.set(Optional.empty());
    judge();
    refresh();
  }

  private void judge() {
    int turn = order.indexOf(chosen.get());
    boolean another = tried.get().filter(move -> !move.plan().equals(chosen.get())).isPresent();
    String why = turn < 0 ? Say.text("The upper plans take their yarn first. Choose a plan to move it.") : another ? Say.text("First keep or leave the order that is tried.") : "";
    up.judge(why.isEmpty() && turn == 0 ? Say.text("It is the first already.") : why);
    down.judge(why.isEmpty() && turn == order.size() - 1 ? Say.text("It is the last already.") : why);
    String hint = Say.text("{0} takes its yarn sooner or later with these, or with Alt and an arrow.", chosen.get());
    turnWords.set(up.isPossible() && down.isPossible() ? hint : up.isPossible() ? down.whyNotProperty().get() : up.whyNotProperty().get());
    keep.judge(tried.get().isPresent() ? "" : Say.text("No other order is tried."));
  }
}
