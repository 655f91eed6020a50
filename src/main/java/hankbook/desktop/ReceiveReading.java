package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.CellFault;
import hankbook.exchange.LotRows;
import hankbook.exchange.RowReading;
import hankbook.exchange.StockFile;
import hankbook.measure.Arithmetic;
import hankbook.measure.Length;
import hankbook.measure.Unreadable;
import hankbook.yarn.Measurement;
import hankbook.yarn.Skein;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What the receive form comes to.
 *
 * @param skeins that would be received; none where anything is at fault or missing
 * @param faults of the fields, by column
 * @param whyNot why nothing can be received, or empty
 */
record ReceiveReading(List<Skein> skeins, List<CellFault> faults, String whyNot) {
  /** The name of the field that says how many skeins come. */
  static final String COUNT = "count";

  private static final String CODE = "code";

  /** What must be there for every skein; the rest is wanted only beside something else. */
  private static final List<String> NAMED = List.of(CODE, "yarn", "colour");

  /**
   * Reads what was typed.
   *
   * @param texts by column
   * @param count of the skeins, as it is typed
   * @param taken whether another skein bears a code
   */
  static ReceiveReading of(Map<String, String> texts, String count, Predicate<String> taken) {
    try {
      return of(LotRows.rows(texts, count(count)), taken);
    } catch (Unreadable unreadable) {
      return faulty(List.of(new CellFault(COUNT, count, unreadable.wanted())), ReceiveReading::mend);
    }
  }

  /**
   * Reads how many skeins come.
   *
   * @throws Unreadable if it is no count from 1 to as many as come at once
   */
  static int count(String text) {
    int count = Arithmetic.count(text);
    if (count < 1 || count > LotRows.MOST) {
      throw new Unreadable(text, "a count from 1 to 500");
    }
    return count;
  }

  private static ReceiveReading of(LotRows.Shared shared, Predicate<String> taken) {
    if (!shared.faults().isEmpty()) {
      return faulty(shared.faults(), ReceiveReading::mend);
    }
    List<Skein> skeins = new ArrayList<>();
    for (Map<String, String> row : shared.rows()) {
      RowReading reading = StockFile.row(row);
      String code = row.getOrDefault(CODE, "");
      Optional<ReceiveReading> hindered = hindered(reading, taken.test(code) ? code : "", shared.rows().size() == 1 ? "" : code);
      if (hindered.isPresent()) {
        return hindered.get();
      }
      reading.skein().ifPresent(skeins::add);
    }
    return new ReceiveReading(skeins, List.of(), "");
  }

  /** @param which of several skeins it is; empty where there is but one */
  private static Optional<ReceiveReading> hindered(RowReading reading, String taken, String which) {
    List<CellFault> bad = reading.faults().stream().filter(fault -> !fault.found().isEmpty()).toList();
    if (!bad.isEmpty()) {
      return Optional.of(faulty(bad, fault -> which.isEmpty() ? mend(fault) : Say.text("{0}: the {1} marked above, wanted {2}.", which, name(fault.column()), Say.known(fault.wanted()))));
    }
    if (!reading.faults().isEmpty()) {
      List<String> missing = reading.faults().stream().map(ReceiveReading::missing).toList();
      return Optional.of(new ReceiveReading(List.of(), List.of(), Say.text("Still wanted: {0}.", String.join(", ", missing))));
    }
    if (!taken.isEmpty()) {
      return Optional.of(new ReceiveReading(List.of(), List.of(), bears(taken, which)));
    }
    boolean empty = !(reading.measurement() instanceof Measurement.Unmeasured) && !reading.measurement().length().orElse(Length.ZERO).isPositive();
    return empty
        ? Optional.of(new ReceiveReading(List.of(), List.of(), which.isEmpty() ? Say.text("A skein of no length cannot be received.") : Say.text("{0} would have no length.", which)))
        : Optional.empty();
  }

  /** Says that a code is taken, and which where there are several. */
  static String bears(String code, String which) {
    return which.isEmpty() ? Say.text("Another skein bears this code.") : Say.text("Another skein bears the code {0}.", code);
  }

  private interface Words {
    String of(CellFault fault);
  }

  private static ReceiveReading faulty(List<CellFault> faults, Words words) {
    return new ReceiveReading(List.of(), faults, words.of(faults.getFirst()));
  }

  private static String mend(CellFault fault) {
    String mark = TypedText.isQuantity(fault.column()) ? TypedText.aboutMark(fault.found()) : "";
    return Say.text("The {0} marked above: wanted {1}.", name(fault.column()), Say.known(fault.wanted())) + (mark.isEmpty() ? "" : " " + mark);
  }

  private static String missing(CellFault fault) {
    return NAMED.contains(fault.column()) ? name(fault.column()) : Say.known(fault.wanted());
  }

  /** A column as a weaver would call it. */
  private static String name(String column) {
    return switch (column) {
      case CODE -> Say.text("code");
      case "yarn" -> Say.text("yarn");
      case "colour", "hex" -> Say.text("colour");
      case "fibre" -> Say.text("fibre");
      case "grist" -> Say.text("grist");
      case "form" -> Say.text("form");
      case "length" -> Say.text("length");
      case "gross" -> Say.text("weight");
      case "tare" -> Say.text("weight of the cone");
      case "turns" -> Say.text("turns");
      case "reel" -> Say.text("length once round the reel");
      case "regain" -> Say.text("moisture");
      case "lot" -> Say.text("lot");
      case "location" -> Say.text("place");
      case "cost" -> Say.text("cost");
      case "received" -> Say.text("date");
      case COUNT -> Say.text("number of skeins");
      default -> column;
    };
  }
}
