package hankbook.desktop.colour;

import hankbook.desktop.Work;
import hankbook.desktop.say.Say;
import hankbook.measure.Unreadable;
import hankbook.yarn.ScreenColour;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** A colour that is being picked: typed by its numbers, or pointed at in a photograph, which then types it. */
public final class ColourPicking {
  private final Work work;
  private final Consumer<String> taken;
  private final StringProperty typed = new SimpleStringProperty("");
  private final ReadOnlyStringWrapper hex = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper message = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");
  private final ReadOnlyBooleanWrapper reading = new ReadOnlyBooleanWrapper(false);
  private final ReadOnlyObjectWrapper<Optional<Photograph>> photograph = new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Spot> spot = new ReadOnlyObjectWrapper<>(new Spot(0, 0));
  private long asked;

  /**
   * @param work where a photograph is read
   * @param taken is given the colour that is taken, as {@code #rrggbb}
   */
  public ColourPicking(Work work, Consumer<String> taken) {
    this.work = work;
    this.taken = taken;
    typed.subscribe(this::read);
  }

  /** The colour as it is typed. */
  public StringProperty typedProperty() {
    return typed;
  }

  /** The colour as {@code #rrggbb}, or empty where there is none yet. */
  public ReadOnlyStringProperty hexProperty() {
    return hex.getReadOnlyProperty();
  }

  /** What is wrong with what is typed, or empty. */
  ReadOnlyStringProperty messageProperty() {
    return message.getReadOnlyProperty();
  }

  /** Why there is no photograph, or empty. */
  ReadOnlyStringProperty troubleProperty() {
    return trouble.getReadOnlyProperty();
  }

  /** Whether a photograph is being read. */
  ReadOnlyBooleanProperty readingProperty() {
    return reading.getReadOnlyProperty();
  }

  ReadOnlyObjectProperty<Optional<Photograph>> photographProperty() {
    return photograph.getReadOnlyProperty();
  }

  /** Where it is pointed at. */
  ReadOnlyObjectProperty<Spot> spotProperty() {
    return spot.getReadOnlyProperty();
  }

  /** Reads a photograph in place of the one before, which stays where it cannot be read. */
  public void open(Path file) {
    asked++;
    long mine = asked;
    reading.set(true);
    trouble.set("");
    work.run(() -> PhotographFile.read(file), read -> only(mine, () -> show(read)), fault -> only(mine, () -> trouble.set(words(file, fault))));
  }

  private void only(long mine, Runnable then) {
    if (mine == asked) {
      reading.set(false);
      then.run();
    }
  }

  private void show(Photograph read) {
    photograph.set(Optional.of(read));
    point(read.middle());
  }

  /** Points at the nearest point of the photograph. */
  void point(Spot at) {
    photograph.get().ifPresent(shown -> {
      Spot within = shown.within(at);
      spot.set(within);
      typed.set(shown.around(within).hex());
    });
  }

  /** Points so far to the right and below. */
  void move(int right, int down) {
    point(spot.get().moved(right, down));
  }

  /** Takes the colour, where there is one. */
  public void take() {
    if (!hex.get().isEmpty()) {
      taken.accept(hex.get());
    }
  }

  private void read(String text) {
    try {
      hex.set(text.isBlank() ? "" : ScreenColour.parse(text).hex());
      message.set("");
    } catch (Unreadable unreadable) {
      hex.set("");
      message.set(wanted(unreadable));
    }
  }

  private static String words(Path file, Exception fault) {
    return fault instanceof Unreadable unreadable ? wanted(unreadable) : Say.text("{0} cannot be read; choose another photograph.", file.getFileName());
  }

  private static String wanted(Unreadable unreadable) {
    return Say.text("Wanted: {0}.", Say.known(unreadable.wanted()));
  }
}
