package hankbook.allot;

import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.Percentage;
import hankbook.measure.Unreadable;
import java.util.Comparator;
import java.util.function.Function;

/**
 * What a setting may be.
 *
 * @param reader of what is written
 * @param order of what was read
 * @param standard where nothing is set
 * @param least that it may be
 * @param most that it may be
 */
record SettingRange<T>(Function<String, T> reader, Comparator<T> order, String standard, String least, String most) {
  static SettingRange<Percentage> percentage(String standard, String least, String most) {
    return new SettingRange<>(SettingRange::plain, Comparator.comparing(Percentage::fraction), standard, least, most);
  }

  static SettingRange<Mass> mass(String standard, String least, String most) {
    return new SettingRange<>(Mass::parse, Comparator.naturalOrder(), standard, least, most);
  }

  static SettingRange<Length> length(String standard, String least, String most) {
    return new SettingRange<>(Length::parse, Comparator.naturalOrder(), standard, least, most);
  }

  /** The value as it is written down, which the reader reads back. */
  String tidy(String content) {
    T value = reader.apply(content.strip());
    if (order.compare(value, reader.apply(least)) < 0 || order.compare(value, reader.apply(most)) > 0) {
      throw new Unreadable(content.strip(), "from " + least + " to " + most);
    }
    return value.toString();
  }

  private static Percentage plain(String text) {
    if (!text.matches("[0-9. ]*%")) {
      throw new Unreadable(text, "a percentage such as 3 %");
    }
    return Percentage.parse(text);
  }
}
