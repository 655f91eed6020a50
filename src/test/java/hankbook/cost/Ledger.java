package hankbook.cost;

import hankbook.ledger.Entry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** A small ledger, written entry by entry in whole metres. */
final class Ledger {
  static final Place MAKER = new Place.Maker();
  static final Place ORDERED = new Place.Ordered();
  static final Place SHELF = new Place.Shelf();
  static final Place RECOUNT = new Place.Recount();
  static final Place AWAY = new Place.Away();
  static final Place LOOM = new Place.Loom("Scarf");
  static final Place CLOTH = new Place.Cloth("Scarf");
  static final Place THRUMS = new Place.Thrums("Scarf");

  private final List<Entry> entries = new ArrayList<>();
  private LocalDate day = LocalDate.of(2026, 3, 1);

  Ledger on(int dayOfMarch) {
    day = LocalDate.of(2026, 3, dayOfMarch);
    return this;
  }

  Ledger receive(String skein, long metres) {
    return move(EntryKind.RECEIVE, skein, MAKER, SHELF, metres);
  }

  Ledger draw(String skein, long metres) {
    return move(EntryKind.DRAW, skein, SHELF, LOOM, metres);
  }

  Ledger giveBack(String skein, long metres) {
    return move(EntryKind.RETURN, skein, LOOM, SHELF, metres);
  }

  Ledger found(String skein, long metres) {
    return move(EntryKind.RECOUNT, skein, RECOUNT, SHELF, metres);
  }

  Ledger lost(String skein, long metres) {
    return move(EntryKind.RECOUNT, skein, SHELF, RECOUNT, metres);
  }

  Ledger part(String skein, long metres) {
    return move(EntryKind.PART_WITH, skein, SHELF, AWAY, metres);
  }

  Ledger move(EntryKind kind, String skein, Place from, Place to, long metres) {
    return add(kind, new Transfer(skein, from, to, Length.metres(metres)));
  }

  Ledger add(EntryKind kind, Transfer... transfers) {
    entries.add(Entry.of(new UUID(5, entries.size()), kind, day, "Ida", "", List.of(transfers)));
    return this;
  }

  /** Takes back the entry with a number, from one. */
  Ledger reverse(int number) {
    entries.add(Entry.reversing(entries.get(number - 1), new UUID(5, entries.size()), day, "Ida", "a slip"));
    return this;
  }

  List<Entry> entries() {
    return List.copyOf(entries);
  }

  static Map<String, Money> paid(String skein, String amount) {
    return Map.of(skein, euros(amount));
  }

  static Money euros(String amount) {
    return Money.parse("EUR " + amount);
  }

  CostBook book(Map<String, Money> paid) {
    return CostBook.of(CurrencyUnit.EUR, entries, paid);
  }
}
