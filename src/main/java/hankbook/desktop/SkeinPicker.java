package hankbook.desktop;

import hankbook.desktop.say.Say;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** Chooses the skeins that a line paid for among those that no purchase paid for yet: by codes, by words, or all that came on one day. */
final class SkeinPicker {
  private static final int DAYS = 3;

  private final Consumer<List<String>> take;
  private final Function<String, String> why;
  private final StringProperty filter = new SimpleStringProperty("");
  private final ReadOnlyStringWrapper message = new ReadOnlyStringWrapper("");
  private final ObservableList<SkeinToPay> shown = FXCollections.observableArrayList();
  private final ObservableList<SkeinToPay> shownSeen = FXCollections.unmodifiableObservableList(shown);
  private final ObservableList<Map.Entry<LocalDate, Long>> days = FXCollections.observableArrayList();
  private final ObservableList<Map.Entry<LocalDate, Long>> daysSeen = FXCollections.unmodifiableObservableList(days);
  private List<SkeinToPay> candidates = List.of();
  private boolean offered;

  /**
   * @param take is given the codes of those that are chosen
   * @param why a skein of some code cannot be chosen
   */
  SkeinPicker(Consumer<List<String>> take, Function<String, String> why) {
    this.take = take;
    this.why = why;
    filter.subscribe(_ -> show());
  }

  /** Words or codes that are looked for. */
  StringProperty filterProperty() {
    return filter;
  }

  /** Why what was asked for is not taken, or empty. */
  ReadOnlyStringProperty messageProperty() {
    return message.getReadOnlyProperty();
  }

  /** Those that answer to the filter. */
  ObservableList<SkeinToPay> shown() {
    return shownSeen;
  }

  /** The last days on which some of them came, each with how many. */
  ObservableList<Map.Entry<LocalDate, Long>> days() {
    return daysSeen;
  }

  /** Says which there are to choose among. */
  void offer(List<SkeinToPay> now) {
    candidates = List.copyOf(now);
    offered = true;
    SortedMap<LocalDate, Long> counts = new TreeMap<>();
    candidates.stream().map(SkeinToPay::came).flatMap(Optional::stream).forEach(day -> counts.merge(day, 1L, Long::sum));
    days.setAll(counts.reversed().entrySet().stream().limit(DAYS).map(entry -> Map.entry(entry.getKey(), entry.getValue())).toList());
    show();
  }

  /** Whether it was not said yet which there are. */
  boolean isWithoutOffer() {
    return !offered;
  }

  /** Takes those whose codes are typed; else the only one that answers. */
  void enter() {
    List<String> codes = Stream.of(filter.get().strip().split("[\\s,;]+", -1)).filter(code -> !code.isEmpty()).distinct().toList();
    List<String> unknown = codes.stream().filter(code -> find(code).isEmpty()).toList();
    if (!codes.isEmpty() && unknown.isEmpty()) {
      add(codes.stream().map(this::find).flatMap(Optional::stream).toList());
    } else if (shown.size() == 1) {
      add(List.copyOf(shown));
    } else if (shown.isEmpty()) {
      message.set(why.apply(unknown.isEmpty() ? "" : unknown.getFirst()));
    } else {
      message.set(Say.count(shown.size(),
          "{0} skein answers to that; choose among them, or take them all.", "{0} skeins answer to that; choose among them, or take them all."));
    }
  }

  private Optional<SkeinToPay> find(String code) {
    return candidates.stream().filter(skein -> skein.code().equalsIgnoreCase(code)).findFirst();
  }

  /** Takes some. */
  void add(List<SkeinToPay> chosen) {
    if (!chosen.isEmpty()) {
      List<String> codes = new ArrayList<>(chosen.stream().map(SkeinToPay::code).toList());
      filter.set("");
      take.accept(codes);
    }
  }

  /** Takes all that answer to the filter. */
  void addShown() {
    add(List.copyOf(shown));
  }

  /** Takes all that came on a day. */
  void addDay(LocalDate day) {
    add(candidates.stream().filter(skein -> skein.came().equals(Optional.of(day))).toList());
  }

  private void show() {
    Predicate<String> asked = PlainWords.all(filter.get());
    message.set("");
    shown.setAll(candidates.stream().filter(skein -> asked.test(skein.searched())).toList());
  }
}
