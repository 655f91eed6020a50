package hankbook.store;

import static hankbook.store.Examples.CORAL;
import static hankbook.store.Examples.NOON;
import static hankbook.store.Examples.SHELF;
import static hankbook.store.Examples.add;
import static hankbook.store.Examples.audit;
import static hankbook.store.Examples.balances;
import static hankbook.store.Examples.chain;
import static hankbook.store.Examples.entry;
import static hankbook.store.Examples.move;
import static hankbook.store.Examples.post;
import static hankbook.store.Examples.receive;
import static hankbook.store.Examples.refusal;
import static hankbook.store.Examples.reserve;
import static hankbook.store.Examples.skein;
import static org.assertj.core.api.Assertions.assertThat;

import hankbook.ledger.Audit;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.ledger.Refusal;
import hankbook.measure.Length;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** Several at once on one ledger, through two open stores. */
@ParameterizedClass
@EnumSource
class SharedLedgerTest {
  private static final int WRITERS = 6;
  private static final int TRIES = 10;

  private final Vendor vendor;

  @TempDir private Path folder;
  private Store one;
  private Store other;

  SharedLedgerTest(Vendor vendor) {
    this.vendor = vendor;
  }

  @BeforeEach
  void open() throws Exception {
    LedgerAddress address = vendor.ledger(folder);
    one = Store.open(address);
    other = Store.open(address);
    add(one, CORAL);
  }

  @AfterEach
  void auditAndClose() {
    assertThat(audit(one)).isEmpty();
    one.close();
    other.close();
  }

  @Test
  void exactlyTheMetresThatThereAreGetPromised() throws Exception {
    post(one, receive(1, 100));
    List<Optional<Refusal>> answers = allAtOnce(writer -> {
      List<Optional<Refusal>> mine = new ArrayList<>();
      Place plan = new Place.Reserved("Plan " + writer);
      for (int i = 0; i < TRIES; i++) {
        mine.add(refusal(store(writer), entry(1000L * (writer + 1L) + i, EntryKind.RESERVE, move(SHELF, plan, 7))));
      }
      return mine;
    });
    assertThat(answers).hasSize(WRITERS * TRIES);
    assertThat(answers.stream().filter(Optional::isEmpty)).hasSize(14);
    assertThat(answers.stream().flatMap(Optional::stream)).hasSize(WRITERS * TRIES - 14).allMatch(Refusal.NotEnough.class::isInstance);
    assertThat(balances(one).at(CORAL, SHELF)).isEqualTo(Length.metres(2));
    assertThat(chain(one)).hasSize(15).isEqualTo(chain(other));
  }

  @Test
  void theSameEntryFromManyIsTakenOnce() throws Exception {
    post(one, receive(1, 100));
    List<Boolean> taken = allAtOnce(writer -> List.of(post(store(writer), reserve(2, 60)).isPresent()));
    assertThat(taken).hasSize(WRITERS).containsOnlyOnce(true);
  }

  @Test
  void theSameSkeinAndPlanFromManyAreWrittenDownOnce() throws Exception {
    List<Boolean> added = allAtOnce(writer -> {
      boolean mine = store(writer).write(session -> {
        boolean fresh = session.skeins().find("Slate").isEmpty();
        if (fresh) {
          session.skeins().add(skein("Slate"), NOON);
        }
        session.plans().keep("Scarf", "by " + writer, "Ida", NOON);
        return fresh;
      });
      return List.of(mine);
    });
    assertThat(added).hasSize(WRITERS).containsOnlyOnce(true);
  }

  @Test
  void aReaderNeverSeesHalfOfWhatIsBeingWritten() throws Exception {
    List<Boolean> clean = allAtOnce(writer -> {
      List<Boolean> mine = new ArrayList<>();
      for (int i = 0; i < TRIES; i++) {
        if (writer % 2 == 0) {
          post(store(writer), receive(1000L * (writer + 1L) + i, 5));
        } else {
          mine.add(store(writer).read(session -> Audit.of(session.entries().chain(), session.entries().end(), session.balances().all()).isClean()));
        }
      }
      return mine;
    });
    assertThat(clean).hasSize(WRITERS / 2 * TRIES).containsOnly(true);
  }

  private Store store(int writer) {
    return writer < WRITERS / 2 ? one : other;
  }

  private static <T> List<T> allAtOnce(Work<T> work) throws Exception {
    CyclicBarrier start = new CyclicBarrier(WRITERS);
    List<Callable<List<T>>> writers = new ArrayList<>();
    for (int i = 0; i < WRITERS; i++) {
      int writer = i;
      writers.add(() -> {
        start.await();
        return work.of(writer);
      });
    }
    List<T> results = new ArrayList<>();
    try (ExecutorService threads = Executors.newFixedThreadPool(WRITERS)) {
      for (Future<List<T>> future : threads.invokeAll(writers)) {
        results.addAll(future.get());
      }
    }
    return results;
  }

  private interface Work<T> {
    List<T> of(int writer) throws Exception;
  }
}
