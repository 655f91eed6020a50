package hankbook.desktop;

import hankbook.exchange.CellFault;
import hankbook.exchange.RowReading;
import hankbook.exchange.StockFile;
import hankbook.studio.Receive;
import hankbook.studio.Studio;
import hankbook.yarn.GristSample;
import hankbook.yarn.Measurement;
import hankbook.yarn.Skein;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** The form by which one skein is received. Its fields are the columns of a stock file and are read by the same rules. */
public final class ReceiveModel {
  /** What must be there for every skein; the rest is wanted only beside something else. */
  private static final List<String> NAMED = List.of("code", "yarn", "colour");

  /** What stands in the form before anything is typed. */
  private static final Set<String> PROPOSED = Set.of("code", "form", "opened");

  /** The columns that a weaver would call otherwise. */
  private static final Map<String, String> NAMES =
      Map.of("gross", "weight", "tare", "weight of the cone", "hex", "colour", "location", "place", "received", "date", "reel", "length once round the reel", "regain", "moisture");

  private final Studio studio;
  private final Status status;
  private final ShelfModel shelf;
  private final Act act;
  private final Map<String, StringProperty> fields = new LinkedHashMap<>();
  private final Map<String, ReadOnlyStringWrapper> messages = new LinkedHashMap<>();
  private final ReadOnlyStringWrapper reading = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper sureness = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper disagreement = new ReadOnlyStringWrapper("");
  /** The shelf is read anew only a little later. */
  private String justReceived = "";
  /** What the form kept of the skein received last: as long as nothing is typed, a second click means no second skein. */
  private Map<String, String> asLeft = Map.of();

  /** @param shelf what is there already, to propose a code and to know a repeated one */
  public ReceiveModel(Studio studio, Work work, Status status, ShelfModel shelf) {
    this.studio = studio;
    act = new Act(work);
    this.status = status;
    this.shelf = shelf;
    StockFile.COLUMNS.forEach(column -> fields.put(column, new SimpleStringProperty("")));
    StockFile.COLUMNS.forEach(column -> messages.put(column, new ReadOnlyStringWrapper("")));
    fields.values().forEach(field -> field.subscribe(text -> changed()));
  }

  /** What is typed in a column's field. */
  StringProperty field(String column) {
    return known(fields, column);
  }

  /** What is wrong with it, or empty. */
  ReadOnlyStringProperty message(String column) {
    return known(messages, column).getReadOnlyProperty();
  }

  /** The length the skein will count with, and how that is known. */
  ReadOnlyStringProperty readingProperty() {
    return reading.getReadOnlyProperty();
  }

  /** How surely that is known, or empty. */
  ReadOnlyStringProperty surenessProperty() {
    return sureness.getReadOnlyProperty();
  }

  /** What else that was typed says otherwise, or empty. */
  ReadOnlyStringProperty disagreementProperty() {
    return disagreement.getReadOnlyProperty();
  }

  Act act() {
    return act;
  }

  /** Proposes the next free code where none is typed; all else stays as it was left. */
  void begin() {
    if (field("code").get().isBlank()) {
      field("code").set(NextCode.after(shelf.everySkein().stream().map(Skein::code).toList()));
    }
    judge();
  }

  /** Fills what is still empty from a skein of the same yarn and colour, or at least of the same yarn. */
  void fillFromShelf() {
    String yarn = field("yarn").get().strip();
    String colour = field("colour").get().strip();
    List<Skein> same = shelf.everySkein().stream().filter(skein -> skein.yarn().yarn().equals(yarn)).toList();
    same.stream().findFirst().ifPresent(skein -> {
      fill("fibre", skein.fibre());
      fill("grist", skein.grist().map(Object::toString).orElse(""));
    });
    same.stream().filter(skein -> skein.yarn().colour().equals(colour)).findFirst().ifPresent(skein -> fill("hex", skein.hex()));
  }

  /** Receives the skein. */
  void receive() {
    RowReading row = judge();
    if (act.isPossible()) {
      Skein skein = row.skein().orElseThrow();
      act.attempt(id -> new Receive(studio).skein(id, skein), this::clear, () -> received(skein), status::wrong);
    }
  }

