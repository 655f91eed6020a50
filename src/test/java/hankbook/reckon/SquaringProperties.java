package hankbook.reckon;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.ledger.Book;
import hankbook.ledger.Entry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Outcome;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.yarn.YarnColour;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** Whatever is left of whatever was drawn, posting what squares the book empties the loom and loses nothing. */
class SquaringProperties {
  private static final String PLAN = "Scarf";
  private static final List<YarnColour> YARNS = List.of(new YarnColour("Fjara", "Ash"), new YarnColour("Tussock", "Moss"));

  /** @param found as a part in a thousand of all that could be left of it and a little more */
  record Drawn(long onLoom, long reserved, long free, long promised, int yarn, int found) {}

  @Provide
  Arbitrary<List<Drawn>> skeins() {
    Arbitrary<Long> tenths = Arbitraries.oneOf(Arbitraries.just(0L), Arbitraries.longs().between(0, 5_000_000));
    return Combinators.combine(Arbitraries.longs().between(1, 5_000_000), tenths, tenths, tenths, Arbitraries.integers().between(0, 1), Arbitraries.integers().between(0, 1_000))
        .as(Drawn::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(5);
  }

  @Property(tries = 400)
  void theLoomAndWhatWasReservedComeOutEmptyAndNothingIsLost(@ForAll("skeins") List<Drawn> drawn, @ForAll @IntRange(max = 100) int bundled) {
    Book book = Book.EMPTY;
    List<DrawnSkein> skeins = new ArrayList<>();
    Map<String, Length> found = new HashMap<>();
    Map<YarnColour, Long> used = new HashMap<>();
    for (int i = 0; i < drawn.size(); i++) {
      Drawn of = drawn.get(i);
      String code = "S" + i;
      book = wind(book, code, of);
      skeins.add(new DrawnSkein(code, YARNS.get(of.yarn()), Optional.empty(), new Length(of.onLoom()), new Length(of.reserved()), new Length(of.free()), new Length(of.promised())));
      long most = of.onLoom() + of.reserved() + of.free() + 20_000;
      long left = of.promised() + most * of.found() / 1000;
      found.put(code, new Length(left));
      used.merge(YARNS.get(of.yarn()), Math.max(0, of.onLoom() + of.reserved() + of.free() + of.promised() - left), Long::sum);
    }
    List<Bundle> thrums = new ArrayList<>();
    List<Bundle> samples = new ArrayList<>();
    used.forEach((yarn, tenths) -> {
      if (tenths > 0) {
        thrums.add(new Bundle(Optional.of(yarn), new Bundle.Amount.OfLength(new Length(tenths * bundled / 100))));
        samples.add(new Bundle(Optional.of(yarn), new Bundle.Amount.OfLength(new Length(tenths * (100 - bundled) / 200))));
      }
    });
    SquaringOutcome outcome = new Squaring(PLAN, skeins, found, thrums, samples, Map.of()).outcome();
    assertThat(outcome).isInstanceOf(Squared.class);
    int number = 1000;
    for (Map.Entry<EntryKind, List<Transfer>> movement : ((Squared) outcome).movements().entrySet()) {
      number++;
      book = post(book, number, movement.getKey(), movement.getValue());
    }
    holdsWhatWasFound(book, skeins, found);
    for (YarnColour yarn : used.keySet()) {
      assertThat(at(book, skeins, yarn, new Place.Thrums(PLAN))).isEqualTo(sum(thrums, yarn));
      assertThat(at(book, skeins, yarn, new Place.Sample(PLAN))).isEqualTo(sum(samples, yarn));
    }
  }

  private static void holdsWhatWasFound(Book book, List<DrawnSkein> skeins, Map<String, Length> found) {
    assertThat(book.balances().sums().values()).allMatch(Length::isZero);
    assertThat(book.balances().lengths().keySet()).noneMatch(holding -> holding.place().equals(new Place.Loom(PLAN)) || holding.place().equals(new Place.Reserved(PLAN)));
    for (DrawnSkein skein : skeins) {
      Length wound = book.balances().at(skein.code(), new Place.Shelf()).plus(book.balances().at(skein.code(), new Place.Reserved("Other")));
      assertThat(wound).isEqualTo(found.get(skein.code()));
    }
  }

  private static Length at(Book book, List<DrawnSkein> skeins, YarnColour yarn, Place place) {
    return skeins.stream().filter(skein -> skein.yarn().equals(yarn)).map(skein -> book.balances().at(skein.code(), place)).reduce(Length.ZERO, Length::plus);
  }

  private static Length sum(List<Bundle> bundles, YarnColour yarn) {
    return bundles.stream()
        .filter(bundle -> bundle.yarn().equals(Optional.of(yarn)))
        .map(bundle -> ((Bundle.Amount.OfLength) bundle.amount()).length())
        .reduce(Length.ZERO, Length::plus);
  }

  private static Book wind(Book blank, String code, Drawn of) {
    int number = 10 * Integer.parseInt(code.substring(1));
    Place shelf = new Place.Shelf();
    Book book = post(blank, number, EntryKind.RECEIVE, moved(code, new Place.Maker(), shelf, of.onLoom() + of.reserved() + of.free() + of.promised()));
    book = post(book, number + 1, EntryKind.DRAW, moved(code, shelf, new Place.Loom(PLAN), of.onLoom()));
    book = post(book, number + 2, EntryKind.RESERVE, moved(code, shelf, new Place.Reserved(PLAN), of.reserved()));
    return post(book, number + 3, EntryKind.RESERVE, moved(code, shelf, new Place.Reserved("Other"), of.promised()));
  }

  private static List<Transfer> moved(String code, Place from, Place to, long tenths) {
    return tenths == 0 ? List.of() : List.of(new Transfer(code, from, to, new Length(tenths)));
  }

  private static Book post(Book book, int number, EntryKind kind, List<Transfer> transfers) {
    if (transfers.isEmpty()) {
      return book;
    }
    Outcome outcome = book.post(Entry.of(new UUID(1, number), kind, LocalDate.of(2026, 3, 14), "Ida", "", transfers));
    assertThat(outcome).isInstanceOf(Outcome.Posted.class);
    return ((Outcome.Posted) outcome).book();
  }
}
