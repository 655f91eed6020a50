package hankbook.studio;

import hankbook.exchange.BadInput;
import hankbook.exchange.StockFile;
import hankbook.store.Session;
import hankbook.yarn.Skein;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The skeins of a stock file held against a ledger.
 *
 * @param unknown those whose codes the ledger does not have
 * @param known those it has, just as the file says
 */
record RowsInLedger(List<Skein> unknown, List<Skein> known) {
  RowsInLedger {
    unknown = List.copyOf(unknown);
    known = List.copyOf(known);
  }

  /**
   * What a skein must not be in a file.
   *
   * @param is whether one is so, its yarn's own grist being in it
   * @param found what is found then, and what is wanted, in words
   */
  record Fault(Predicate<Skein> is, String found) {}

  /**
   * Sorts the rows of a file.
   *
   * @param name the file's, for messages
   * @param fault what none of them may be
   * @throws BadInput naming every row that is so, or whose code another skein has
   */
  static RowsInLedger of(Session session, String name, List<StockFile.Row> rows, Fault fault) throws BadInput {
    List<Skein> unknown = new ArrayList<>();
    List<Skein> known = new ArrayList<>();
    List<String> faults = new ArrayList<>();
    for (StockFile.Row row : rows) {
      Skein skein = row.skein();
      Optional<Skein> there = session.skeins().find(skein.code());
      if (fault.is().test(withGrist(session, skein))) {
        faults.add(name + ", row " + row.number() + ", length: found " + fault.found());
      } else if (there.isPresent() && !there.get().equals(skein)) {
        faults.add(name + ", row " + row.number() + ", code: found '" + skein.code() + "', which another skein of the ledger has, wanted a code of its own");
      } else {
        (there.isPresent() ? known : unknown).add(skein);
      }
    }
    if (!faults.isEmpty()) {
      throw new BadInput(faults);
    }
    return new RowsInLedger(unknown, known);
  }

  /** A skein with the grist of its yarn as it was weighed, by which its weight is turned into metres. */
  static Skein withGrist(Session session, Skein skein) {
    return skein.withSample(session.gristSamples().of(skein.yarn().yarn()));
  }
}
