package hankbook.store;

import static hankbook.store.Examples.CORAL;
import static hankbook.store.Examples.SHELF;
import static hankbook.store.Examples.add;
import static hankbook.store.Examples.audit;
import static hankbook.store.Examples.balances;
import static hankbook.store.Examples.chain;
import static org.assertj.core.api.Assertions.assertThat;

import hankbook.ledger.ChainedEntry;
import hankbook.ledger.Entry;
import hankbook.ledger.EntryKind;
import hankbook.measure.Length;
import java.io.BufferedReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A program that is killed between any two instructions loses nothing that it said was kept, and leaves nothing half done. */
class KilledProgramTest {
  private static final int KILLS = 50;
  private static final int MOST_ACKNOWLEDGED = 12;

  @TempDir private Path folder;

  @Test
  void whatWasAcknowledgedIsThereAfterAKill() throws Exception {
    LedgerAddress address = Vendor.H2.ledger(folder);
    try (Store store = Store.open(address)) {
      add(store, CORAL);
    }
    QuickStart program = new QuickStart(folder, PostingProgram.class, address.text(), String.valueOf(KILLS + 1), "3");
    Random random = new Random(20_260_314);
    List<UUID> acknowledged = new ArrayList<>();
    for (int kill = 1; kill <= KILLS; kill++) {
      acknowledged.addAll(acknowledgedUntilKilled(program.start(address.text(), String.valueOf(kill), "1000000"), 1 + random.nextInt(MOST_ACKNOWLEDGED)));
      try (Store store = Store.open(address)) {
        holds(store, acknowledged);
      }
    }
    assertThat(acknowledged).hasSizeGreaterThanOrEqualTo(KILLS);
  }

  private static List<UUID> acknowledgedUntilKilled(Process program, int lines) throws Exception {
    List<UUID> acknowledged = new ArrayList<>();
    try (BufferedReader out = program.inputReader(); BufferedReader err = program.errorReader()) {
      String line = out.readLine();
      while (line != null) {
        acknowledged.add(UUID.fromString(line));
        if (acknowledged.size() == lines) {
          // Not through the process itself, which would close what it has said and is still to be read.
          program.toHandle().destroyForcibly();
        }
        line = out.readLine();
      }
      assertThat(err.lines()).isEmpty();
    } finally {
      program.destroyForcibly().waitFor();
    }
    assertThat(acknowledged).hasSizeGreaterThanOrEqualTo(lines);
    return acknowledged;
  }

  private static void holds(Store store, List<UUID> acknowledged) {
    List<ChainedEntry> chain = chain(store);
    Set<UUID> ids = chain.stream().map(link -> link.entry().id()).collect(Collectors.toSet());
    assertThat(ids).containsAll(acknowledged);
    List<Entry> received = chain.stream().map(ChainedEntry::entry).filter(entry -> entry.kind() == EntryKind.RECEIVE).toList();
    assertThat(chain).hasSize(2 * received.size());
    assertThat(received).allMatch(entry -> ids.contains(PostingProgram.beside(entry)));
    assertThat(newestPlan(store)).isEqualTo(received.getLast().id().toString());
    assertThat(balances(store).at(CORAL, SHELF)).isEqualTo(Length.ZERO);
    assertThat(audit(store)).isEmpty();
  }

  private static String newestPlan(Store store) {
    return store.read(session -> session.plans().newest("Scarf")).orElseThrow().body();
  }
}
