package hankbook.desktop;

import hankbook.desktop.colour.ColourPicking;
import hankbook.desktop.say.Say;
import hankbook.exchange.CellFault;
import hankbook.exchange.StockFile;
import hankbook.measure.Length;
import hankbook.measure.Unreadable;
import hankbook.studio.NotDone;
import hankbook.studio.Receive;
import hankbook.studio.ReceiveMany;
import hankbook.studio.Studio;
import hankbook.yarn.GristSample;
import hankbook.yarn.ScreenColour;
import hankbook.yarn.Skein;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.Set;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** The form by which a skein is received, or several of one lot. Its fields are the columns of a stock file and are read by the same rules. */
public final class ReceiveModel {
  /** What the next skein of a delivery has for itself. */
  private static final List<String> OWN = List.of("length", "gross", "turns", "regain", "cost", "code");

  /** What stands in the form before anything is typed. */
  private static final Set<String> PROPOSED = Set.of("code", "form", "opened");

  private final Studio studio;
  private final Status status;
  private final ShelfModel shelf;
  private final Act act;
  private final Map<String, StringProperty> fields = new LinkedHashMap<>();
  private final Map<String, ReadOnlyStringWrapper> messages = new LinkedHashMap<>();
  private final StringProperty count = new SimpleStringProperty("1");
  private final ReadOnlyStringWrapper countMessage = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper preview = new ReadOnlyStringWrapper("");
  private final ReadOnlyBooleanWrapper many = new ReadOnlyBooleanWrapper(false);
  private final ColourPicking colour;
  private final ReadOnlyStringWrapper reading = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper sureness = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper disagreement = new ReadOnlyStringWrapper("");
  /** The shelf is read anew only a little later. */
  private List<String> justReceived = List.of();
  /** What the form kept of the skein received last: as long as nothing is typed, a second click means no second skein. */
  private Map<String, String> asLeft = Map.of();

  /** @param shelf what is there already, to propose a code and to know a repeated one */
  public ReceiveModel(Studio studio, Work work, Status status, ShelfModel shelf) {
    this.studio = studio;
    act = new Act(work);
    this.status = status;
    this.shelf = shelf;
    colour = new ColourPicking(work, hex -> field("hex").set(hex));
    StockFile.COLUMNS.forEach(column -> fields.put(column, new SimpleStringProperty("")));
    StockFile.COLUMNS.forEach(column -> messages.put(column, new ReadOnlyStringWrapper("")));
    fields.values().forEach(field -> field.subscribe(text -> changed()));
    count.subscribe(text -> changed());
  }

  /** What is typed in a column's field. */
  StringProperty field(String column) {
    return known(fields, column);
  }

  /** What is wrong with it, or empty. */
  ReadOnlyStringProperty message(String column) {
    return known(messages, column).getReadOnlyProperty();
  }

  /** How many skeins of one lot come. */
  StringProperty countProperty() {
    return count;
  }

  /** What is wrong with that, or empty. */
  ReadOnlyStringProperty countMessageProperty() {
    return countMessage.getReadOnlyProperty();
  }

  /** Whether it is more than one. */
  ReadOnlyBooleanProperty manyProperty() {
    return many.getReadOnlyProperty();
  }

  /** Of several skeins each with its code and what it will count with, or empty. */
  ReadOnlyStringProperty previewProperty() {
    return preview.getReadOnlyProperty();
  }

