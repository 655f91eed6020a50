package hankbook.cost;

import java.util.List;
import org.joda.money.Money;

/**
 * What a cloth is to be sold for. Whether tax comes on top, or is in it, is for local rules and licensed advice to say.
 *
 * @param pricing how it is made from the cost
 * @param all of it
 * @param pieces the same by kind of piece
 */
public record Price(Pricing pricing, Money all, List<PieceCost> pieces) {
  public Price {
    pieces = List.copyOf(pieces);
  }
}
