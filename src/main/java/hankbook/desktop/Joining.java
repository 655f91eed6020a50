package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.studio.Rewind;
import hankbook.studio.Rewound;
import hankbook.studio.Studio;
import hankbook.studio.WoundOff;
import hankbook.yarn.Skein;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** Winding all that is free of the chosen skein onto another one of its yarn and colour. Dye lots are mixed only where that is said. */
public final class Joining {
  private final Studio studio;
  private final Status status;
  private final ShelfModel shelf;
  private final Act act;
  private final ObservableList<Skein> others = FXCollections.observableArrayList();
  private final ObjectProperty<Optional<Skein>> other = new SimpleObjectProperty<>(Optional.empty());
  private final BooleanProperty mix = new SimpleBooleanProperty(false);
  private final ReadOnlyBooleanWrapper differ = new ReadOnlyBooleanWrapper(false);
  private final RewindPreview preview;
  private Optional<SkeinRow> skein = Optional.empty();

  /** @param shelf where the other one is looked for, and which is read anew once they are joined */
  public Joining(Studio studio, Work work, Status status, ShelfModel shelf) {
    this.studio = studio;
    this.status = status;
    this.shelf = shelf;
    act = new Act(work);
    preview = new RewindPreview(work, act, shelf, this::missing, this::trial);
    other.subscribe(_ -> changed());
    mix.subscribe(_ -> changed());
  }

  Act act() {
    return act;
  }

  /** The skeins of the same yarn and colour that have yarn on them, those of the same lot first. */
  ObservableList<Skein> others() {
    return others;
  }

  /** The one that it is wound onto. */
  ObjectProperty<Optional<Skein>> otherProperty() {
    return other;
  }

  /** Whether lots may be mixed. */
  BooleanProperty mixProperty() {
    return mix;
  }

  /** Whether the two are of different lots. */
  ReadOnlyBooleanProperty differProperty() {
    return differ.getReadOnlyProperty();
  }

  /** What both will hold, a line each, or empty. */
  ReadOnlyStringProperty previewProperty() {
    return preview.wordsProperty();
  }

  /** Turns to a skein, or to none; what was chosen for another one is cleared. */
  void turnTo(Optional<SkeinRow> row) {
    boolean another = !row.map(SkeinRow::code).equals(skein.map(SkeinRow::code));
    skein = row;
    if (another) {
      mix.set(false);
    }
    Optional<String> before = another ? Optional.empty() : other.get().map(Skein::code);
    others.setAll(row.map(this::likeIt).orElse(List.of()));
    other.set(others.stream().filter(like -> before.equals(Optional.of(like.code()))).findFirst());
    changed();
  }

  private List<Skein> likeIt(SkeinRow row) {
    List<Skein> alike = shelf.everySkein().stream()
        .filter(like -> like.yarn().equals(row.skein().yarn()) && !like.code().equals(row.code()) && like.holds().isPositive())
        .toList();
    return alike.stream().sorted((one, two) -> Boolean.compare(!one.lot().equals(row.skein().lot()), !two.lot().equals(row.skein().lot()))).toList();
  }

  /** Reckons only while someone looks. */
  void watch(boolean looking) {
    preview.watch(looking);
  }

  /** Winds it onto the other. */
  void join() {
    if (act.isPossible()) {
      String from = skein.orElseThrow().code();
      String onto = other.get().orElseThrow().code();
      boolean mixed = mix.get();
      act.attempt(id -> new Rewind(studio).join(id, from, new WoundOff.All(), onto, mixed, ""), () -> mix.set(false), () -> joined(from, onto), status::wrong);
    }
  }

  private void joined(String from, String onto) {
    status.done(Say.text("Wound all that was free of {0} onto {1}.", from, onto));
    shelf.refresh();
  }

  private void changed() {
    differ.set(skein.isPresent() && other.get().filter(onto -> !onto.lot().equals(skein.get().skein().lot())).isPresent());
    preview.ask();
  }

  private Callable<Rewound> trial() {
    String from = skein.orElseThrow().code();
    String onto = other.get().orElseThrow().code();
    boolean mixed = mix.get();
    return () -> new Rewind(studio).triedJoin(from, new WoundOff.All(), onto, mixed);
  }

  private String missing() {
    if (skein.isEmpty()) {
      return Say.text("Choose a skein.");
    }
    if (others.isEmpty()) {
      return Say.text("There is no other skein of this yarn and colour with yarn on it.");
    }
    if (!skein.get().free().length().isPositive()) {
      return Say.text("None of it is free to be wound off.");
    }
    if (other.get().isEmpty()) {
      return Say.text("Choose the other one.");
    }
    return differ.get() && !mix.get() ? Say.text("They are of different lots; joined they are of neither. Say that the lots may be mixed if that is meant.") : "";
  }
}
