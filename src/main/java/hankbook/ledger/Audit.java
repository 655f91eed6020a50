package hankbook.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** What checking a whole ledger found: the chain first, then its entries, then the balances kept beside them. */
public record Audit(List<Finding> findings) {
  public Audit {
    findings = List.copyOf(findings);
  }

  /** Checks the entries, in their order, and the balances kept beside them. */
  public static Audit of(List<ChainedEntry> entries, Balances kept) {
    Balances recomputed = Balances.of(entries.stream().map(ChainedEntry::entry).toList());
    List<Finding> findings = new ArrayList<>();
    chainIsUnbroken(entries).ifPresent(findings::add);
    everyEntryIsAllowed(entries).ifPresent(findings::add);
    findings.addAll(eachSkeinSumsToZero(kept));
    findings.addAll(nothingIsNegative(kept));
    findings.addAll(keptBalancesAreEqual(kept, recomputed));
    return new Audit(findings);
  }

  /** Checks too that the chain ends where the ledger says it does, which shows when its last entries were taken away. */
  public static Audit of(List<ChainedEntry> entries, ChainEnd end, Balances kept) {
    List<Finding> findings = new ArrayList<>(of(entries, kept).findings);
    if (!end.equals(ChainEnd.of(entries))) {
      findings.add(new Finding.WrongEnd(end.entries(), entries.size()));
    }
    return new Audit(findings);
  }

  /** Whether nothing is wrong. */
  public boolean isClean() {
    return findings.isEmpty();
  }

  /** The earliest entry that is wrong in itself. */
  public Optional<ChainedEntry> firstBad() {
    long first = Long.MAX_VALUE;
    Optional<ChainedEntry> bad = Optional.empty();
    for (Finding finding : findings) {
      if (finding instanceof Finding.BrokenChain(long position, ChainedEntry entry, String _) && position < first) {
        first = position;
        bad = Optional.of(entry);
      } else if (finding instanceof Finding.NotAllowed(long position, ChainedEntry entry, String _) && position < first) {
        first = position;
        bad = Optional.of(entry);
      }
    }
    return bad;
  }

  /** Each entry has its number, the hash of the one before, and the hash its content makes; gives the first that has not. */
  public static Optional<Finding> chainIsUnbroken(List<ChainedEntry> entries) {
    String previous = Chain.START;
    long position = 0;
    for (ChainedEntry link : entries) {
      position++;
      if (link.number() != position) {
        return Optional.of(new Finding.BrokenChain(position, link, "it bears the number " + link.number()));
      }
      if (!link.previousHash().equals(previous)) {
        return Optional.of(new Finding.BrokenChain(position, link, "it does not follow the entry before it"));
      }
      if (!link.hash().equals(Chain.hash(position, link.entry(), previous))) {
        return Optional.of(new Finding.BrokenChain(position, link, "its content does not match its hash"));
      }
      previous = link.hash();
    }
    return Optional.empty();
  }

  /** Each entry, when its turn came, kept the rules; gives the first that did not. Finds a forged chain whose hashes were made anew. */
  public static Optional<Finding> everyEntryIsAllowed(List<ChainedEntry> entries) {
    Replay replay = new Replay();
    long position = 0;
    for (ChainedEntry link : entries) {
      position++;
      Optional<String> why = replay.entry(link.entry().id()).isPresent()
          ? Optional.of("another entry before it has the same id.")
          : Rules.refusal(link.entry(), replay).map(Refusal::message);
      if (why.isPresent()) {
        return Optional.of(new Finding.NotAllowed(position, link, why.get()));
      }
      replay.add(link.entry());
    }
    return Optional.empty();
  }

  /** Nothing appears or vanishes: over all places each skein sums to zero. */
  public static List<Finding> eachSkeinSumsToZero(Balances balances) {
    List<Finding> findings = new ArrayList<>();
    balances.sums().forEach((skein, sum) -> {
      if (!sum.isZero()) {
        findings.add(new Finding.NotConserved(skein, sum));
      }
    });
    return findings;
  }

  /** Nothing is promised twice: no place that holds real yarn holds less than none. */
  public static List<Finding> nothingIsNegative(Balances balances) {
    List<Finding> findings = new ArrayList<>();
    balances.lengths().forEach((holding, length) -> {
      if (holding.place().neverNegative() && length.isNegative()) {
        findings.add(new Finding.Negative(holding, length));
      }
    });
    return findings;
  }

  /** The balances kept for speed are those the entries add up to. */
  public static List<Finding> keptBalancesAreEqual(Balances kept, Balances recomputed) {
    Set<Holding> holdings = new TreeSet<>(kept.lengths().keySet());
    holdings.addAll(recomputed.lengths().keySet());
    List<Finding> findings = new ArrayList<>();
    for (Holding holding : holdings) {
      if (!kept.at(holding).equals(recomputed.at(holding))) {
        findings.add(new Finding.KeptDiffers(holding, kept.at(holding), recomputed.at(holding)));
      }
    }
    return findings;
  }
}
