package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.studio.Describe;
import hankbook.studio.SkeinFacts;
import hankbook.studio.Studio;
import hankbook.yarn.Skein;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Laying the chosen skein, and others with it, in another place of the house. */
public final class Moving {
  private final Studio studio;
  private final Status status;
  private final ShelfModel shelf;
  private final Act act;
  private final StringProperty place = new SimpleStringProperty("");
  private final StringProperty codes = new SimpleStringProperty("");
  private final ReadOnlyStringWrapper codesMessage = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper words = new ReadOnlyStringWrapper("");
  private Optional<SkeinRow> skein = Optional.empty();

  /** @param shelf where the others are looked for, and which is read anew once they are moved */
  public Moving(Studio studio, Work work, Status status, ShelfModel shelf) {
    this.studio = studio;
    this.status = status;
    this.shelf = shelf;
    act = new Act(work);
    place.subscribe(_ -> changed());
    codes.subscribe(_ -> changed());
  }

  Act act() {
    return act;
  }

  /** The new place. */
  StringProperty placeProperty() {
    return place;
  }

  /** The codes of those that are moved. */
  StringProperty codesProperty() {
    return codes;
  }

  /** What is wrong with the codes, or empty. */
  ReadOnlyStringProperty codesMessageProperty() {
    return codesMessage.getReadOnlyProperty();
  }

  /** What the button says. */
  ReadOnlyStringProperty wordsProperty() {
    return words.getReadOnlyProperty();
  }

  /** Whether something is typed that stands in no ledger yet. */
  boolean isBegun() {
    return !place.get().isBlank();
  }

  /** Turns to a skein, or to none; what was typed for another one is cleared. */
  void turnTo(Optional<SkeinRow> row) {
    boolean another = !row.map(SkeinRow::code).equals(skein.map(SkeinRow::code));
    skein = row;
    if (another) {
      place.set("");
      codes.set(row.map(SkeinRow::code).orElse(""));
    }
    changed();
  }

  /** Moves all that lie in the same place. */
  void withItsPlace() {
    with(like -> like.location().equals(skein.orElseThrow().skein().location()));
  }

  /** Moves all of the same yarn, colour and lot. */
  void withItsLot() {
    with(like -> like.yarn().equals(skein.orElseThrow().skein().yarn()) && like.lot().equals(skein.orElseThrow().skein().lot()));
  }

  private void with(Predicate<Skein> alike) {
    codes.set(String.join(" ", skein.stream().flatMap(row -> Stream.concat(
        Stream.of(row.code()), shelf.everySkein().stream().filter(alike).filter(Moving::isThere).map(Skein::code).filter(code -> !code.equals(row.code())))).toList()));
  }

  private static boolean isThere(Skein skein) {
    return !skein.isMeasured() || skein.holds().isPositive();
  }

  /** Writes down where they lie. */
  void move() {
    if (act.isPossible()) {
      List<String> moved = read();
      String to = place.get().strip();
      SkeinFacts facts = new SkeinFacts(Optional.empty(), Optional.of(to), Optional.empty(), Optional.empty());
      act.attempt(_ -> new Describe(studio).skeins(moved, facts), this::clear, () -> moved(moved, to), status::wrong);
    }
  }

  private void moved(List<String> moved, String to) {
    status.done(moved.size() == 1 ? Say.text("{0} lies in {1} now.", moved.getFirst(), to) : Say.text("{0} skeins lie in {1} now.", moved.size(), to));
    shelf.refresh();
  }

  private void clear() {
    place.set("");
    codes.set(skein.map(SkeinRow::code).orElse(""));
  }

  /** Codes are parted by commas or spaces; one that has spaces in it is found as a whole between commas. */
  private List<String> read() {
    List<String> read = new ArrayList<>();
    for (String part : codes.get().split("[,;\n]", -1)) {
      if (isCode(part.strip())) {
        read.add(part.strip());
      } else {
        Stream.of(part.strip().split("\\s+", -1)).filter(code -> !code.isEmpty()).forEach(read::add);
      }
    }
    return read.stream().distinct().toList();
  }

  private boolean isCode(String text) {
    return shelf.everySkein().stream().anyMatch(skein -> skein.code().equals(text));
  }

  private void changed() {
    act.renew();
    List<String> read = read();
    Optional<String> unknown = read.stream().filter(code -> !isCode(code)).findFirst();
    codesMessage.set(unknown.map(code -> Say.text("There is no skein {0}.", code)).orElse(""));
    words.set(Say.count(read.size(), "Move {0} skein", "Move {0} skeins"));
    act.judge(whyNot(read));
  }

  private String whyNot(List<String> read) {
    if (!codesMessage.get().isEmpty()) {
      return codesMessage.get();
    }
    if (read.isEmpty()) {
      return Say.text("Choose a skein.");
    }
    return place.get().isBlank() ? Say.text("Type where they will lie.") : "";
  }
}
