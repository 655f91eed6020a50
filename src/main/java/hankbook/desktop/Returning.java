package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.measure.Length;
import hankbook.studio.Return;
import hankbook.studio.Studio;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;

/** Putting yarn of the chosen skein back on the shelf that a loom did not use. */
public final class Returning {
  private final Studio studio;
  private final Status status;
  private final Runnable after;
  private final Act act;
  private final ObservableList<String> plans = FXCollections.observableArrayList();
  private final ObjectProperty<Optional<String>> plan = new SimpleObjectProperty<>(Optional.empty());
  private final Typed<Length> length = new Typed<>(Length::parse);
  private final ReadOnlyStringWrapper there = new ReadOnlyStringWrapper("");
  private Optional<SkeinRow> skein = Optional.empty();

  /** @param after what follows once it is written down */
  public Returning(Studio studio, Work work, Status status, Runnable after) {
    this.studio = studio;
    this.status = status;
    this.after = after;
    act = new Act(work);
    length.textProperty().subscribe(_ -> changed());
    plan.subscribe(_ -> changed());
  }

  Act act() {
    return act;
  }

  /** The plans on whose looms some of it is. */
  ObservableList<String> plans() {
    return plans;
  }

  ObjectProperty<Optional<String>> planProperty() {
    return plan;
  }

  /** Chooses a plan; nothing where none is. */
  void choose(@Nullable String name) {
    plan.set(Optional.ofNullable(name).or(plan::get));
  }

  Typed<Length> length() {
    return length;
  }

  /** How much of it the ledger has on that loom, or empty. */
  ReadOnlyStringProperty thereProperty() {
    return there.getReadOnlyProperty();
  }

  /** Whether something is typed that stands in no ledger yet. */
  boolean isBegun() {
    return !length.isBlank();
  }

  /** Turns to a skein, or to none; what was typed for another one is cleared. */
  void turnTo(Optional<SkeinRow> row) {
    boolean another = !row.map(SkeinRow::code).equals(skein.map(SkeinRow::code));
    skein = row;
    if (another) {
      length.set("");
    }
    Optional<String> before = plan.get();
    List<String> now = row.map(chosen -> List.copyOf(chosen.shelf().onLoom().keySet())).orElse(List.of());
    plans.setAll(now);
    plan.set(before.filter(now::contains).or(() -> now.stream().findFirst()));
    changed();
  }

  /** Writes down that it came back. */
  void record() {
    if (act.isPossible()) {
      String code = skein.orElseThrow().code();
      String from = plan.get().orElseThrow();
      Length back = length.value().orElseThrow();
      act.attempt(id -> new Return(studio).skein(id, from, code, back), () -> length.set(""), () -> returned(code, from, back), status::wrong);
    }
  }

  private void returned(String code, String from, Length back) {
    status.done(Say.text("{0} of {1} came back from the loom of {2}.", Wording.yarn(back), code, from));
    after.run();
  }

  private Length onLoom() {
    Map<String, Length> looms = skein.map(row -> Map.<String, Length>copyOf(row.shelf().onLoom())).orElse(Map.of());
    return plan.get().map(name -> looms.getOrDefault(name, Length.ZERO)).orElse(Length.ZERO);
  }

  private void changed() {
    act.renew();
    there.set(onLoom().isPositive() ? Say.text("{0} of it are on the loom by the ledger.", Wording.yarn(onLoom())) : "");
    act.judge(whyNot());
  }

  private String whyNot() {
    if (!onLoom().isPositive()) {
      return Say.text("Nothing of it is on a loom.");
    }
    if (length.value().isEmpty()) {
      return length.messageProperty().get().isEmpty() ? Say.text("Type how much comes back.") : length.messageProperty().get();
    }
    Length back = length.value().get();
    if (!back.isPositive()) {
      return Say.text("Type a length over zero.");
    }
    return back.compareTo(onLoom()) > 0 ? Say.text("Only {0} of it are on that loom.", Wording.yarn(onLoom())) : "";
  }
}
