package hankbook.desktop;

import hankbook.gear.Weave;
import hankbook.reckon.Finding;
import hankbook.reckon.Findings;
import hankbook.reckon.Lesson;
import hankbook.reckon.Manner;
import hankbook.studio.Learnt;
import hankbook.studio.Studio;
import hankbook.yarn.FibreFamily;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** What finished plans taught, of all cloths or of those of a loom, a weave and a fibre. */
final class LearntModel {
  private final Studio studio;
  private final Work work;
  private final Status status;
  private final Latest latest = new Latest();
  private final ReadOnlyBooleanWrapper open = new ReadOnlyBooleanWrapper(false);
  private final ReadOnlyObjectWrapper<Optional<Findings>> all = new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ObjectProperty<Optional<String>> loom = new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<Weave>> weave = new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Set<FibreFamily>> fibre = new SimpleObjectProperty<>(Set.of());
  private final ObservableList<Finding> rows = FXCollections.observableArrayList();
  private final ObservableList<Finding> rowsSeen = FXCollections.unmodifiableObservableList(rows);

  LearntModel(Studio studio, Work work, Status status) {
    this.studio = studio;
    this.work = work;
    this.status = status;
    loom.subscribe(_ -> show());
    weave.subscribe(_ -> show());
    fibre.subscribe(_ -> show());
  }

  /** Whether it is looked at. */
  ReadOnlyBooleanProperty openProperty() {
    return open.getReadOnlyProperty();
  }

  /** All of it; empty until the ledger was asked. */
  ReadOnlyObjectProperty<Optional<Findings>> allProperty() {
    return all.getReadOnlyProperty();
  }

  /** The loom whose cloths are shown; empty for any. */
  ObjectProperty<Optional<String>> loomProperty() {
    return loom;
  }

  /** The weave whose cloths are shown; empty for any. */
  ObjectProperty<Optional<Weave>> weaveProperty() {
    return weave;
  }

  /** The fibre whose cloths are shown; empty for any. */
  ObjectProperty<Set<FibreFamily>> fibreProperty() {
    return fibre;
  }

  /** What is shown. */
  ObservableList<Finding> rows() {
    return rowsSeen;
  }

  /** The cloths that are shown. */
  Manner group() {
    return new Manner(loom.get(), weave.get(), fibre.get());
  }

  /** The looms of finished cloths. */
  List<Optional<String>> looms() {
    return choices(manner -> manner.loom().stream(), Function.identity());
  }

  /** The weaves of finished cloths. */
  List<Optional<Weave>> weaves() {
    return choices(manner -> manner.weave().stream(), Weave::toString);
  }

  /** The fibres of finished cloths. */
  List<Set<FibreFamily>> fibres() {
    Stream<Set<FibreFamily>> known = manners().filter(manner -> !manner.fibre().isEmpty()).sorted(Comparator.comparing(Manner::fibreWords)).map(Manner::fibre).distinct();
    return Stream.concat(Stream.of(Set.<FibreFamily>of()), known).toList();
  }

  private <T> List<Optional<T>> choices(Function<Manner, Stream<T>> said, Function<T, String> words) {
    return Stream.concat(Stream.of(Optional.<T>empty()), manners().flatMap(said).distinct().sorted(Comparator.comparing(words)).map(Optional::of)).toList();
  }

  private Stream<Manner> manners() {
    return all.get().stream().flatMap(found -> found.lessons().stream()).map(Lesson::manner);
  }

  void open() {
    open.set(true);
    refresh();
  }

  void close() {
    open.set(false);
  }

  /** Asks the ledger anew, where it is looked at. */
  void refresh() {
    if (open.get()) {
      work.run(() -> new Learnt(studio).all(), latest.only(this::show), status::wrong);
    }
  }

  private void show(Findings found) {
    all.set(Optional.of(found));
    show();
  }

  private void show() {
    rows.setAll(all.get().map(found -> found.within(group())).orElse(List.of()));
  }
}