  /** Its colour, as it is picked from a photograph. */
  ColourPicking colour() {
    return colour;
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

  /** Receives the skein, or all of them. */
  void receive() {
    ReceiveReading read = judge();
    if (act.isPossible()) {
      act.attempt(id -> write(id, read.skeins()), this::clear, () -> received(read.skeins()), status::wrong);
    }
  }

  private void write(UUID id, List<Skein> skeins) throws NotDone {
    if (skeins.size() == 1) {
      new Receive(studio).skein(id, skeins.getFirst());
    } else {
      new ReceiveMany(studio).skeins(id, skeins);
    }
  }

  private void received(List<Skein> skeins) {
    status.done(told(skeins));
    justReceived = skeins.stream().map(Skein::code).toList();
    judge();
    if (field("code").get().isBlank()) {
      field("code").set(NextCode.after(Stream.concat(shelf.everySkein().stream().map(Skein::code), justReceived.stream()).toList()));
    }
    asLeft = texts();
    judge();
    shelf.refresh();
  }

  private String told(List<Skein> skeins) {
    Skein first = skeins.getFirst();
    Length all = skeins.stream().map(skein -> skein.withSample(sample()).holds()).reduce(Length.ZERO, Length::plus);
    return skeins.size() == 1
        ? Say.text("Received {0}, {1}, {2}.", first.code(), first.yarn(), Wording.yarn(all))
        : Say.text("Received {0} skeins, {1} to {2}, {3}, {4}.", skeins.size(), first.code(), skeins.getLast().code(), first.yarn(), Wording.yarn(all));
  }

  /** What the next skein of the same delivery has in common stays. */
  private void clear() {
    OWN.forEach(column -> field(column).set(""));
    count.set("1");
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

  private ReceiveReading judge() {
    Map<String, String> texts = texts();
    ReceiveReading read = ReceiveReading.of(texts, count.get(), this::isTaken);
    messages.values().forEach(message -> message.set(""));
    countMessage.set("");
    read.faults().forEach(this::say);
    String code = field("code").get().strip();
    if (isTaken(code)) {
      known(messages, "code").set(ReceiveReading.bears(code, ""));
    }
    many.set(!count.get().strip().equals("1") && countMessage.get().isEmpty());
    tell(many.get() && !read.skeins().isEmpty() ? LotPreview.counting(read.skeins(), sample(), shelf.doubts()) : Counting.of(texts, sample(), shelf.doubts()));
    preview.set(many.get() ? LotPreview.lines(read.skeins(), sample(), shelf.doubts()) : "");
    act.judge(texts.equals(asLeft) ? Say.text("Say first what the next skein holds.") : read.whyNot());
    return read;
  }

  private void tell(Counting counting) {
    reading.set(counting.counts());
    sureness.set(counting.surely());
    disagreement.set(counting.disagrees());
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
    if (texts().equals(asLeft) || PROPOSED.containsAll(typed.keySet())) {
      return Map.of();
    }
    typed.put(ReceiveReading.COUNT, count.get());
    return Collections.unmodifiableMap(typed);
  }

  /** Types again what was put by. */
  void type(Map<String, String> texts) {
    texts.forEach((column, text) -> Optional.ofNullable(fields.get(column)).ifPresent(field -> field.set(text)));
    count.set(texts.getOrDefault(ReceiveReading.COUNT, "1"));
  }

  private Map<String, String> texts() {
    Map<String, String> texts = new LinkedHashMap<>();
    fields.forEach((column, field) -> texts.put(column, field.get()));
    texts.computeIfPresent("hex", (_, text) -> hex(text));
    return texts;
  }

  /** As a stock file has it; what cannot be read is left for the rules of that to refuse. */
  private static String hex(String typed) {
    try {
      return typed.isBlank() ? typed : ScreenColour.parse(typed).hex();
    } catch (Unreadable unreadable) {
      return typed;
    }
  }

  private void say(CellFault fault) {
    (fault.column().equals(ReceiveReading.COUNT) ? countMessage : known(messages, fault.column())).set(Wording.wanted(fault.found(), fault.wanted()));
  }

  private boolean isTaken(String code) {
    return justReceived.contains(code) || (!shelf.isTakenBack(code) && shelf.everySkein().stream().anyMatch(skein -> skein.code().equals(code)));
  }

  private static <T> T known(Map<String, T> byColumn, String column) {
    T found = byColumn.get(column);
    if (found == null) {
      throw new IllegalArgumentException("column is " + column + ", wanted one of " + byColumn.keySet());
    }
    return found;
  }
}
