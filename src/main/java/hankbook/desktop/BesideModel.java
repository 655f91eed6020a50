package hankbook.desktop;

import hankbook.cost.Alternatives;
import hankbook.desktop.say.Say;
import hankbook.exchange.PlanDraft;
import hankbook.studio.Alternative;
import hankbook.studio.ComparePlans;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** Plans and variants side by side. The first is the one that the others are held against, and that variants vary. */
final class BesideModel {
  private final PlanDesk desk;
  private final Consumer<String> begun;
  private final LiveAnswer<ComparePlans.Compared> answer;
  private final ObservableList<BesideColumn> columns = FXCollections.observableArrayList();
  private final ObservableList<BesideColumn> columnsSeen = FXCollections.unmodifiableObservableList(columns);
  private final ReadOnlyBooleanWrapper open = new ReadOnlyBooleanWrapper(false);
  private final ReadOnlyStringWrapper noMore = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");
  private final Act making;
  private PlanDraft first = PlanDraft.BLANK;

  /**
   * @param begun what follows once a plan was made of a variant
   */
  BesideModel(PlanDesk desk, Work work, Consumer<String> begun) {
    this.desk = desk;
    this.begun = begun;
    this.answer = new LiveAnswer<>(work, this::question, PlanWords::trouble);
    this.making = new Act(work);
    making.judge("");
  }

  /** Whether they are to be shown. */
  ReadOnlyBooleanProperty openProperty() {
    return open.getReadOnlyProperty();
  }

  ObservableList<BesideColumn> columns() {
    return columnsSeen;
  }

  /** What they come to, those that can be reckoned. */
  LiveAnswer<ComparePlans.Compared> answer() {
    return answer;
  }

  /** Why no more can be laid beside them, or empty. */
  ReadOnlyStringProperty noMoreProperty() {
    return noMore.getReadOnlyProperty();
  }

  /** Why no plan was made of a variant, or empty. */
  ReadOnlyStringProperty troubleProperty() {
    return trouble.getReadOnlyProperty();
  }

  /** Those plans of several that do not lie here yet. */
  List<String> others(List<String> plans) {
    return plans.stream().filter(plan -> columns.stream().noneMatch(column -> !column.isVariant() && column.plan().equals(plan))).toList();
  }

  /** Lays a plan here, and a variant of it that changes nothing yet; what lay here of the same plan still does. */
  void begin(String plan, PlanDraft draft) {
    first = draft;
    if (columns.isEmpty() || !columns.getFirst().plan().equals(plan)) {
      columns.setAll(BesideColumn.kept(plan), variant(plan));
    }
    open.set(true);
    changed();
    answer.watch(true);
  }

  /** Leaves them; variants wait here until another plan is laid first. */
  void close() {
    open.set(false);
    answer.watch(false);
  }

  /** Whether something is typed that stands in no ledger yet. */
  boolean isBegun() {
    return columns.stream().anyMatch(column -> column.isVariant() && column.isBegun());
  }

  /** Lays one more plan beside them. */
  void addPlan(String plan) {
    add(BesideColumn.kept(plan));
  }

  /** Lays one more variant of the first beside them. */
  void addVariant() {
    if (!columns.isEmpty()) {
      add(variant(columns.getFirst().plan()));
    }
  }

  private void add(BesideColumn column) {
    if (noMore.get().isEmpty()) {
      columns.add(column);
      changed();
    }
  }

  private BesideColumn variant(String plan) {
    String letter = Stream.of("A", "B", "C").filter(free -> columns.stream().noneMatch(column -> column.letter().equals(free))).findFirst().orElse("D");
    return BesideColumn.variant(plan, letter, first, this::ask);
  }

  /** Takes one away; the first stays. */
  void remove(BesideColumn column) {
    if (columns.indexOf(column) > 0) {
      columns.remove(column);
      changed();
    }
  }

  private void changed() {
    noMore.set(columns.size() < Alternatives.MOST ? "" : Say.text("Four lie side by side; take one away first."));
    ask();
  }

  /** Reckons them anew. */
  void ask() {
    trouble.set("");
    answer.ask();
  }

  /** Makes a plan of a variant; the plan it varies stays as it is. */
  void makePlan(BesideColumn column) {
    if (column.isVariant() && !column.isBad()) {
      List<String> made = new ArrayList<>();
      making.attempt(
          _ -> made.add(desk.vary(column.plan(), column.variation())),
          () -> {},
          () -> {
            standsFor(column, made.getFirst());
            begun.accept(made.getFirst());
          },
          wrong -> trouble.set(PlanWords.trouble(wrong)));
    }
  }

  /** The plan takes the place of its variant, unless that was taken away meanwhile. */
  private void standsFor(BesideColumn variant, String plan) {
    int at = columns.indexOf(variant);
    if (at >= 0) {
      columns.set(at, BesideColumn.kept(plan));
    }
    ask();
  }

  private Optional<Callable<ComparePlans.Compared>> question() {
    if (!open.get() || columns.isEmpty() || columns.stream().anyMatch(BesideColumn::isBad)) {
      return Optional.empty();
    }
    List<Alternative> wanted = columns.stream().map(BesideColumn::alternative).toList();
    return Optional.of(() -> desk.compare(wanted));
  }
}
