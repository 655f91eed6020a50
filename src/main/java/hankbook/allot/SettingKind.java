package hankbook.allot;

import hankbook.measure.Arithmetic;
import hankbook.measure.DurationText;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.measure.Mass;
import hankbook.measure.MoneyText;
import hankbook.measure.Percentage;
import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;
import org.joda.money.Money;

/** What kind of thing a setting is. */
enum SettingKind {
  PERCENTAGE,
  /** A percentage that may say of what it is: {@code 8 % of cloth}. */
  TAKE_UP,
  MASS,
  LENGTH,
  /** Written in centimetres, as one measures such lengths. */
  SHORT_LENGTH,
  /** A whole number. */
  COUNT,
  /** Of any currency, or not set at all; its range is of amounts alone. */
  MONEY,
  DURATION,
  CURRENCY,
  /** One of a few words; the most it may be names them all. */
  CHOICE;

  /** A length or mass that is kept in the unit it was measured in. */
  private static final Pattern IMPERIAL = Pattern.compile("\\d+(\\.\\d+)? (in|ft|yd|oz|lb)");

  /** What is written where an amount of money is not set. */
  static final String NOT_SET = "not set";

  /** No currency is set: it is the one in which the ledger's yarn was paid. */
  private static final String AS_PAID = "as paid";

  /**
   * A content as it is written down, which is read back to the same.
   *
   * @throws Unreadable if it is of another kind, or not from the least to the most
   */
  String tidy(String content, String least, String most) {
    return switch (this) {
      case PERCENTAGE -> within(content.strip(), least, most, SettingKind::percentage, Comparator.comparing(Percentage::fraction));
      case TAKE_UP -> within(content.strip(), least, most, Percentage::parse, Comparator.comparing(Percentage::fraction));
      case SHORT_LENGTH -> centimetres(within(content.strip(), least, most, Length::parse, Comparator.<Length>naturalOrder()));
      case COUNT -> within(content.strip(), least, most, Arithmetic::count, Comparator.<Integer>naturalOrder());
      case MASS -> within(content.strip(), least, most, Mass::parse, Comparator.<Mass>naturalOrder());
      case LENGTH -> within(content.strip(), least, most, Length::parse, Comparator.<Length>naturalOrder());
      case MONEY -> content.strip().equals(NOT_SET) ? NOT_SET : money(content.strip(), new BigDecimal(least), new BigDecimal(most));
      case DURATION -> duration(content.strip(), least, most);
      case CURRENCY -> currency(content.strip());
      case CHOICE -> choice(content.strip().toLowerCase(Locale.ROOT), most);
    };
  }

  private static String centimetres(String length) {
    return IMPERIAL.matcher(length).matches() ? length : Length.parse(length).print(LengthUnit.CENTIMETRE, 2);
  }

  private static String choice(String text, String all) {
    if (!List.of(all.split(", ")).contains(text)) {
      throw new Unreadable(text, Phrase.of("one of {0}", all));
    }
    return text;
  }

  private static String currency(String text) {
    if (text.equals(AS_PAID)) {
      return AS_PAID;
    }
    try {
      return CurrencyUnit.of(text.toUpperCase(Locale.ROOT)).getCode();
    } catch (IllegalCurrencyException unknown) {
      throw new Unreadable(text, Phrase.of("a currency by its three letters such as EUR, or {0}", AS_PAID));
    }
  }

  private static <T> String within(String content, String least, String most, Function<String, T> reader, Comparator<T> order) {
    T value = reader.apply(content);
    if (order.compare(value, reader.apply(least)) < 0 || order.compare(value, reader.apply(most)) > 0) {
      throw new Unreadable(content, Phrase.of("from {0} to {1}", least, most));
    }
    return IMPERIAL.matcher(content).matches() ? content : value.toString();
  }

  private static Percentage percentage(String text) {
    if (!text.matches("[0-9. ]*%")) {
      throw new Unreadable(text, "a percentage such as 3 %");
    }
    return Percentage.parse(text);
  }

  private static String money(String content, BigDecimal least, BigDecimal most) {
    Money money = MoneyText.parse(content);
    if (money.getAmount().compareTo(least) < 0 || money.getAmount().compareTo(most) > 0) {
      throw new Unreadable(content, Phrase.of("an amount from {0} to {1}, or {2}", least, most, NOT_SET));
    }
    return MoneyText.print(money);
  }

  private static String duration(String content, String least, String most) {
    Duration time = DurationText.parse(content);
    if (time.compareTo(DurationText.parse(least)) < 0 || time.compareTo(DurationText.parse(most)) > 0) {
      throw new Unreadable(content, Phrase.of("from {0} to {1}", least, most));
    }
    return DurationText.print(time);
  }
}
