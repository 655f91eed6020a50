package hankbook.desktop;

import hankbook.exchange.BadInput;
import hankbook.exchange.StockFile;
import hankbook.ledger.Balances;
import hankbook.ledger.Book;
import hankbook.ledger.ChainedEntry;
import hankbook.ledger.Entry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Holding;
import hankbook.ledger.Outcome;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.studio.JournalEntry;
import hankbook.studio.NotDone;
import hankbook.studio.ShelfSkein;
import hankbook.yarn.Skein;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;

/** A ledger in memory, under the same rules as the one on disk. */
final class MemoryDesk implements LedgerDesk {
  private static final LocalDate TODAY = LocalDate.of(2026, 3, 14);

  private final Map<String, Skein> skeins = new LinkedHashMap<>();
  private final List<ChainedEntry> chain = new ArrayList<>();
  private Book book = Book.EMPTY;

  @Override
  public boolean isBlank() {
    return skeins.isEmpty();
  }

  @Override
  public List<ShelfSkein> skeins() {
    return skeins.values().stream().map(this::shelf).toList();
  }

  private ShelfSkein shelf(Skein skein) {
    Map<String, Length> reserved = new LinkedHashMap<>();
    Map<String, Length> onLoom = new LinkedHashMap<>();
    book.balances().lengths().forEach((Holding holding, Length length) -> {
      if (holding.skein().equals(skein.code()) && holding.place() instanceof Place.Reserved(String plan)) {
        reserved.put(plan, length);
      } else if (holding.skein().equals(skein.code()) && holding.place() instanceof Place.Loom(String plan)) {
        onLoom.put(plan, length);
      }
    });
    return new ShelfSkein(skein, book.balances().at(skein.code(), new Place.Shelf()), reserved, onLoom);
  }

  @Override
  public List<JournalEntry> journal() {
    return chain.reversed().stream().map(link -> new JournalEntry(link, Instant.EPOCH, reversal(link.entry().id()))).toList();
  }

  private Optional<UUID> reversal(UUID original) {
    return chain.stream().map(ChainedEntry::entry).filter(entry -> entry.reverses().equals(Optional.of(original))).map(Entry::id).findFirst();
  }

  @Override
  public void receive(UUID id, Skein skein) throws NotDone {
    if (skein.holds().isPositive()) {
      post(Entry.of(id, EntryKind.RECEIVE, TODAY, "Ada", "", List.of(new Transfer(skein.code(), new Place.Maker(), new Place.Shelf(), skein.holds()))));
    }
    skeins.put(skein.code(), skein);
  }

  @Override
  public int receiveFile(String name, String text) throws BadInput, NotDone {
    List<Skein> came = StockFile.read(name, text);
    for (Skein skein : came) {
      receive(UUID.randomUUID(), skein);
    }
    return came.size();
  }

  @Override
  public void fillWithSample() throws NotDone {
    try (InputStream in = Objects.requireNonNull(MemoryDesk.class.getResourceAsStream("/imports/stock.csv"))) {
      receiveFile("stock.csv", new String(in.readAllBytes(), StandardCharsets.UTF_8));
      move(EntryKind.RESERVE, "S001", new Place.Shelf(), new Place.Reserved("Quay towels"), 900);
      move(EntryKind.RESERVE, "S004", new Place.Shelf(), new Place.Reserved("Quay towels"), 400);
      move(EntryKind.DRAW, "S004", new Place.Reserved("Quay towels"), new Place.Loom("Quay towels"), 250);
    } catch (IOException | BadInput broken) {
      throw new UncheckedIOException(new IOException(broken));
    }
  }

  void move(EntryKind kind, String code, Place from, Place to, long metres) throws NotDone {
    post(Entry.of(UUID.randomUUID(), kind, TODAY, "Ada", "", List.of(new Transfer(code, from, to, Length.metres(metres)))));
  }

  @Override
  public void recount(UUID id, String code, Length found, String note) throws NotDone {
    Length more = found.minus(book.balances().at(code, new Place.Shelf()));
    Transfer transfer = more.isPositive()
        ? new Transfer(code, new Place.Recount(), new Place.Shelf(), more)
        : new Transfer(code, new Place.Shelf(), new Place.Recount(), more.negated());
    post(Entry.of(id, EntryKind.RECOUNT, TODAY, "Ada", note, List.of(transfer)));
  }

  @Override
  public void partWith(UUID id, String code, Length length, String note) throws NotDone {
    post(Entry.of(id, EntryKind.PART_WITH, TODAY, "Ada", note, List.of(new Transfer(code, new Place.Shelf(), new Place.Away(), length))));
  }

  @Override
  public void reverse(UUID id, UUID original, String reason) throws NotDone {
    post(Entry.reversing(book.entry(original).orElseThrow(), id, TODAY, "Ada", reason));
  }

  Balances balances() {
    return book.balances();
  }

  private void post(Entry entry) throws NotDone {
    switch (book.post(entry)) {
      case Outcome.Posted(Book next, ChainedEntry link) -> {
        book = next;
        chain.add(link);
      }
      case Outcome.AlreadyThere _ -> {}
      case Outcome.Refused refused -> throw new NotDone(refused.refusal().message());
    }
  }
}
