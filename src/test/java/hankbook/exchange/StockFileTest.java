package hankbook.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hankbook.measure.Length;
import hankbook.yarn.Skein;
import java.util.List;
import org.junit.jupiter.api.Test;

class StockFileTest {
  private static final String HEADER = "code,yarn,colour,hex,fibre,grist,form,length,gross,tare,opened,lot,location,cost,received\n";

  @Test
  void aRowIsASkeinAndItsWeightRulesOverItsLabel() throws BadInput {
    List<Skein> skeins =
        StockFile.read(
            "stock.csv",
            HEADER
                + "007,Skerry 16/2,Chalk,#F4F1E8,cotton,16/2 cotton,cone,1000 m,\"110 g\",10 g,yes,0042,\"Shelf 2, left\",24.50 EUR,2025-03-14\r\n"
                + "008,Skerry 16/2,Chalk,,,,,,,,,,,,\n");
    assertThat(skeins).extracting(Skein::code).containsExactly("007", "008");
    assertThat(skeins.get(0).lot()).isEqualTo("0042");
    assertThat(skeins.get(0).location()).isEqualTo("Shelf 2, left");
    assertThat(skeins.get(0).holds()).isEqualTo(Length.parse("1354.6895 m"));
    assertThat(skeins.get(0).weightDisagrees()).isTrue();
    assertThat(skeins.get(1).measurement().length()).isEmpty();
  }

  @Test
  void everyBadRowIsReportedAtOnce() {
    String text =
        HEADER
            + "1,Skerry,Chalk,,,,,1000 m,,,maybe,,,,\n"
            + "1,Skerry,Chalk,,,,,\"1,5 m\",,,,,,12 EURO,\n"
            + "2,Skerry,Chalk\n"
            + ",Skerry,Chalk,,,,,,,,,,,,14.03.2025\n"
            + "3,Skerry,Chalk,,,,,1 m,,,,,,,\n3,Skerry,Chalk,,,,,1 m,,,,,,,\n";
    BadInput bad = catchThrowableOfType(BadInput.class, () -> StockFile.read("stock.csv", text));
    assertThat(bad.faults())
        .containsExactly(
            "stock.csv, row 2, opened: found 'maybe', wanted yes or no",
            "stock.csv, row 3, length: found '1,5 m', wanted a length such as 70 cm or 2 x 70 cm + 5 cm (mm, cm, m, in, ft or yd)",
            "stock.csv, row 3, cost: found '12 EURO', wanted an amount and its currency such as 24.50 EUR",
            "stock.csv, row 4: found 3 cells, wanted 15 as in the header",
            "stock.csv, row 5, received: found '14.03.2025', wanted a date such as 2026-03-14",
            "stock.csv, row 5, code: found nothing, wanted the skein's code",
            "stock.csv, row 7, code: found '3' again, wanted a code of its own");
  }

  @Test
  void turnsAndMoistureAreColumnsToo() throws BadInput {
    String text = """
        code,yarn,colour,fibre,grist,gross,tare,turns,reel,regain
        1,Skerry,Chalk,,,,,(3 x 150),2 m,
        2,Skerry,Chalk,cotton,tex 100,112 g,0 g,,,12 %
        """;
    List<Skein> skeins = StockFile.read("stock.csv", text);
    assertThat(skeins).extracting(Skein::holds).containsExactly(Length.metres(900), Length.metres(1085));
    assertThat(skeins.get(1).measurement().words()).isEqualTo("weight");
  }

  @Test
  void turnsWantTheirReelAndMoistureAWeightOfAFibreThatIsUnderstood() {
    String text = """
        code,yarn,colour,fibre,gross,turns,reel,regain
        1,Skerry,Chalk,,,450,,
        2,Skerry,Chalk,,,,2 m,
        3,Skerry,Chalk,,,0,2 m,
        4,Skerry,Chalk,,,9,0 m,
        5,Skerry,Chalk,cotton,,,,12 %
        6,Skerry,Chalk,nettle,90 g,,,12 %
        7,Skerry,Chalk,cotton,90 g,,,120 %
        8,Skerry,Chalk,cotton,90 g,,,damp
        """;
    BadInput bad = catchThrowableOfType(BadInput.class, () -> StockFile.read("stock.csv", text));
    assertThat(bad.faults()).containsExactly(
        "stock.csv, row 2, reel: found nothing, wanted the circumference of the reel that the turns were counted on",
        "stock.csv, row 3, turns: found nothing, wanted how many turns of the reel",
        "stock.csv, row 4, turns: found '0', wanted at least one turn",
        "stock.csv, row 5, reel: found '0 m', wanted the circumference of a reel, over zero and up to 100 m",
        "stock.csv, row 6, regain: found '12 %', wanted no regain without a gross weight",
        "stock.csv, row 7, fibre: found 'nettle', wanted a fibre whose standard regain is known (acrylic, combed wool, cotton, flax, hemp, linen, mercerised cotton, nylon,"
            + " polyamide, polyester, silk, viscose, wool, or a blend such as wool 70 linen 30), or no regain",
        "stock.csv, row 8, regain: found '120 %', wanted a regain from 0 % to 100 %, of the dry mass",
        "stock.csv, row 9, regain: found 'damp', wanted a percentage such as 8 %, 8 % of cloth or 8 % of yarn");
  }

  @Test
  void aQuoteThatIsNeverClosedIsSaidWithItsRow() {
    BadInput bad = catchThrowableOfType(BadInput.class, () -> StockFile.read("stock.csv", "code,yarn,colour\n1,Skerry,Chalk\n2,\"Skerry,Chalk\n"));
    assertThat(bad).hasMessage("stock.csv, row 3: found a quote that is never closed, wanted rows after RFC 4180");
  }
}
