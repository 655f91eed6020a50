package hankbook.studio;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.cost.CostBook;
import hankbook.cost.PaidFor;
import hankbook.cost.StockValue;
import hankbook.cost.ValueMethod;
import hankbook.exchange.BadInput;
import hankbook.exchange.StockFile;
import hankbook.ledger.Holding;
import hankbook.ledger.Place;
import hankbook.measure.Length;
import hankbook.yarn.Skein;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class ValuedStockTest {
  /** Yarn of unknown cost was wound onto A, so that what A holds now is not wholly known either. */
  @Test
  void everySkeinIsNamedOfWhichItIsNotKnownWhatAllOfItCost() throws BadInput {
    Map<String, Skein> skeins = StockFile.read("stock.csv", "code,yarn,colour,length,cost\nA,Skerry,Ash,100 m,5.00 EUR\nB,Skerry,Ash,100 m,\nC,Skerry,Ash,100 m,50.00 SEK\n").stream()
        .collect(Collectors.toMap(Skein::code, Function.identity()));
    Map<Holding, Length> without = skeins.keySet().stream().collect(Collectors.toMap(code -> new Holding(code, new Place.Shelf()), _ -> Length.metres(100)));
    StockValue value = new StockValue(ValueMethod.IDENTIFIED, CurrencyUnit.EUR, new TreeMap<>(), new TreeMap<>(), new TreeMap<>(without));
    PaidFor paid = PaidFor.of(CostBook.of(CurrencyUnit.EUR, List.of(), Map.of()), Money.zero(CurrencyUnit.EUR));
    assertThat(new ValuedStock(Optional.empty(), value, paid, skeins).withoutCost()).as("C is counted in its own currency").containsOnlyKeys("A", "B");
  }
}
