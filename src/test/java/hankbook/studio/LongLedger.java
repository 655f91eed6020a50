package hankbook.studio;

import hankbook.ledger.Entry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.store.LedgerAddress;
import hankbook.store.LedgerUnavailable;
import hankbook.store.Session;
import hankbook.yarn.PackageForm;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** A studio of many years: skeins that come, are set aside for plans, come free again and leave, by the store's own means; for measuring by hand. */
public final class LongLedger {
  private static final int AT_ONCE = 2000;
  private static final int FOR_EACH_SKEIN = 20;
  private static final LocalDate BEGUN = LocalDate.of(1996, 1, 2);
  private static final Length SOME = Length.metres(40);
  private static final String[] COLOURS = {"Coral", "Slate", "Moss", "Straw", "Plum", "Ash"};
  private static final String[] YARNS = {"Harbour cotton 8/2", "Fell wool 2/9", "Dune linen 16/1"};

  private LongLedger() {}

  /** Fills a ledger: its address, and how many entries. */
  public static void main(String[] arguments) throws LedgerUnavailable, NotDone {
    try (Studio studio = Studio.open(LedgerAddress.parse(arguments[0]), "Ada")) {
      fill(studio, Integer.parseInt(arguments[1]));
    }
  }

  /** Adds entries to a ledger in which nothing was entered. */
  static void fill(Studio studio, int entries) throws NotDone {
    for (int from = 0; from < entries; from += AT_ONCE) {
      int first = from;
      int end = Math.min(entries, from + AT_ONCE);
      studio.write(session -> {
        for (int number = first; number < end; number++) {
          enter(studio, session, number);
        }
        return end;
      });
    }
  }

  private static void enter(Studio studio, Session session, int number) {
    int which = number / FOR_EACH_SKEIN;
    int step = number % FOR_EACH_SKEIN;
    String code = "S%05d".formatted(which);
    if (step == 0) {
      session.skeins().add(skein(code, which), studio.now());
    }
    Place shelf = new Place.Shelf();
    Place reserved = new Place.Reserved("Plan " + which % 300);
    Entry entry = step == 0
        ? entry(studio, number, EntryKind.RECEIVE, "", new Transfer(code, new Place.Maker(), shelf, Length.metres(1000)))
        : step % 2 == 1
            ? entry(studio, number, EntryKind.RESERVE, "", new Transfer(code, shelf, reserved, SOME))
            : entry(studio, number, EntryKind.RELEASE, number % 500 == 2 ? "sold at the fair of " + number : "", new Transfer(code, reserved, shelf, SOME));
    session.entries().post(entry, studio.now());
  }

  private static Entry entry(Studio studio, int number, EntryKind kind, String note, Transfer transfer) {
    return Entry.of(UUID.randomUUID(), kind, BEGUN.plusDays(number / 10), studio.author(), note, List.of(transfer));
  }

  private static Skein skein(String code, int which) {
    return new Skein(
        code, new YarnColour(YARNS[which % YARNS.length], COLOURS[which % COLOURS.length]), "", "", Optional.empty(), PackageForm.CONE, Optional.empty(),
        Optional.empty(), false, "", "", Optional.empty(), Optional.empty(), Optional.empty());
  }
}
