package hankbook.print;

import hankbook.measure.Exact;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.reckon.Cause;
import hankbook.reckon.Reckoning;
import hankbook.reckon.YarnAccount;
import hankbook.yarn.YarnColour;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** The yarn of a cloth on its record. */
final class RecordYarns {
  private static final List<Sheet.Column> YARNS =
      List.of(new Sheet.Column("Yarn", false, 6), new Sheet.Column("Planned, m", true, 2), new Sheet.Column("Used, m", true, 2), new Sheet.Column("More or less, m", true, 3));
  private static final List<Sheet.Column> SKEINS =
      List.of(new Sheet.Column("Skein", false, 2), new Sheet.Column("Yarn", false, 6), new Sheet.Column("Dye lot", false, 2), new Sheet.Column("Gave, m", true, 2));

  private RecordYarns() {}

  static Sheet.Table yarns(ClothRecord cloth) {
    List<Sheet.Row> rows = new ArrayList<>();
    for (YarnAccount yarn : cloth.reckoning().yarns()) {
      rows.add(row(yarn.yarn().toString(), hex(cloth, yarn.yarn()), yarn.planned(), yarn.used(), false));
    }
    if (rows.size() > 1) {
      rows.add(row("all yarns", Optional.empty(), cloth.reckoning().planned(), cloth.reckoning().used(), true));
    }
    return new Sheet.Table("Its yarn", YARNS, rows);
  }

  private static Sheet.Row row(String name, Optional<String> hex, Length planned, Length used, boolean sum) {
    List<Sheet.Cell> cells = List.of(new Sheet.Cell(name, hex), Sheet.Cell.of(number(planned)), Sheet.Cell.of(number(used)), Sheet.Cell.of(signed(used.minus(planned))));
    return new Sheet.Row(cells, sum);
  }

  static Sheet.Table skeins(ClothRecord cloth) {
    List<Sheet.Row> rows = cloth.skeins().stream()
        .map(gave -> new Sheet.Row(
            List.of(Sheet.Cell.of(gave.code()), new Sheet.Cell(gave.yarn().toString(), Optional.of(gave.hex())), Sheet.Cell.of(gave.lot()), Sheet.Cell.of(number(gave.length()))),
            false))
        .toList();
    return new Sheet.Table("The skeins that gave it", SKEINS, rows);
  }

  /** From what was planned to what was used; causes that change nothing are left out. The scale begins where the changes can be seen. */
  static Sheet.Bars waterfall(Reckoning reckoning) {
    List<Length> reached = new ArrayList<>(List.of(reckoning.planned()));
    List<Cause> causes = Arrays.stream(Cause.values()).filter(cause -> !reckoning.part(cause).isZero()).toList();
    causes.forEach(cause -> reached.add(reached.getLast().plus(reckoning.part(cause))));
    BigDecimal begin = begin(reached);
    List<Sheet.Bar> bars = new ArrayList<>();
    bars.add(new Sheet.Bar("planned", begin, metres(reckoning.planned()), number(reckoning.planned()) + " m", true));
    for (int i = 0; i < causes.size(); i++) {
      bars.add(new Sheet.Bar(causes.get(i).words(), metres(reached.get(i)), metres(reached.get(i + 1)), signed(reckoning.part(causes.get(i))) + " m", false));
    }
    bars.add(new Sheet.Bar("used", begin, metres(reckoning.used()), number(reckoning.used()) + " m", true));
    return new Sheet.Bars("Where it went" + (begin.signum() > 0 ? ", on a scale from " + begin.toPlainString() + " m" : ""), bars);
  }

  private static BigDecimal begin(List<Length> reached) {
    Length least = Collections.min(reached);
    Length range = Collections.max(reached).minus(least);
    BigDecimal begin = metres(least.minus(new Length(range.tenthsOfMillimetre() / 4))).setScale(0, RoundingMode.FLOOR);
    return begin.max(BigDecimal.ZERO);
  }

  private static Optional<String> hex(ClothRecord cloth, YarnColour yarn) {
    return cloth.skeins().stream().filter(gave -> gave.yarn().equals(yarn)).map(ClothRecord.Gave::hex).filter(hex -> !hex.isEmpty()).findFirst();
  }

  private static BigDecimal metres(Length length) {
    return Exact.decimal(length.in(LengthUnit.METRE), 4, RoundingMode.HALF_UP);
  }

  private static String number(Length length) {
    return Exact.decimal(length.in(LengthUnit.METRE), 1, RoundingMode.HALF_UP).toPlainString();
  }

  private static String signed(Length length) {
    return length.isPositive() ? "+" + number(length) : number(length);
  }
}
