package hankbook.cost;

import hankbook.measure.Length;
import hankbook.yarn.YarnColour;
import java.util.Optional;
import org.joda.money.Money;

/**
 * What a plan leaves on a skein that it begins or takes from, or of put-ups that are bought for it.
 *
 * @param skein its code; empty of what is bought
 * @param yarn the yarn and its colour
 * @param left over zero
 * @param worth what it cost, where that is known
 * @param useful whether it is long enough to be woven from
 */
public record Remnant(String skein, YarnColour yarn, Length left, Optional<Money> worth, boolean useful) {}
