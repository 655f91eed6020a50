package hankbook.desktop;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** A line of a purchase as it is being typed, with the skeins it paid for. */
final class PurchaseLineForm {
  private final StringProperty words = new SimpleStringProperty("");
  private final StringProperty price = new SimpleStringProperty("");
  private final ReadOnlyStringWrapper wordsMessage = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper priceMessage = new ReadOnlyStringWrapper("");
  private final ObservableList<String> skeins = FXCollections.observableArrayList();
  private final ObservableList<String> skeinsSeen = FXCollections.unmodifiableObservableList(skeins);
  private final SkeinPicker picker;
  private final Runnable changed;

  /**
   * @param why a skein of some code cannot be chosen
   * @param changed is run after every change
   */
  PurchaseLineForm(PurchaseTyped.Line typed, Function<String, String> why, Runnable changed) {
    this.changed = changed;
    picker = new SkeinPicker(this::add, why);
    words.set(typed.words());
    price.set(typed.price());
    skeins.setAll(typed.skeins());
    words.subscribe((_, _) -> changed.run());
    price.subscribe((_, _) -> changed.run());
  }

  StringProperty wordsProperty() {
    return words;
  }

  StringProperty priceProperty() {
    return price;
  }

  /** What is wrong with the words, or empty. */
  ReadOnlyStringProperty wordsMessageProperty() {
    return wordsMessage.getReadOnlyProperty();
  }

  /** What is wrong with the price, or empty. */
  ReadOnlyStringProperty priceMessageProperty() {
    return priceMessage.getReadOnlyProperty();
  }

  /** The codes of the skeins it paid for. */
  ObservableList<String> skeins() {
    return skeinsSeen;
  }

  SkeinPicker picker() {
    return picker;
  }

  /** Takes a skein out of the line. */
  void remove(String code) {
    skeins.remove(code);
    changed.run();
  }

  private void add(List<String> codes) {
    List<String> fresh = new ArrayList<>(codes);
    fresh.removeAll(skeins);
    skeins.addAll(fresh);
    changed.run();
  }

  PurchaseTyped.Line typed() {
    return new PurchaseTyped.Line(words.get(), price.get(), skeins);
  }

  void say(String wrongWords, String wrongPrice) {
    wordsMessage.set(wrongWords);
    priceMessage.set(wrongPrice);
  }
}
