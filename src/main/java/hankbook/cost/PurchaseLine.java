package hankbook.cost;

import hankbook.measure.Unreadable;
import hankbook.yarn.OneLine;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.joda.money.Money;

/**
 * One line of a purchase.
 *
 * @param words what was bought, as the bill has it; not blank
 * @param price what was paid for the whole of the line, before what was paid or taken off for all lines; at least zero
 * @param skeins the codes of the skeins it paid for, at least one, each once
 */
public record PurchaseLine(String words, Money price, List<String> skeins) {
  public PurchaseLine {
    words = OneLine.of(words);
    skeins = skeins.stream().map(OneLine::of).toList();
    if (words.isEmpty()) {
      throw new Unreadable(words, "what was bought");
    }
    if (price.isNegative()) {
      throw new Unreadable(price.toString(), "a price of at least zero");
    }
    if (skeins.isEmpty()) {
      throw new Unreadable("", "the codes of the skeins that were paid for, at least one");
    }
    Set<String> before = new HashSet<>();
    for (String skein : skeins) {
      if (skein.isEmpty()) {
        throw new Unreadable(skein, "the code of a skein");
      }
      if (!before.add(skein)) {
        throw new Unreadable(skein, "each skein once, since it is paid for once");
      }
    }
  }
}
