package hankbook.studio;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.cost.Worth;
import hankbook.exchange.BadInput;
import hankbook.exchange.StockFile;
import hankbook.measure.Length;
import java.util.List;
import java.util.Map;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class CostMeansTest {
  /** By hand: 40 g of 100 tex are 400 m; of the 1000 m that cost 20.00 they cost 8.00. One that was never begun came as it is. */
  @Test
  void ofAConeThatWasBegunOnlyWhatIsLeftOfItIsCosted() throws BadInput {
    String stock = """
        code,yarn,colour,grist,form,length,gross,tare,opened,cost
        BEGUN,Skerry 16/2,Chalk,tex 100,cone,1000 m,60 g,20 g,yes,20.00 EUR
        WHOLE,Skerry 16/2,Chalk,tex 100,cone,1000 m,60 g,20 g,no,20.00 EUR
        BARE,Skerry 16/2,Chalk,tex 100,cone,,60 g,20 g,yes,20.00 EUR
        ABROAD,Skerry 16/2,Chalk,,cone,500 m,,,yes,90.00 SEK
        """;
    CostMeans means = CostMeans.of(StockFile.read("stock.csv", stock));
    assertThat(means.currency()).as("the commonest").contains(CurrencyUnit.EUR);
    assertThat(means.worths()).isEqualTo(Map.of(
        "BEGUN", worth(400, "EUR 8.00"), "WHOLE", worth(400, "EUR 20.00"), "BARE", worth(400, "EUR 20.00"), "ABROAD", worth(500, "SEK 90.00")));
  }

  private static List<Worth> worth(long metres, String cost) {
    return List.of(new Worth(Length.metres(metres), Money.parse(cost)));
  }
}
