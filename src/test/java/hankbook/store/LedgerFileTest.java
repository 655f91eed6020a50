package hankbook.store;

import static hankbook.store.Examples.CORAL;
import static hankbook.store.Examples.NOON;
import static hankbook.store.Examples.add;
import static hankbook.store.Examples.audit;
import static hankbook.store.Examples.chain;
import static hankbook.store.Examples.receive;
import static hankbook.store.Examples.reserve;
import static org.assertj.core.api.Assertions.assertThat;

import hankbook.ledger.ChainedEntry;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What lies on the disk: at every moment the whole ledger, and not much more once it is closed. */
class LedgerFileTest {
  private static final int SESSIONS = 12;

  @TempDir private Path folder;

  /** What a copy holds is what a program finds that is started after this one was killed. */
  @Test
  void aCopyMadeAfterAnyWriteHoldsAllThatWasWritten() throws Exception {
    LedgerAddress address = Vendor.H2.ledger(folder);
    Path copy = folder.resolve("copy.mv.db");
    Random random = new Random(7);
    long writes = 0;
    for (int session = 0; session < SESSIONS; session++) {
      try (Store store = Store.open(address)) {
        if (session == 0) {
          add(store, CORAL);
        }
        for (int more = random.nextInt(12); more >= 0; more--) {
          write(store, ++writes);
          Files.copy(Path.of(address.text()), copy, StandardCopyOption.REPLACE_EXISTING);
          holds(new LedgerAddress.InFile(copy), chain(store));
        }
      }
    }
  }

  /** A file half made by a program that was killed lies under another name, and nothing else is left behind. */
  @Test
  void aNewLedgerTakesItsPlaceOnlyWhenItIsWhole() throws Exception {
    LedgerAddress address = Vendor.H2.ledger(folder);
    Files.writeString(Path.of(address.text().replace(".mv.db", ".half.new.mv.db")), "half made");
    Store.open(address).close();
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).hasSize(2).contains(Path.of(address.text()));
    }
  }

  @Test
  void aFileThatIsMostlyWasteIsWrittenAnewWhenItIsClosed() throws Exception {
    LedgerAddress address = Vendor.H2.ledger(folder);
    List<ChainedEntry> written;
    try (Store store = Store.open(address)) {
      add(store, CORAL);
      for (int write = 1; write <= 170; write++) {
        write(store, write);
      }
      written = chain(store);
      assertThat(Files.size(Path.of(address.text()))).isGreaterThan(4 << 20);
    }
    assertThat(Files.size(Path.of(address.text()))).isLessThan(1 << 20);
    assertThat(folder).isDirectoryNotContaining("glob:**.tempFile").isDirectoryNotContaining("glob:**.newFile");
    holds(address, written);
  }

  private static void write(Store store, long number) {
    store.write(session -> {
      session.entries().post(receive(2 * number, 2), NOON);
      session.plans().keep("Scarf", "version " + number, "Ida", NOON);
      return session.entries().post(reserve(2 * number + 1, 2), NOON);
    });
  }

  private static void holds(LedgerAddress address, List<ChainedEntry> written) throws Exception {
    try (Store store = Store.open(address)) {
      assertThat(chain(store)).isEqualTo(written);
      assertThat(audit(store)).isEmpty();
    }
  }
}
