package hankbook.store;

import hankbook.cost.Basis;
import hankbook.cost.Charge;
import hankbook.cost.ExchangeRate;
import hankbook.cost.LandedPurchase;
import hankbook.cost.Landing;
import hankbook.cost.Parcel;
import hankbook.cost.Purchase;
import hankbook.cost.PurchaseLine;
import hankbook.cost.Received;
import hankbook.ledger.Audit;
import hankbook.ledger.Balances;
import hankbook.ledger.ChainedEntry;
import hankbook.ledger.Entry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Finding;
import hankbook.ledger.Place;
import hankbook.ledger.Refusal;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.yarn.PackageForm;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Skeins and entries of an invented studio, and short ways to put them into a store. */
final class Examples {
  static final LocalDate DAY = LocalDate.of(2026, 3, 14);
  static final Instant NOON = Instant.parse("2026-03-14T12:00:00.123456Z");
  static final String CORAL = "Coral 8/2 no. 3";
  static final String TOWELS = "Quay towels";
  static final Place MAKER = new Place.Maker();
  static final Place SHELF = new Place.Shelf();
  static final Place SET_ASIDE = new Place.Reserved(TOWELS);
  static final Place LOOM = new Place.Loom(TOWELS);

  private Examples() {}

  static Skein skein(String code) {
    return new Skein(
        code, new YarnColour("Harbour cotton 8/2", "Coral"), "", "", Optional.empty(), PackageForm.CONE, Optional.empty(), Optional.empty(), false, "", "",
        Optional.empty(), Optional.empty(), Optional.empty());
  }

  /** A purchase of some skeins from abroad, 10.00 SEK for each, which are worth a euro. */
  static LandedPurchase paid(String... skeins) {
    CurrencyUnit abroad = CurrencyUnit.of("SEK");
    Money price = Money.ofMajor(abroad, 10L * skeins.length);
    Charge nothing = new Charge(Money.zero(abroad), Basis.VALUE);
    PurchaseLine line = new PurchaseLine("Harbour cotton, by the cone", price, List.of(skeins));
    Optional<ExchangeRate> rate = Optional.of(ExchangeRate.parse("0.100", DAY));
    Purchase purchase = new Purchase(DAY, "a mill", abroad, List.of(line), nothing, new Charge(Money.parse("EUR 0.50"), Basis.MASS), nothing, rate);
    Map<String, Received> known = Arrays.stream(skeins)
        .collect(Collectors.toMap(Function.identity(), _ -> new Received(Optional.empty(), Optional.empty(), Optional.of(Mass.grams(100)))));
    return Landing.of(purchase, CurrencyUnit.EUR, new Parcel(known), Map.of(skeins[0], Money.parse("EUR 7.77")));
  }

  /** An example of another dye lot. */
  static Skein described(String code, String lot) {
    Skein plain = skein(code);
    return new Skein(
        code, plain.yarn(), "", "", Optional.empty(), plain.form(), Optional.empty(), Optional.empty(), false, lot, "", Optional.empty(), Optional.empty(), Optional.empty());
  }

  static Entry receive(long id, long metres) {
    return entry(id, EntryKind.RECEIVE, move(MAKER, SHELF, metres));
  }

  static Entry reserve(long id, long metres) {
    return entry(id, EntryKind.RESERVE, move(SHELF, SET_ASIDE, metres));
  }

  static Entry reverse(Entry original, long id) {
    return Entry.reversing(original, id(id), DAY, "Ida", "typed twice");
  }

  static Entry entry(long id, EntryKind kind, Transfer... transfers) {
    return Entry.of(id(id), kind, DAY, "Ida", "", List.of(transfers));
  }

  static Transfer move(Place from, Place to, long metres) {
    return new Transfer(CORAL, from, to, Length.metres(metres));
  }

  static UUID id(long number) {
    return new UUID(0, number);
  }

  static void add(Store store, String... codes) {
    store.write(session -> {
      for (String code : codes) {
        session.skeins().add(skein(code), NOON);
      }
      return codes;
    });
  }

  static Optional<ChainedEntry> post(Store store, Entry entry) {
    return store.write(session -> session.entries().post(entry, NOON));
  }

  /** Why an entry was refused; empty where it was taken. */
  static Optional<Refusal> refusal(Store store, Entry entry) {
    try {
      post(store, entry);
      return Optional.empty();
    } catch (EntryRefused refused) {
      return Optional.of(refused.refusal());
    }
  }

  static List<Finding> audit(Store store) {
    return store.read(session -> Audit.of(session.entries().chain(), session.entries().end(), session.balances().all())).findings();
  }

  static List<ChainedEntry> chain(Store store) {
    return store.read(session -> session.entries().chain());
  }

  static Balances balances(Store store) {
    return store.read(session -> session.balances().all());
  }
}
