package hankbook.studio;

import hankbook.allot.Cover;
import hankbook.allot.Purchase;
import hankbook.measure.Length;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.joda.money.Money;

/**
 * A yarn of a plan whose price may be named.
 *
 * @param yarn the yarn and its colour
 * @param holds the yarn on one put-up of it; empty where nothing shows it
 * @param each what a put-up costs that is to be bought; empty where none is, or no price is known
 * @param unknown whether skeins are taken from of which it is not known what was paid; they can be priced where a put-up's length is said too
 */
public record YarnToPrice(YarnColour yarn, Optional<Length> holds, Optional<Money> each, boolean unknown) {
  /** @param purchases of what lacks */
  static List<YarnToPrice> of(Answer answer, List<Purchase> purchases, Predicate<String> isUnknown) {
    Set<String> taken = answer.check().shares().stream().map(share -> share.code()).filter(isUnknown).collect(Collectors.toSet());
    List<YarnToPrice> yarns = new ArrayList<>();
    for (YarnColour yarn : answer.check().covers().stream().map(Cover::yarn).toList()) {
      Optional<Purchase> purchase = purchases.stream().filter(buying -> buying.yarn().equals(yarn)).findFirst();
      boolean unknown = answer.stock().stream().anyMatch(skein -> skein.yarn().equals(yarn) && taken.contains(skein.code()));
      if (unknown || purchase.isPresent()) {
        Optional<Length> holds = purchase.flatMap(Purchase::holds).or(() -> printed(yarn, answer.stock()));
        yarns.add(new YarnToPrice(yarn, holds, purchase.flatMap(Purchase::each), unknown));
      }
    }
    return yarns;
  }

  /** The longest length that is printed on a put-up of the yarn. */
  private static Optional<Length> printed(YarnColour yarn, List<Skein> stock) {
    return stock.stream().filter(skein -> skein.yarn().equals(yarn)).flatMap(skein -> skein.label().stream()).max(Comparator.naturalOrder());
  }
}
