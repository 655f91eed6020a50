package hankbook.exchange;

import hankbook.measure.Arithmetic;
import hankbook.measure.Length;
import hankbook.measure.MoneyText;
import hankbook.measure.Mass;
import hankbook.measure.Percentage;
import hankbook.measure.Unreadable;
import hankbook.measure.YarnNumber;
import hankbook.yarn.Measurement;
import hankbook.yarn.Measures;
import hankbook.yarn.OneLine;
import hankbook.yarn.PackageForm;
import hankbook.yarn.Regain;
import hankbook.yarn.Skein;
import hankbook.yarn.Turns;
import hankbook.yarn.Weighing;
import hankbook.yarn.YarnColour;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.joda.money.Money;

/** One row of a stock file; empty cells are unknown. Every bad cell of it is a fault of its own. */
final class StockRow {
  private final Map<String, String> values;
  private final List<CellFault> faults = new ArrayList<>();

  private StockRow(Map<String, String> values) {
    this.values = values;
  }

  /** Reads texts by the names of their columns; a column that is not there is empty. */
  static RowReading read(Map<String, String> values) {
    return new StockRow(values).reading();
  }

  private RowReading reading() {
    Optional<YarnNumber> grist = cell("grist", YarnNumber::parse);
    Optional<Length> length = cell("length", Length::parse);
    Optional<PackageForm> form = cell("form", PackageForm::parse);
    Optional<Boolean> opened = cell("opened", StockRow::yesOrNo);
    Optional<Money> cost = cell("cost", MoneyText::parse);
    Optional<LocalDate> received = cell("received", StockRow::date);
    Optional<Turns> turns = turns();
    Optional<Weighing> weighing = weighing(form.orElse(PackageForm.SKEIN));
    for (String needed : List.of("code", "yarn", "colour")) {
      if (text(needed).isEmpty()) {
        faults.add(new CellFault(needed, "", "the skein's " + needed));
      }
    }
    for (String said : List.of("code", "yarn", "colour", "fibre", "lot", "location")) {
      cell(said, OneLine::of);
    }
    String hex = cell("hex", StockRow::hex).orElse("");
    if (!faults.isEmpty()) {
      return new RowReading(measurement(grist, new Measures(length, turns, weighing)), Optional.empty(), faults);
    }
    try {
      Skein skein = new Skein(
          text("code"), new YarnColour(text("yarn"), text("colour")), hex, text("fibre"), grist, form.orElse(PackageForm.SKEIN), length, turns,
          weighing, opened.orElse(false), text("lot"), text("location"), cost, received, Optional.empty(), Optional.empty());
      return new RowReading(skein.measurement(), Optional.of(skein), List.of());
    } catch (Unreadable tooMuch) {
      return new RowReading(new Measurement.Unmeasured(), Optional.empty(), List.of(new CellFault("length", tooMuch.found(), tooMuch.wanted())));
    }
  }

  /** As far as the cells can be read; a weight that cannot be brought to the standard regain says nothing. */
  private Measurement measurement(Optional<YarnNumber> grist, Measures measures) {
    try {
      return measures.measurement(grist, Optional.empty(), text("fibre"));
    } catch (Unreadable unknownFibre) {
      return new Measurement.Unmeasured();
    }
  }

  private Optional<Turns> turns() {
    Optional<Integer> count = cell("turns", Arithmetic::count);
    Optional<Length> reel = cell("reel", Length::parse);
    if (text("turns").isEmpty() != text("reel").isEmpty()) {
      boolean noReel = text("reel").isEmpty();
      faults.add(noReel ? new CellFault("reel", "", "the circumference of the reel that the turns were counted on") : new CellFault("turns", "", "how many turns of the reel"));
    }
    if (count.isEmpty() || reel.isEmpty()) {
      return Optional.empty();
    }
    return cell(count.get() == 0 ? "turns" : "reel", text -> new Turns(count.get(), reel.get()));
  }

  /** Moisture can only be judged of a weight, and of a fibre whose standard is known. */
  private Optional<Percentage> regain(Mass gross, Mass tare) {
    Optional<Percentage> regain = cell("regain", text -> new Weighing(gross, tare, Optional.of(Percentage.parse(text))).regain().orElseThrow());
    if (regain.isPresent() && Regain.standard(text("fibre")).isEmpty()) {
      faults.add(new CellFault("fibre", text("fibre"), "a fibre whose standard regain is known (" + Regain.fibres() + ", or a blend such as wool 70 linen 30), or no regain"));
    }
    return regain;
  }

  /** What a cone or spool is wound on weighs too much to be taken for nothing. */
  private Optional<Weighing> weighing(PackageForm form) {
    Optional<Mass> gross = cell("gross", Mass::parse);
    Mass tare = cell("tare", Mass::parse).orElse(Mass.ZERO);
    if (gross.isPresent() && text("tare").isEmpty() && (form == PackageForm.CONE || form == PackageForm.SPOOL)) {
      faults.add(new CellFault("tare", "", "the weight of the empty " + form + ", 0 g where there is none"));
      return Optional.empty();
    }
    if (gross.isPresent() && tare.compareTo(gross.get()) > 0) {
      faults.add(new CellFault("tare", text("tare"), "at most the gross, " + gross.get()));
      return Optional.empty();
    }
    if (gross.isEmpty() && text("gross").isEmpty() && !text("regain").isEmpty()) {
      faults.add(new CellFault("regain", text("regain"), "no regain without a gross weight"));
    }
    return gross.map(weight -> new Weighing(weight, tare, regain(weight, tare)));
  }

  private String text(String column) {
    return values.getOrDefault(column, "").strip();
  }

  private <T> Optional<T> cell(String column, Function<String, T> reader) {
    String text = text(column);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(reader.apply(text));
    } catch (Unreadable unreadable) {
      faults.add(new CellFault(column, unreadable.found(), unreadable.wanted()));
      return Optional.empty();
    }
  }

  private static Boolean yesOrNo(String text) {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "yes" -> true;
      case "no" -> false;
      default -> throw new Unreadable(text, "yes or no");
    };
  }

  private static String hex(String text) {
    String lower = text.toLowerCase(Locale.ROOT);
    if (!lower.matches("#?[0-9a-f]{6}")) {
      throw new Unreadable(text, "a colour such as #2f5d8a");
    }
    return lower.startsWith("#") ? lower : "#" + lower;
  }

  static LocalDate date(String text) {
    try {
      LocalDate date = LocalDate.parse(text);
      if (date.getYear() >= 1 && date.getYear() <= 9999) {
        return date;
      }
    } catch (DateTimeException notDate) {
      throw new Unreadable(text, "a date such as 2026-03-14");
    }
    throw new Unreadable(text, "a date such as 2026-03-14");
  }
}
