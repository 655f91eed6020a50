package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.measure.Length;
import hankbook.studio.NewPackage;
import hankbook.studio.Rewind;
import hankbook.studio.Rewound;
import hankbook.studio.Studio;
import hankbook.studio.WoundOff;
import hankbook.yarn.PackageForm;
import hankbook.yarn.Skein;
import java.util.Optional;
import java.util.concurrent.Callable;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Winding some of the chosen skein, or all that is free of it, onto a package of its own. */
public final class WindingOff {
  private final Studio studio;
  private final Status status;
  private final ShelfModel shelf;
  private final Act act;
  private final Typed<Length> length = new Typed<>(Length::parse);
  private final BooleanProperty all = new SimpleBooleanProperty(false);
  private final StringProperty code = new SimpleStringProperty("");
  private final ObjectProperty<PackageForm> form = new SimpleObjectProperty<>(PackageForm.SKEIN);
  private final StringProperty place = new SimpleStringProperty("");
  private final RewindPreview preview;
  private boolean looked;
  private Optional<SkeinRow> skein = Optional.empty();

  /** @param shelf whose codes are taken, and which is read anew once it is wound */
  public WindingOff(Studio studio, Work work, Status status, ShelfModel shelf) {
    this.studio = studio;
    this.status = status;
    this.shelf = shelf;
    act = new Act(work);
    preview = new RewindPreview(work, act, shelf, this::missing, this::trial);
    length.textProperty().subscribe(_ -> changed());
    all.subscribe(_ -> changed());
    code.subscribe(_ -> changed());
    form.subscribe(_ -> changed());
    place.subscribe(_ -> changed());
  }

  Act act() {
    return act;
  }

  /** How much, unless it is all. */
  Typed<Length> length() {
    return length;
  }

  /** Whether all of it that is free is wound off. */
  BooleanProperty allProperty() {
    return all;
  }

  /** The code of the new package. */
  StringProperty codeProperty() {
    return code;
  }

  ObjectProperty<PackageForm> formProperty() {
    return form;
  }

  /** Where it will lie; where the other does while this is empty. */
  StringProperty placeProperty() {
    return place;
  }

  /** What both will hold, a line each, or empty. */
  ReadOnlyStringProperty previewProperty() {
    return preview.wordsProperty();
  }

  /** Whether something is typed that stands in no ledger yet. */
  boolean isBegun() {
    return !length.isBlank() || all.get() || !place.get().isBlank();
  }

  /** Turns to a skein, or to none; what was typed for another one is cleared. */
  void turnTo(Optional<SkeinRow> row) {
    boolean another = !row.map(SkeinRow::code).equals(skein.map(SkeinRow::code));
    skein = row;
    if (another) {
      clear();
      row.map(SkeinRow::skein).map(Skein::form).ifPresent(form::set);
    }
    propose();
    changed();
  }

  /** Reckons only while someone looks, and proposes a code. */
  void watch(boolean looking) {
    looked = looking;
    propose();
    preview.watch(looking);
  }

  private void propose() {
    if (looked && code.get().isBlank()) {
      code.set(NextCode.after(shelf.everySkein().stream().map(Skein::code).toList()));
    }
  }

  /** Winds it off. */
  void wind() {
    if (act.isPossible()) {
      String from = skein.orElseThrow().code();
      NewPackage onto = onto();
      WoundOff much = much().orElseThrow();
      act.attempt(id -> new Rewind(studio).off(id, from, much, onto, ""), this::clear, () -> wound(from, onto.code()), status::wrong);
    }
  }

  private void wound(String from, String onto) {
    status.done(Say.text("Wound yarn of {0} onto {1}.", from, onto));
    shelf.refresh();
  }

  private void clear() {
    length.set("");
    all.set(false);
    code.set("");
    place.set("");
  }

  private void changed() {
    preview.ask();
  }

  private Optional<WoundOff> much() {
    return all.get() ? Optional.of(new WoundOff.All()) : length.value().map(WoundOff.Metres::new);
  }

  private NewPackage onto() {
    return new NewPackage(code.get(), Optional.of(form.get()), Optional.of(place.get().strip()).filter(text -> !text.isEmpty()));
  }

  private Callable<Rewound> trial() {
    String from = skein.orElseThrow().code();
    WoundOff much = much().orElseThrow();
    NewPackage onto = onto();
    return () -> new Rewind(studio).triedOff(from, much, onto);
  }

  private String missing() {
    if (skein.isEmpty()) {
      return Say.text("Choose a skein.");
    }
    if (!skein.get().free().length().isPositive()) {
      return Say.text("None of it is free to be wound off.");
    }
    if (much().isEmpty()) {
      return Say.text("Type how much is wound off.");
    }
    return code.get().isBlank() ? Say.text("Type a code for the new one.") : "";
  }
}
