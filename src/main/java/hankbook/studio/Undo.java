package hankbook.studio;

import hankbook.ledger.Change;
import hankbook.ledger.ChainedEntry;
import hankbook.ledger.Entry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.LastSaid;
import hankbook.ledger.Refusal;
import hankbook.ledger.Rules;
import hankbook.store.RecordedEntry;
import hankbook.store.Session;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Shows what taking something back would do, and takes it back as it was seen. */
public final class Undo {
  private static final String SEEN = "seen before it is done";

  private final Studio studio;

  public Undo(Studio studio) {
    this.studio = studio;
  }

  /**
   * What taking back one entry would do; empty where there is none of that number.
   *
   * @param number in the journal
   */
  public Optional<Undoing> numbered(long number) {
    return studio.read(session -> session.entries().numbered(number).map(recorded -> seen(session, List.of(recorded.chained()), Optional.empty())));
  }

  /**
   * What taking back the last act of the author would do: the newest entry that was not taken back, and what was entered together with it.
   *
   * @param but ids of entries that are passed over
   */
  public Optional<Undoing> last(Collection<UUID> but) {
    return studio.read(session -> session.entries().newestStanding(studio.author(), but).map(recorded -> {
      Optional<LastSaid> since = session.lastSaid(studio.author()).filter(said -> said.when().isAfter(recorded.recorded()));
      return seen(session, together(session, recorded), since);
    }));
  }

  private static List<ChainedEntry> together(Session session, RecordedEntry recorded) {
    List<ChainedEntry> entries = new ArrayList<>(List.of(recorded.chained()));
    UUID release = Reserve.releaseBeside(recorded.entry().id());
    boolean beside = recorded.entry().kind() == EntryKind.RESERVE && session.entries().standing(release).filter(entry -> entry.id().equals(release)).isPresent();
    if (beside) {
      session.entries().numbered(recorded.chained().number() - 1).map(RecordedEntry::chained).filter(link -> link.entry().id().equals(release)).ifPresent(entries::add);
    }
    return entries;
  }

  private Undoing seen(Session session, List<ChainedEntry> entries, Optional<LastSaid> since) {
    List<Change> changes = Change.takingBack(entries.stream().map(ChainedEntry::entry).toList(), session.entries());
    return new Undoing(entries, changes, entries.stream().flatMap(link -> whyNot(session, link.entry()).stream()).findFirst(), since);
  }

  private Optional<String> whyNot(Session session, Entry entry) {
    try {
      Entry reversal = new Reverse(studio).possible(session, UUID.randomUUID(), entry, SEEN);
      return Rules.refusal(reversal, session.entries()).map(Refusal::message);
    } catch (NotDone refused) {
      return Optional.of(refused.phrase().english());
    }
  }

  /**
   * Takes back what was seen, all of it or nothing.
   *
   * @param id of the first reversal
   * @param reason not blank
   * @return the reversals; none where the same was done before
   * @throws NotDone if something of it cannot be taken back
   */
  public List<ChainedEntry> takeBack(UUID id, Undoing seen, String reason) throws NotDone {
    return studio.write(session -> {
      List<ChainedEntry> reversals = new ArrayList<>();
      for (ChainedEntry link : seen.entries()) {
        UUID mine = link.equals(seen.main()) ? id : UUID.nameUUIDFromBytes(("back " + id + " " + link.entry().id()).getBytes(StandardCharsets.UTF_8));
        new Reverse(studio).reverse(session, mine, link.entry(), reason).ifPresent(reversals::add);
      }
      return reversals;
    });
  }
}
