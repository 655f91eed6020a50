package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.studio.ValueBy;
import hankbook.studio.ValueRow;
import hankbook.studio.ValuedStock;
import java.math.BigDecimal;
import java.util.List;

/**
 * A line of the value of the stock; every text is made once.
 *
 * @param name of the group
 * @param metres that there are
 * @param mass of them as far as their grist is known, or empty
 * @param value in the currency of the stock
 * @param perMetre the value of a metre, or empty
 */
record ValueLine(String name, String metres, String mass, String value, String perMetre) {
  static List<ValueLine> of(ValuedStock stock, ValueBy by) {
    return stock.rows(by).stream().map(row -> of(row.name().isEmpty() ? ValueByWords.unsaid(by) : row.name(), row)).toList();
  }

  static ValueLine total(ValuedStock stock) {
    return of(Say.text("In all"), stock.total());
  }

  private static ValueLine of(String name, ValueRow row) {
    return new ValueLine(
        name, Wording.metres(row.worth().length()), mass(row), Wording.amount(row.worth().cost()), row.perMetre().map(BigDecimal::toPlainString).orElse(""));
  }

  /** A part whose grist is not known makes the mass a least one. */
  private static String mass(ValueRow row) {
    return row.mass().milligrams() == 0 ? "" : row.withoutMass().isZero() ? Wording.mass(row.mass()) : Say.text("over {0}", Wording.mass(row.mass()));
  }
}
