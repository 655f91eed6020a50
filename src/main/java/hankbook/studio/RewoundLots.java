package hankbook.studio;

import hankbook.ledger.ChainedEntry;
import hankbook.ledger.Entry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.store.Session;
import hankbook.yarn.MixedLots;
import hankbook.yarn.Skein;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Puts the lot of a skein right when the winding that mixed it is taken back, or when that is taken back in its turn. */
final class RewoundLots {
  private final Studio studio;
  private final Session session;

  RewoundLots(Studio studio, Session session) {
    this.studio = studio;
    this.session = session;
  }

  /**
   * Follows a reversal that was posted just now. Where another winding that stands brought yarn of another lot, the lot stays mixed.
   *
   * @param original what it took back
   */
  void after(Entry original, Entry reversal) {
    for (Skein from : skeins(original.kind() == EntryKind.REWIND ? original : reversal, transfer -> transfer.to() instanceof Place.Rewound)) {
      for (Skein onto : skeins(original.kind() == EntryKind.REWIND ? original : reversal, RewoundLots::windsOn)) {
        if (original.kind() == EntryKind.REWIND) {
          unmix(from, onto);
        } else if (isWinding(original)) {
          say(onto, MixedLots.together(from.lot(), onto.lot()));
        }
      }
    }
  }

  /** Whether a reversal took back a winding, and not the reversal of one. */
  private boolean isWinding(Entry original) {
    return original.reverses().flatMap(session.entries()::entry).filter(first -> first.kind() == EntryKind.REWIND).isPresent();
  }

  private void unmix(Skein from, Skein onto) {
    Optional<String> before = session.skeins().history(onto.code()).stream().map(Skein::lot).filter(lot -> !lot.equals(onto.lot())).reduce((_, later) -> later);
    boolean mixed = before.filter(lot -> MixedLots.together(lot, from.lot()).equals(onto.lot())).isPresent();
    if (mixed && !from.lot().equals(onto.lot()) && session.entries().chain().stream().map(ChainedEntry::entry).noneMatch(entry -> stillMixes(entry, onto, before.get()))) {
      say(onto, before.get());
    }
  }

  private boolean stillMixes(Entry entry, Skein onto, String lot) {
    boolean windsOntoIt = entry.transfers().stream().anyMatch(transfer -> windsOn(transfer) && transfer.skein().equals(onto.code()));
    return windsOntoIt
        && !session.entries().isReversed(entry.id())
        && skeins(entry, transfer -> transfer.to() instanceof Place.Rewound).stream().anyMatch(from -> !from.lot().equals(lot));
  }

  private static boolean windsOn(Transfer transfer) {
    return transfer.from() instanceof Place.Rewound;
  }

  private List<Skein> skeins(Entry entry, Predicate<Transfer> which) {
    return entry.transfers().stream().filter(which).map(Transfer::skein).distinct().flatMap(code -> session.skeins().find(code).stream()).toList();
  }

  private void say(Skein skein, String lot) {
    SkeinFacts facts = new SkeinFacts(Optional.of(lot), Optional.empty(), Optional.empty(), Optional.empty());
    session.skeins().describe(facts.of(skein), studio.author(), studio.now());
  }
}
