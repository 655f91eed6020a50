package hankbook.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.cost.Basis;
import hankbook.cost.Purchase;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PurchaseFileTest {
  private static final String BILL = """
      { "format": "hankbook-purchase/1", "date": "2026-03-14", "from": "a mill", "currency": "SEK", "rate": 0.0884, "rateDate": "2026-03-13",
        "lines": [{"words": "Two cones", "price": 594, "skeins": ["S1", "S2"]}, {"words": "A ball", "price": "42.80 SEK", "skeins": ["S3"]}],
        "carriage": "99.90", "carriageBy": "mass", "duty": "4.00 EUR" }
      """;

  @Test
  void aBillIsReadAsItIsWritten() throws Exception {
    Purchase purchase = PurchaseFile.read("bill.json", BILL);
    assertThat(purchase.goods()).isEqualTo(Money.parse("SEK 636.80"));
    assertThat(purchase.skeins()).containsExactly("S1", "S2", "S3");
    assertThat(purchase.carriage().basis()).isEqualTo(Basis.MASS);
    assertThat(purchase.duty().basis()).as("where it does not say").isEqualTo(Basis.VALUE);
    assertThat(purchase.duty().amount()).as("paid at home").isEqualTo(Money.parse("EUR 4.00"));
    assertThat(purchase.discount().amount().isZero()).isTrue();
    assertThat(purchase.rate().orElseThrow().text()).isEqualTo("0.0884");
  }

  @Test
  void whatIsWrittenIsReadBackToTheSame() throws Exception {
    Purchase foreign = PurchaseFile.read("bill.json", BILL);
    assertThat(PurchaseFile.read("again.json", PurchaseFile.write(foreign))).isEqualTo(foreign);
    Purchase atHome = PurchaseFile.read("bill.json", BILL.replace("\"rate\": 0.0884, \"rateDate\": \"2026-03-13\",", "").replace("4.00 EUR", "4.00"));
    assertThat(PurchaseFile.read("again.json", PurchaseFile.write(atHome))).isEqualTo(atHome);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
    "\"carriage\"|\"freight\"|freight: found 'freight', wanted one of carriage, carriageBy, currency, date, discount, discountBy, duty, dutyBy, format, from, lines, rate, rateDate",
    "\"words\": \"A ball\"|\"text\": \"A ball\"|lines[2].text: found 'text', wanted one of price, skeins, words",
    "\"words\": \"A ball\"|\"words\": \" \"|lines[2]: found nothing, wanted what was bought",
    "42.80 SEK|42.80 EUR|lines[2].price: found '42.80 EUR', wanted an amount in SEK, the currency of the purchase",
    "42.80 SEK|42.805|lines[2].price: found '42.805', wanted an amount such as 59.40 or 59.40 SEK",
    "42.80 SEK|-1|lines[2].price: found '-1', wanted an amount such as 59.40 or 59.40 SEK",
    "[\"S3\"]|[]|lines[2]: found nothing, wanted the codes of the skeins that were paid for, at least one",
    "[\"S3\"]|[{}]|lines[2].skeins: found '[{}]', wanted a list of texts in square brackets",
    "[\"S3\"]|\"S3\"|lines[2].skeins: found '\"S3\"', wanted a list of texts in square brackets",
    "[\"S3\"]|[\"S2\"]|purchase: found 'S2', wanted each skein in one line, since it is paid for once",
    "\"SEK\"|\"Kronor\"|currency: found 'Kronor', wanted a currency by its three letters such as EUR",
    "2026-03-14|14 March|date: found '14 March', wanted a date such as 2026-03-14",
    "0.0884|0|rate: found '0', wanted how much home money one foreign unit is, such as 0.0884: over zero, at most a million, with at most 12 decimals",
    ", \"rateDate\": \"2026-03-13\"|~~|rateDate: found nothing, wanted the day of the rate, such as 2026-03-14",
    "\"rate\": 0.0884, |~~|rate: found nothing, wanted the rate of 2026-03-13, as home money for one foreign unit",
    "\"mass\"|\"weight\"|carriageBy: found 'weight', wanted value or mass",
    "purchase/1|plan/1|format: found 'hankbook-plan/1', wanted hankbook-purchase/1",
  })
  void whatCannotBeTakenIsSaidByItsField(String written, String instead, String message) {
    assertThat(BILL).contains(written);
    assertThatThrownBy(() -> PurchaseFile.read("bill.json", BILL.replace(written, instead))).isInstanceOf(BadInput.class).hasMessage("bill.json, " + message);
  }
}
