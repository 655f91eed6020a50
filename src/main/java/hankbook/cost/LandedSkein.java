package hankbook.cost;

import java.util.Optional;
import org.joda.money.Money;

/**
 * What a skein cost with all that was paid to have it.
 *
 * @param skein its code
 * @param cost in the home currency
 * @param before what was said to be paid for it before this purchase was entered, and is said again if it is taken back
 */
public record LandedSkein(String skein, Money cost, Optional<Money> before) {}