  private void received(Skein skein) {
    status.done("Received " + skein.code() + ", " + skein.yarn() + ", " + Wording.yarn(skein.withSample(sample()).holds()) + ".");
    justReceived = skein.code();
    judge();
    if (field("code").get().isBlank()) {
      field("code").set(NextCode.after(Stream.concat(shelf.everySkein().stream().map(Skein::code), Stream.of(skein.code())).toList()));
    }
    asLeft = texts();
    judge();
    shelf.refresh();
  }

  /** What the next skein of the same delivery has in common stays. */
  private void clear() {
    List.of("length", "gross", "turns", "regain", "cost", "code").forEach(column -> field(column).set(""));
  }

  private void fill(String column, String text) {
    if (field(column).get().isBlank()) {
      field(column).set(text);
    }
  }

  private void changed() {
    act.renew();
    judge();
  }

  private RowReading judge() {
    Map<String, String> texts = texts();
    RowReading row = StockFile.row(texts);
    messages.values().forEach(message -> message.set(""));
    row.faults().stream().filter(fault -> !fault.found().isEmpty()).forEach(this::say);
    if (isTaken()) {
      known(messages, "code").set("Another skein bears this code.");
    }
    Counting counting = Counting.of(texts, sample(), shelf.doubts());
    reading.set(counting.counts());
    sureness.set(counting.surely());
    disagreement.set(counting.disagrees());
    act.judge(whyNot(row));
    return row;
  }

  /** That of the yarn's own grist, where one was weighed. */
  private Optional<GristSample> sample() {
    String yarn = field("yarn").get().strip();
    return shelf.everySkein().stream().filter(skein -> skein.yarn().yarn().equals(yarn)).flatMap(skein -> skein.sample().stream()).findFirst();
  }

  /** What is typed and not received, by the names of the fields; empty where nothing is that the last skein did not leave. */
  Map<String, String> typed() {
    Map<String, String> typed = texts();
    typed.values().removeIf(String::isBlank);
    return texts().equals(asLeft) || PROPOSED.containsAll(typed.keySet()) ? Map.of() : typed;
  }

  /** Types again what was put by. */
  void type(Map<String, String> texts) {
    texts.forEach((column, text) -> Optional.ofNullable(fields.get(column)).ifPresent(field -> field.set(text)));
  }

  private Map<String, String> texts() {
    Map<String, String> texts = new LinkedHashMap<>();
    fields.forEach((column, field) -> texts.put(column, field.get()));
    return texts;
  }

  private void say(CellFault fault) {
    known(messages, fault.column()).set(Wording.wanted(fault.found(), fault.wanted()));
  }

  private static String missing(CellFault fault) {
    return NAMED.contains(fault.column()) ? fault.column() : fault.wanted();
  }

  private static String mend(CellFault fault) {
    return "The " + NAMES.getOrDefault(fault.column(), fault.column()) + " marked above: wanted " + fault.wanted() + ".";
  }

  private boolean isTaken() {
    String code = field("code").get().strip();
    return justReceived.equals(code) || shelf.everySkein().stream().anyMatch(skein -> skein.code().equals(code));
  }

  private String whyNot(RowReading row) {
    if (texts().equals(asLeft)) {
      return "Say first what the next skein holds.";
    }
    Optional<String> bad = row.faults().stream().filter(fault -> !fault.found().isEmpty()).findFirst().map(ReceiveModel::mend);
    if (bad.isPresent()) {
      return bad.get();
    }
    List<String> missing = row.faults().stream().filter(fault -> fault.found().isEmpty()).map(ReceiveModel::missing).toList();
    if (!missing.isEmpty()) {
      return "Still wanted: " + String.join(", ", missing) + ".";
    }
    if (isTaken()) {
      return "Another skein bears this code.";
    }
    return row.measurement() instanceof Measurement.Unmeasured || row.measurement().length().orElseThrow().isPositive()
        ? ""
        : "A skein of no length cannot be received.";
  }

  private static <T> T known(Map<String, T> byColumn, String column) {
    T found = byColumn.get(column);
    if (found == null) {
      throw new IllegalArgumentException("column is " + column + ", wanted one of " + byColumn.keySet());
    }
    return found;
  }
}
