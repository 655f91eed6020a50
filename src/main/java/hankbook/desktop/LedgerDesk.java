package hankbook.desktop;

import hankbook.exchange.BadInput;
import hankbook.measure.Length;
import hankbook.studio.JournalEntry;
import hankbook.studio.NotDone;
import hankbook.studio.ShelfSkein;
import hankbook.yarn.Skein;
import java.util.List;
import java.util.UUID;

/** What the shelf, the journal and the welcome ask of the ledger. Every call may wait for it, so none is made from the screen's own thread. */
public interface LedgerDesk {
  /** Whether nothing was entered yet. */
  boolean isBlank();

  /** Every skein there is. */
  List<ShelfSkein> skeins();

  /** Every entry, newest first. */
  List<JournalEntry> journal();

  /** Takes a skein in. */
  void receive(UUID id, Skein skein) throws NotDone;

  /** Takes in all of a stock file or nothing, and tells how many skeins came. */
  int receiveFile(String name, String text) throws BadInput, NotDone;

  /** Puts the sample studio's shelf and plans into a blank ledger. */
  void fillWithSample() throws NotDone;

  /** Corrects what the shelf holds of a skein, beside what is set aside. */
  void recount(UUID id, String code, Length found, String note) throws NotDone;

  /** Lets some of a skein leave the house. */
  void partWith(UUID id, String code, Length length, String note) throws NotDone;

  /** Takes an entry back. */
  void reverse(UUID id, UUID original, String reason) throws NotDone;
}
