package hankbook.store;

import static hankbook.store.Examples.DAY;
import static hankbook.store.Examples.MAKER;
import static hankbook.store.Examples.NOON;
import static hankbook.store.Examples.SHELF;
import static hankbook.store.Examples.audit;
import static hankbook.store.Examples.skein;
import static org.assertj.core.api.Assertions.assertThat;

import hankbook.ledger.Entry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Holding;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;

/** Whatever text may be entered comes back as it was entered, and keeps the chain whole. */
class StoredTextProperties {
  private static final Scratch SCRATCH = new Scratch();
  private static final AtomicLong TRIES = new AtomicLong();

  private static Optional<Store> inFile = Optional.empty();
  private static Optional<Store> atServer = Optional.empty();

  @BeforeContainer
  static void open() throws Exception {
    inFile = Optional.of(Store.open(Vendor.H2.ledger(SCRATCH.folder())));
    atServer = Optional.of(Store.open(Vendor.POSTGRESQL.ledger(SCRATCH.folder())));
  }

  @AfterContainer
  static void auditAndClose() {
    for (Store store : List.of(inFile.orElseThrow(), atServer.orElseThrow())) {
      assertThat(audit(store)).isEmpty();
      store.close();
    }
    SCRATCH.close();
  }

  @Property(tries = 100)
  void comesBackFromAFile(@ForAll @Size(6) List<@From("names") String> names, @ForAll("texts") String text) {
    comesBack(inFile.orElseThrow(), names, text);
  }

  @Property(tries = 60)
  void comesBackFromAServer(@ForAll @Size(6) List<@From("names") String> names, @ForAll("texts") String text) {
    comesBack(atServer.orElseThrow(), names, text);
  }

  private static void comesBack(Store store, List<String> names, String text) {
    UUID id = new UUID(TRIES.incrementAndGet(), 1);
    String code = (id + " " + names.get(0)).strip();
    Skein bare = skein(code);
    Skein skein = new Skein(
        code, new YarnColour(names.get(1), names.get(2)), "", names.get(3), bare.grist(), bare.form(), bare.label(), bare.weighing(), false, names.get(4),
        names.get(5), bare.cost(), bare.received(), bare.kept());
    Place reserved = new Place.Reserved(names.get(1));
    Entry received = entry(new UUID(id.getMostSignificantBits(), 2), EntryKind.RECEIVE, names.get(2), text, new Transfer(code, MAKER, SHELF, Length.metres(2)));
    Entry promised = entry(id, EntryKind.RESERVE, names.get(3), "", new Transfer(code, SHELF, reserved, Length.metres(1)));
    store.write(session -> {
      session.skeins().add(skein, NOON);
      session.plans().keep(names.get(4), text, names.get(5), NOON);
      session.entries().post(received, NOON);
      return session.entries().post(promised, NOON);
    });
    store.read(session -> {
      assertThat(session.skeins().find(code)).contains(skein);
      assertThat(session.plans().newest(names.get(4)).map(PlanVersion::body)).contains(text);
      assertThat(session.plans().names()).contains(names.get(4)).isSorted();
      assertThat(session.entries().entry(received.id())).contains(received);
      assertThat(session.entries().entry(promised.id())).contains(promised);
      assertThat(session.entries().balance(new Holding(code, reserved))).isEqualTo(Length.metres(1));
      assertThat(session.balances().ofPlan(names.get(1)).at(code, reserved)).isEqualTo(Length.metres(1));
      return code;
    });
  }

  private static Entry entry(UUID id, EntryKind kind, String author, String note, Transfer transfer) {
    return Entry.of(id, kind, DAY, author, note, List.of(transfer));
  }

  @Provide
  Arbitrary<String> names() {
    return text(40).map(String::strip).filter(name -> !name.isBlank());
  }

  @Provide
  Arbitrary<String> texts() {
    return text(300);
  }

  /** Of all characters there are, each plane as likely as the letters that most names are made of. */
  private static Arbitrary<String> text(int most) {
    Arbitrary<Integer> characters = Arbitraries.oneOf(Arbitraries.integers().between(' ', 0x17f), Arbitraries.integers().between(' ', Character.MAX_CODE_POINT));
    return characters
        .filter(character -> !Character.isISOControl(character) && Character.getType(character) != Character.SURROGATE)
        .list()
        .ofMaxSize(most)
        .map(points -> points.stream().map(Character::toString).collect(Collectors.joining()));
  }
}
