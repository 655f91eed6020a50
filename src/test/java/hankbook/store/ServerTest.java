package hankbook.store;

import static hankbook.store.Examples.CORAL;
import static hankbook.store.Examples.NOON;
import static hankbook.store.Examples.add;
import static hankbook.store.Examples.audit;
import static hankbook.store.Examples.chain;
import static hankbook.store.Examples.post;
import static hankbook.store.Examples.receive;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.ledger.Entry;
import java.sql.SQLException;
import java.util.concurrent.atomic.AtomicInteger;
import org.jooq.exception.DataAccessException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What only a PostgreSQL server does: it guards against emptying tables, and may refuse a transaction that is then to be tried again. */
class ServerTest {
  private LedgerAddress.AtServer address;
  private Store store;

  @BeforeEach
  void open() throws Exception {
    address = Postgres.ledger();
    store = Store.open(address);
    add(store, CORAL);
  }

  @AfterEach
  void auditAndClose() {
    assertThat(audit(store)).isEmpty();
    store.close();
  }

  @Test
  void whatIsWrittenIsNotEmptied() {
    for (String table : new String[] {"entry", "transfer", "plan_version", "skein"}) {
      assertThatThrownBy(() -> Vendor.run(address, "truncate table " + table + " cascade"))
          .as(table)
          .isInstanceOfSatisfying(SQLException.class, refused -> assertThat(refused.getSQLState()).isEqualTo("P0001"));
    }
  }

  @Test
  void workIsRunAgainWhenAnotherWasInTheWay() throws Exception {
    failing("before insert on entry", 2, "40001");
    assertThat(runsOf(receive(1, 100))).isEqualTo(3);
    assertThat(chain(store)).hasSize(1);
  }

  @Test
  void workIsRunAgainWhenThatShowsOnlyAtItsEnd() throws Exception {
    failing("after insert on entry deferrable initially deferred", 3, "40001");
    assertThat(runsOf(receive(1, 100))).isEqualTo(4);
    assertThat(chain(store)).hasSize(1);
  }

  @Test
  void workIsRunAgainAfterADeadlock() throws Exception {
    failing("before insert on entry", 1, "40P01");
    assertThat(runsOf(receive(1, 100))).isEqualTo(2);
  }

  @Test
  void workThatIsAlwaysInTheWayIsGivenUp() throws Exception {
    failing("before insert on entry", 8, "40001");
    assertThatThrownBy(() -> post(store, receive(1, 100)))
        .isInstanceOfSatisfying(DataAccessException.class, problem -> assertThat(problem.sqlState()).isEqualTo("40001"));
    assertThat(chain(store)).isEmpty();
    assertThat(runsOf(receive(1, 100))).isEqualTo(1);
  }

  @Test
  void aRefusalAtTheEndOfATransactionTakesItBackAndIsNotTriedAgain() throws Exception {
    failing("after insert on entry deferrable initially deferred", 1, "P0001");
    assertThatThrownBy(() -> post(store, receive(1, 100)))
        .isInstanceOfSatisfying(DataAccessException.class, problem -> assertThat(problem.sqlState()).isEqualTo("P0001"));
    assertThat(chain(store)).isEmpty();
    assertThat(runsOf(receive(1, 100))).isEqualTo(1);
  }

  @Test
  void connectionsThatTheServerClosedAreReplacedOneByOne() {
    post(store, receive(1, 100));
    String database = address.text().replaceFirst(".*/", "");
    store.read(one -> store.read(two -> chain(store)));
    Postgres.run("select pg_terminate_backend(pid) from pg_stat_activity where datname = '" + database + "'");
    int lost = 0;
    while (!posted(receive(2, 100))) {
      lost++;
      assertThat(lost).isLessThanOrEqualTo(3);
    }
    assertThat(chain(store)).hasSize(2);
  }

  private boolean posted(Entry entry) {
    try {
      return post(store, entry).isPresent();
    } catch (LedgerSilent gone) {
      assertThat(gone.message()).contains("does not answer any more; see that its server runs");
      return false;
    }
  }

  /** How often it took to write one entry. */
  private int runsOf(Entry entry) {
    AtomicInteger runs = new AtomicInteger();
    store.write(session -> {
      runs.incrementAndGet();
      return session.entries().post(entry, NOON);
    });
    return runs.get();
  }

  /** Lets the server refuse so many times; a sequence goes on counting when a transaction is taken back. */
  private void failing(String when, int times, String state) throws SQLException {
    Vendor.run(
        address,
        "create sequence tries",
        "create function refuse_for_now() returns trigger language plpgsql as $$ begin if nextval('tries') <= " + times
            + " then raise exception 'not now' using errcode = '" + state + "'; end if; return new; end $$",
        "create " + (when.startsWith("after") ? "constraint " : "") + "trigger now_and_then " + when + " for each row execute function refuse_for_now()");
  }
}
