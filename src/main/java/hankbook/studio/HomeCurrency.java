package hankbook.studio;

import hankbook.store.Session;
import hankbook.yarn.Skein;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;
import org.joda.money.Money;

/** The one currency in which a ledger reckons: as it is set, else the one in which most of its yarn was paid. */
final class HomeCurrency {
  private static final CurrencyUnit WHERE_A_COUNTRY_HAS_NONE = CurrencyUnit.EUR;

  private HomeCurrency() {}

  /** It, and before any yarn was paid that of the country in which the program runs. */
  static CurrencyUnit of(Session session) {
    return decided(session).orElseGet(HomeCurrency::ofThisCountry);
  }

  /** It where a setting or what was paid decides it; before that, the first that is paid will. */
  static Optional<CurrencyUnit> decided(Session session) {
    return Settings.judgement(session).currency().or(() -> mostPaid(session.skeins().all()));
  }

  /** A stock file, or a ledger from before there was one, may have several: the commonest then, and of equals the first by its letters. */
  static Optional<CurrencyUnit> mostPaid(List<Skein> stock) {
    Map<CurrencyUnit, Long> skeins = stock.stream()
        .map(Skein::cost)
        .flatMap(Optional::stream)
        .collect(Collectors.groupingBy(Money::getCurrencyUnit, Collectors.counting()));
    return skeins.keySet().stream()
        .min(Comparator.comparing((Function<CurrencyUnit, Long>) skeins::get).reversed().thenComparing(CurrencyUnit::getCode));
  }

  private static CurrencyUnit ofThisCountry() {
    try {
      return CurrencyUnit.of(Locale.getDefault());
    } catch (IllegalCurrencyException noCountry) {
      return WHERE_A_COUNTRY_HAS_NONE;
    }
  }
}
