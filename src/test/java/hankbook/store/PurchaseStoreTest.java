package hankbook.store;

import static hankbook.store.Examples.CORAL;
import static hankbook.store.Examples.NOON;
import static hankbook.store.Examples.add;
import static hankbook.store.Examples.paid;
import static org.assertj.core.api.Assertions.assertThat;

import hankbook.cost.KeptPurchase;
import hankbook.cost.LandedPurchase;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** What was paid, in either database. */
@ParameterizedClass
@EnumSource
class PurchaseStoreTest {
  private final Vendor vendor;

  @TempDir private Path folder;
  private LedgerAddress address;
  private Store store;

  PurchaseStoreTest(Vendor vendor) {
    this.vendor = vendor;
  }

  @BeforeEach
  void open() throws Exception {
    address = vendor.ledger(folder);
    store = Store.open(address);
    List.of(CORAL, "Slate", "Rust").forEach(skein -> add(store, skein));
  }

  @AfterEach
  void close() {
    store.close();
  }

  @Test
  void whatWasEnteredIsReadBackAsItWasAfterTheLedgerIsOpenedAgain() throws Exception {
    LandedPurchase one = paid(CORAL, "Slate");
    keep(1, one, true);
    store.close();
    store = Store.open(address);
    assertThat(all()).containsExactly(new KeptPurchase(1, 1, one, true, "because", "Ida", NOON));
    assertThat(store.<Integer>read(session -> session.purchases().next())).isEqualTo(2);
  }

  @Test
  void theNewestVersionCountsAndNoneThatWasTakenBack() throws Exception {
    keep(1, paid(CORAL, "Slate"), true);
    keep(1, paid(CORAL, "Rust"), true);
    keep(2, paid("Slate"), true);
    assertThat(all()).extracting(KeptPurchase::version).containsExactly(2, 1);
    assertThat(payer(CORAL)).contains(1);
    assertThat(payer("Rust")).contains(1);
    assertThat(payer("Slate")).as("it is in the first version of another").contains(2);
    keep(1, paid(CORAL, "Rust"), false);
    assertThat(payer(CORAL)).as("that was taken back").isEmpty();
    assertThat(all()).extracting(KeptPurchase::stands).containsExactly(false, true);
    assertThat(store.<Optional<KeptPurchase>>read(session -> session.purchases().numbered(3))).isEmpty();
  }

  @Test
  void whatOthersPaidIsNews() {
    assertThat(store.<Long>read(session -> session.writtenByOthers("Jon"))).isZero();
    keep(1, paid(CORAL), true);
    keep(1, paid(CORAL), false);
    assertThat(store.<Long>read(session -> session.writtenByOthers("Jon"))).isEqualTo(2);
    assertThat(store.<Long>read(session -> session.writtenByOthers("Ida"))).isZero();
  }

  private List<KeptPurchase> all() {
    return store.read(session -> session.purchases().all());
  }

  private Optional<Integer> payer(String skein) {
    return store.read(session -> session.purchases().thatPaidFor(skein).map(KeptPurchase::number));
  }

  private void keep(int number, LandedPurchase landed, boolean stands) {
    store.write(session -> {
      session.purchases().keep(number, landed, stands, "because", "Ida", NOON);
      return landed;
    });
  }
}
