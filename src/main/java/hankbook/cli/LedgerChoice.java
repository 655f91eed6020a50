package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.ledger.ChainedEntry;
import hankbook.store.LedgerAddress;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.Studio;
import java.io.PrintWriter;
import java.util.List;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Option;

/** The words that commands on a ledger share. */
@NullUnmarked
final class LedgerChoice {
  @Option(names = "--ledger", paramLabel = "PATH-or-JDBC-URL", description = "The ledger; without it, the one in your data folder.")
  private String address;

  @Option(names = "--author", paramLabel = "NAME", description = "Who signs what is entered; without it, your name on this machine.")
  private String author;

  @Option(names = "--json", description = "Print one JSON object and nothing else.")
  private boolean json;

  /** Something to do in an open ledger; gives the exit code. */
  interface Work {
    int in(Studio studio) throws BadInput, NotDone;
  }

  /** Something to enter; gives what was entered. */
  interface Act {
    List<ChainedEntry> in(Studio studio) throws BadInput, NotDone;
  }

  /** The address as it was given, or an empty text. */
  String address() {
    return address == null ? "" : address;
  }

  String author() {
    return author == null ? System.getProperty("user.name", "") : author;
  }

  boolean json() {
    return json;
  }

  /** Whether the ledger is there already. */
  boolean isThere() {
    return chosen().isThere();
  }

  /** Enters something in a ledger that is there already, and says what. */
  int entering(PrintWriter out, Act act) throws BadInput, NotDone, LedgerUnavailable {
    return inExisting(studio -> {
      List<ChainedEntry> entered = act.in(studio);
      out.println(json ? LedgerJson.entered(entered) : LedgerReport.entered(entered));
      return ExitCode.DONE;
    });
  }

  /** Works in the ledger, which is made where there is none. */
  int inExistingOrNew(Work work) throws BadInput, NotDone, LedgerUnavailable {
    try (Studio studio = Studio.open(chosen(), author())) {
      return work.in(studio);
    }
  }

  /** Works in a ledger that is there already: one made by a slip in its name would only look empty. */
  int inExisting(Work work) throws BadInput, NotDone, LedgerUnavailable {
    LedgerAddress chosen = chosen();
    if (!chosen.isThere()) {
      throw new BadInput(chosen.text() + ": found no ledger here, wanted one that receive or plan add has made");
    }
    return inExistingOrNew(work);
  }

  private LedgerAddress chosen() {
    return address == null ? LedgerAddress.standard() : LedgerAddress.parse(address);
  }
}
