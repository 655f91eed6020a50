package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.CellFault;
import hankbook.exchange.RowReading;
import hankbook.exchange.StockFile;
import hankbook.measure.Length;
import hankbook.studio.Expect;
import hankbook.studio.Studio;
import hankbook.yarn.Skein;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** The form by which yarn is put on order, some skeins alike at once. Its fields are columns of a stock file and are read by the same rules. */
public final class OrderingModel {
  /** The columns that a weaver knows when ordering. */
  static final List<String> COLUMNS = List.of("yarn", "colour", "hex", "fibre", "grist", "length", "gross", "lot", "cost");

  private static final int MOST_ALIKE = 500;
  private static final String DUE = "due";
  private static final String ALIKE = "alike";

  private final Studio studio;
  private final Status status;
  private final Supplier<List<Skein>> shelf;
  private final Runnable after;
  private final Act act;
  private final Map<String, StringProperty> fields = new LinkedHashMap<>();
  private final Map<String, ReadOnlyStringWrapper> messages = new LinkedHashMap<>();
  private final StringProperty alike = new SimpleStringProperty("1");
  private final ReadOnlyStringWrapper alikeMessage = new ReadOnlyStringWrapper("");
  private final TypedDay due = new TypedDay();
  private final ReadOnlyStringWrapper dueMessage = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper reading = new ReadOnlyStringWrapper("");

  /**
   * @param shelf every skein there ever was, to propose codes and to know a yarn again
   * @param after what follows once it is on order
   */
  public OrderingModel(Studio studio, Work work, Status status, Supplier<List<Skein>> shelf, Runnable after) {
    this.studio = studio;
    this.status = status;
    this.shelf = shelf;
    this.after = after;
    act = new Act(work);
    COLUMNS.forEach(column -> fields.put(column, new SimpleStringProperty("")));
    COLUMNS.forEach(column -> messages.put(column, new ReadOnlyStringWrapper("")));
    fields.values().forEach(field -> field.subscribe(_ -> changed()));
    alike.subscribe(_ -> changed());
    due.textProperty().subscribe(_ -> changed());
  }

  /** What is typed in a column's field. */
  StringProperty field(String column) {
    return known(fields, column);
  }

  /** What is wrong with it, or empty. */
  ReadOnlyStringProperty message(String column) {
    return known(messages, column).getReadOnlyProperty();
  }

  /** How many skeins alike. */
  StringProperty alikeProperty() {
    return alike;
  }

  ReadOnlyStringProperty alikeMessageProperty() {
    return alikeMessage.getReadOnlyProperty();
  }

  TypedDay due() {
    return due;
  }

  /** What is wrong with the day, or empty. */
  ReadOnlyStringProperty dueMessageProperty() {
    return dueMessage.getReadOnlyProperty();
  }

  /** What is put on order, in all. */
  ReadOnlyStringProperty readingProperty() {
    return reading.getReadOnlyProperty();
  }

  Act act() {
    return act;
  }

  /** Looks at the shelf again. */
  void begin() {
    judge();
  }

  /** Fills what is still empty from a skein of the same yarn, and the colour from one of the same colour. */
  void fillFromShelf() {
    String yarn = field("yarn").get().strip();
    List<Skein> same = shelf.get().stream().filter(skein -> skein.yarn().yarn().equals(yarn)).toList();
    same.stream().findFirst().ifPresent(skein -> {
      fill("fibre", skein.fibre());
      fill("grist", skein.grist().map(Object::toString).orElse(""));
    });
    same.stream().filter(skein -> skein.yarn().colour().equals(field("colour").get().strip())).findFirst().ifPresent(skein -> fill("hex", skein.hex()));
  }

  private void fill(String column, String text) {
    if (field(column).get().isBlank()) {
      field(column).set(text);
    }
  }

  /** What is typed and not on order, by the names of the fields; empty where nothing is. */
  Map<String, String> typed() {
    Map<String, String> typed = new LinkedHashMap<>();
    fields.forEach((column, field) -> typed.put(column, field.get()));
    typed.put(DUE, due.textProperty().get());
    typed.values().removeIf(String::isBlank);
    if (!typed.isEmpty()) {
      typed.put(ALIKE, alike.get());
    }
    return Collections.unmodifiableMap(typed);
  }

