package hankbook.exchange;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hankbook.cost.Basis;
import hankbook.cost.Charge;
import hankbook.cost.ExchangeRate;
import hankbook.cost.Purchase;
import hankbook.cost.PurchaseLine;
import hankbook.measure.MoneyText;
import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import hankbook.yarn.OneLine;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;
import org.joda.money.Money;

/** Reads a purchase file, format {@code hankbook-purchase/1}. */
public final class PurchaseFile {
  private static final String FORMAT = "hankbook-purchase/1";
  private static final Set<String> PURCHASE = Set.of(
      "format", "date", "from", "currency", "lines", "carriage", "carriageBy", "duty", "dutyBy", "discount", "discountBy", "rate", "rateDate");
  private static final Set<String> LINE = Set.of("words", "price", "skeins");

  private PurchaseFile() {}

  /**
   * Reads the text of a purchase file.
   *
   * @param file its name, for messages
   * @throws BadInput naming the file, the field, what was found and what is wanted
   */
  public static Purchase read(String file, String text) throws BadInput {
    return JsonFile.read(file, text, "a purchase", root -> purchase(new JsonFields(root, "", PURCHASE)));
  }

  /** A purchase as a file that {@link #read} reads back to the same, so that it can be corrected. */
  public static String write(Purchase purchase) {
    ObjectNode root = JsonText.object().put("format", FORMAT).put("date", purchase.date().toString()).put("from", purchase.from());
    root.put("currency", purchase.currency().getCode());
    purchase.rate().ifPresent(rate -> root.put("rate", rate.text()).put("rateDate", rate.day().toString()));
    ArrayNode lines = root.putArray("lines");
    for (PurchaseLine line : purchase.lines()) {
      ArrayNode skeins = lines.addObject().put("words", line.words()).put("price", MoneyText.print(line.price())).putArray("skeins");
      line.skeins().forEach(skeins::add);
    }
    write(root, "carriage", purchase.carriage());
    write(root, "duty", purchase.duty());
    write(root, "discount", purchase.discount());
    return JsonText.of(root);
  }

  private static void write(ObjectNode root, String key, Charge charge) {
    root.put(key, MoneyText.print(charge.amount())).put(key + "By", charge.basis().words());
  }

  private static Purchase purchase(JsonFields fields) {
    fields.required("format", FORMAT, text -> JsonFile.format(text, FORMAT));
    LocalDate date = fields.required("date", "the day of the bill, such as 2026-03-14", StockRow::date);
    CurrencyUnit currency = fields.required("currency", "the currency of the bill such as EUR", PurchaseFile::currency);
    List<PurchaseLine> lines = fields.list("lines", LINE).stream().map(line -> line(line, currency)).toList();
    String from = fields.read("from", OneLine::of).orElse("");
    Optional<ExchangeRate> rate = rate(fields);
    Charge carriage = charge(fields, "carriage", currency, rate.isPresent());
    Charge duty = charge(fields, "duty", currency, rate.isPresent());
    Charge discount = charge(fields, "discount", currency, false);
    return fields.built("purchase", () -> new Purchase(date, from, currency, lines, carriage, duty, discount, rate));
  }

  private static PurchaseLine line(JsonFields fields, CurrencyUnit currency) {
    String words = fields.required("words", "what was bought", OneLine::of);
    Money price = fields.required("price", "what was paid for the whole line, such as 59.40", text -> amount(text, currency, false));
    List<String> skeins = fields.texts("skeins");
    return fields.built(() -> new PurchaseLine(words, price, skeins));
  }

  private static Charge charge(JsonFields fields, String key, CurrencyUnit currency, boolean orHome) {
    Money amount = fields.read(key, text -> amount(text, currency, orHome)).orElseGet(() -> Money.zero(currency));
    return new Charge(amount, fields.read(key + "By", Basis::parse).orElse(Basis.VALUE));
  }

  /** A rate is of a day. */
  private static Optional<ExchangeRate> rate(JsonFields fields) {
    Optional<LocalDate> day = fields.read("rateDate", StockRow::date);
    if (!fields.has("rate")) {
      day.ifPresent(without -> fields.check("rate", () -> {
        throw new Unreadable("", Phrase.of("the rate of {0}, as home money for one foreign unit", without));
      }));
      return Optional.empty();
    }
    LocalDate of = day.orElseGet(() -> fields.required("rateDate", "the day of the rate, such as 2026-03-14", StockRow::date));
    return fields.read("rate", text -> ExchangeRate.parse(text, of));
  }

  /** A plain number is in the currency of the bill; what was paid at home for a foreign bill names its own. */
  private static Money amount(String text, CurrencyUnit currency, boolean orHome) {
    String stripped = text.strip();
    String example = BigDecimal.valueOf(5940).movePointLeft(currency.getDecimalPlaces()).toPlainString();
    Money amount = readable(stripped.contains(" ") ? stripped : stripped + " " + currency.getCode())
        .orElseThrow(() -> new Unreadable(text, Phrase.of("an amount such as {0} or {1} {2}", example, example, currency.getCode())));
    if (!orHome && !amount.getCurrencyUnit().equals(currency)) {
      throw new Unreadable(text, Phrase.of("an amount in {0}, the currency of the purchase", currency));
    }
    return amount;
  }

  private static Optional<Money> readable(String text) {
    try {
      return Optional.of(MoneyText.parse(text));
    } catch (Unreadable none) {
      return Optional.empty();
    }
  }

  private static CurrencyUnit currency(String text) {
    try {
      return CurrencyUnit.of(text.strip().toUpperCase(Locale.ROOT));
    } catch (IllegalCurrencyException unknown) {
      throw new Unreadable(text, "a currency by its three letters such as EUR");
    }
  }
}
