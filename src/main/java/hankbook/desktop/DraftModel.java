package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.BadInput;
import hankbook.exchange.PlanDraft;
import hankbook.exchange.WeaveDraft;
import hankbook.exchange.WeavePlan;
import hankbook.plan.PlanName;
import hankbook.studio.BringInDraft;
import hankbook.studio.DraftPreview;
import hankbook.studio.Shelf;
import hankbook.studio.ShelfSkein;
import hankbook.studio.Settings;
import hankbook.studio.Studio;
import hankbook.yarn.Skein;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** A draft that is being brought in: what is in it, the yarns for its colours, and the plan that it begins. */
public final class DraftModel {
  /** Where any yarn of the shelf will do. */
  static final String ANY_YARN = "any yarn";

  private final Studio studio;
  private final Work work;
  private final Supplier<? extends Collection<String>> taken;
  private final Consumer<String> begun;
  private final Latest latest = new Latest();
  private final Act act;
  private final ReadOnlyBooleanWrapper open = new ReadOnlyBooleanWrapper(false);
  private final ReadOnlyStringWrapper file = new ReadOnlyStringWrapper("");
  private final ReadOnlyObjectWrapper<Optional<DraftPreview>> preview = new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ObservableList<String> faults = FXCollections.observableArrayList();
  private final ObservableList<String> faultsSeen = FXCollections.unmodifiableObservableList(faults);
  private final DraftChoices choices = new DraftChoices(this::changed);
  private final ObservableList<String> yarns = FXCollections.observableArrayList();
  private final ObservableList<String> yarnsSeen = FXCollections.unmodifiableObservableList(yarns);
  private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");
  private final StringProperty name = new SimpleStringProperty("");
  private final StringProperty only = new SimpleStringProperty(ANY_YARN);
  private List<Skein> shelf = List.of();

  /**
   * @param taken the names of plans that there are
   * @param begun what follows once the plan of a name is begun
   */
  public DraftModel(Studio studio, Work work, Supplier<? extends Collection<String>> taken, Consumer<String> begun) {
    this.studio = studio;
    this.work = work;
    this.taken = taken;
    this.begun = begun;
    act = new Act(work);
    name.subscribe(_ -> changed());
    only.subscribe(_ -> preview.get().ifPresent(now -> proposeAgain(now.draft())));
  }

  /** Whether a draft, or what is wrong with one, is to be shown. */
  ReadOnlyBooleanProperty openProperty() {
    return open.getReadOnlyProperty();
  }

  /** The file's name. */
  ReadOnlyStringProperty fileProperty() {
    return file.getReadOnlyProperty();
  }

  /** What is in it; nothing while it is read, and where it cannot be. */
  ReadOnlyObjectProperty<Optional<DraftPreview>> previewProperty() {
    return preview.getReadOnlyProperty();
  }

  /** What is wrong with the file. */
  ObservableList<String> faults() {
    return faultsSeen;
  }

  /** The yarn for each colour on each side. */
  ObservableList<DraftChoice> choices() {
    return choices.all();
  }

  /** {@link #ANY_YARN} and the names of the yarns on the shelf. */
  ObservableList<String> yarns() {
    return yarnsSeen;
  }

  /** Why the ledger did not take the plan, or empty. */
  ReadOnlyStringProperty troubleProperty() {
    return trouble.getReadOnlyProperty();
  }

  /** The name of the plan to begin. */
  StringProperty nameProperty() {
    return name;
  }

  /** The yarn from whose colours alone is proposed, or {@link #ANY_YARN}. */
  StringProperty onlyProperty() {
    return only;
  }

  Act act() {
    return act;
  }

  /** Reads a draft and holds it against the shelf. */
  void read(Path path) {
    close();
    file.set(String.valueOf(path.getFileName()));
    open.set(true);
    Consumer<Runnable> telling = latest.only(Runnable::run);
    work.run(() -> reading(path), telling, wrong -> telling.accept(() -> faults.setAll(Status.words(wrong))));
  }

  private Runnable reading(Path path) {
    try {
      WeaveDraft draft = BringInDraft.read(path);
      List<Skein> skeins = new Shelf(studio).skeins().stream().map(ShelfSkein::skein).toList();
      DraftPreview now = DraftPreview.of(draft, skeins, Optional.empty());
      return () -> show(now, skeins);
    } catch (BadInput bad) {
      return () -> refused(path, bad.faults());
    }
  }

  /** Leaves the draft; nothing of it is kept. */
  void close() {
    latest.only(_ -> {});
    open.set(false);
    preview.set(Optional.empty());
    faults.clear();
    choices.clear();
    trouble.set("");
  }

  /** The name of the file stands above them. */
  private void refused(Path path, List<String> told) {
    String whole = path + ", ";
    faults.setAll(told.stream().map(fault -> fault.startsWith(whole) ? fault.substring(whole.length()) : fault).toList());
  }

  private void show(DraftPreview now, List<Skein> skeins) {
    WeaveDraft draft = now.draft();
    shelf = skeins;
    Set<String> names = new LinkedHashSet<>(List.of(ANY_YARN));
    shelf.stream().map(skein -> skein.yarn().yarn()).sorted().forEach(names::add);
    yarns.setAll(names);
    only.set(ANY_YARN);
    String title = draft.title().isBlank() ? file.get().replaceFirst("\\.[^.]*$", "") : draft.title();
    name.set(NewPlan.name(title.strip(), taken.get()));
    propose(now, Optional.empty());
  }

  private void proposeAgain(WeaveDraft draft) {
    Optional<String> yarn = Optional.of(only.get()).filter(now -> !now.equals(ANY_YARN));
    List<Skein> skeins = shelf;
    Consumer<DraftPreview> telling = latest.only(now -> propose(now, yarn));
    work.run(() -> DraftPreview.of(draft, skeins, yarn), telling, wrong -> trouble.set(Status.words(wrong)));
  }

  private void propose(DraftPreview now, Optional<String> yarn) {
    choices.propose(now, shelf, yarn);
    preview.set(Optional.of(now));
    changed();
  }

  /** Takes every yarn that is proposed. */
  void takeAll() {
    choices.takeAll();
  }

  /** Keeps the plan that the draft begins. */
  void begin() {
    if (act.isPossible()) {
      String called = name.get().strip();
      PlanDraft plan = WeavePlan.of(preview.get().orElseThrow().draft(), called, choices.yarns());
      act.attempt(_ -> new BringInDraft(studio).keep(NewPlan.completed(plan, new Settings(studio).judgement())), () -> {}, () -> done(called), wrong -> trouble.set(Status.words(wrong)));
    }
  }

  private void done(String called) {
    close();
    begun.accept(called);
  }

  private void changed() {
    trouble.set("");
    act.renew();
    String called = name.get().strip();
    if (preview.get().isEmpty()) {
      act.judge(Say.text("The draft is being read."));
    } else if (choices.open() > 0) {
      act.judge(Say.count(choices.open(), "Take or choose a yarn for {0} colour more.", "Take or choose a yarn for {0} colours more."));
    } else if (called.isEmpty()) {
      act.judge(Say.text("Type a name for the plan."));
    } else {
      act.judge(taken.get().stream().filter(other -> PlanName.alike(other, called)).findFirst().map(other -> Say.text("There is a plan {0} already.", other)).orElse(""));
    }
  }
}