  /** Types texts again that were put by. */
  void type(Map<String, String> texts) {
    fields.forEach((column, field) -> field.set(texts.getOrDefault(column, "")));
    due.textProperty().set(texts.getOrDefault(DUE, ""));
    alike.set(texts.getOrDefault(ALIKE, "1"));
  }

  /** Puts it on order. */
  void order() {
    judge();
    if (act.isPossible()) {
      List<Skein> skeins = skeins(count().orElseThrow());
      act.attempt(_ -> new Expect(studio).skeins(skeins, due.day().orElseThrow()), this::clear, () -> ordered(skeins), status::wrong);
    }
  }

  private void ordered(List<Skein> skeins) {
    String codes = skeins.size() == 1 ? skeins.getFirst().code() : Say.text("{0} to {1}", skeins.getFirst().code(), skeins.getLast().code());
    status.done(Say.text("On order: {0}, {1}.", codes, skeins.getFirst().yarn()));
    after.run();
    judge();
  }

  /** The next thing of the same order often has the rest in common. */
  private void clear() {
    List.of("colour", "hex", "lot").forEach(column -> field(column).set(""));
    alike.set("1");
  }

  private List<Skein> skeins(int count) {
    List<String> codes = new ArrayList<>(shelf.get().stream().map(Skein::code).toList());
    List<Skein> skeins = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      String code = NextCode.after(codes);
      codes.add(code);
      skeins.add(row(code).skein().orElseThrow());
    }
    return skeins;
  }

  private RowReading row(String code) {
    Map<String, String> texts = new LinkedHashMap<>();
    fields.forEach((column, field) -> texts.put(column, field.get().strip()));
    texts.put("code", code);
    return StockFile.row(texts);
  }

  private OptionalInt count() {
    String typed = alike.get().strip();
    boolean whole = typed.matches("[1-9]\\d{0,2}") && Integer.parseInt(typed) <= MOST_ALIKE;
    return whole ? OptionalInt.of(Integer.parseInt(typed)) : OptionalInt.empty();
  }

  private void changed() {
    act.renew();
    judge();
  }

  private void judge() {
    RowReading row = row("S1");
    messages.values().forEach(message -> message.set(""));
    row.faults().stream().filter(fault -> !fault.found().isEmpty() && messages.containsKey(fault.column())).forEach(
        fault -> known(messages, fault.column()).set(Wording.wanted(fault.found(), fault.wanted())));
    alikeMessage.set(count().isPresent() ? "" : Say.text("Wanted: a number from 1 to {0}.", MOST_ALIKE));
    dueMessage.set(due.day().filter(day -> day.isBefore(studio.today())).map(_ -> Say.text("That day is past.")).orElse(due.messageProperty().get()));
    Length each = row.skein().map(Skein::holds).orElse(Length.ZERO);
    act.judge(whyNot(row, each));
    reading.set(act.isPossible() ? Say.text("{0} in all.", Wording.yarn(each.times(count().orElseThrow()))) : "");
  }

  private String whyNot(RowReading row, Length each) {
    List<String> missing = new ArrayList<>(row.faults().stream().filter(fault -> fault.found().isEmpty()).map(fault -> Say.known(fault.column())).toList());
    if (row.faults().isEmpty() && !each.isPositive()) {
      missing.add(Say.text("length, or weight and grist"));
    }
    if (due.textProperty().get().isBlank()) {
      missing.add(Say.text("the day it is expected"));
    }
    boolean faulty = row.faults().stream().anyMatch(fault -> !fault.found().isEmpty()) || count().isEmpty() || !dueMessage.get().isEmpty();
    if (faulty) {
      return Say.text("Mend the fields marked above.");
    }
    return missing.isEmpty() ? "" : Say.text("Still wanted: {0}.", String.join(", ", missing));
  }

  private static <T> T known(Map<String, T> byColumn, String column) {
    T found = byColumn.get(column);
    if (found == null) {
      throw new IllegalArgumentException("column is " + column + ", wanted one of " + byColumn.keySet());
    }
    return found;
  }
}
