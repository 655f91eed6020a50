package hankbook.desktop;

import hankbook.allot.Setting;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** One setting: what holds, and what is typed in its place. */
final class SettingRow {
  private final Setting setting;
  private final StringProperty text = new SimpleStringProperty("");
  private final ReadOnlyStringWrapper message = new ReadOnlyStringWrapper("");
  private final ReadOnlyBooleanWrapper standard = new ReadOnlyBooleanWrapper(true);
  private String holds = "";

  SettingRow(Setting setting) {
    this.setting = setting;
    text.subscribe(_ -> message.set(""));
  }

  Setting setting() {
    return setting;
  }

  StringProperty textProperty() {
    return text;
  }

  /** What is wrong with the text, or empty. */
  ReadOnlyStringProperty messageProperty() {
    return message.getReadOnlyProperty();
  }

  /** Whether the default holds. */
  ReadOnlyBooleanProperty standardProperty() {
    return standard.getReadOnlyProperty();
  }

  /** Whether something else is typed than what holds. */
  boolean isTyped() {
    return !text.get().strip().equals(holds);
  }

  /** Whether something is shown as an empty field: that no amount and no currency is set. */
  static boolean isBlank(Setting setting, String content) {
    return content.equals(setting.standard()) && (setting.isMoney() || setting == Setting.CURRENCY);
  }

  /** Shows what holds; what is being typed stays. A time that is not set is an empty field, since that of earlier plans rules before its default. */
  void holds(String now, boolean set) {
    boolean typed = isTyped();
    holds = isBlank(setting, now) || (setting.isTime() && !set) ? "" : now;
    standard.set(now.equals(setting.tidy(setting.standard())));
    if (!typed) {
      text.set(holds);
    }
  }

  /** Shows what was just set. */
  void taken(String now, boolean set) {
    holds = text.get().strip();
    holds(now, set);
  }

  void say(String wrong) {
    message.set(wrong);
  }
}
