package hankbook.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.store.LedgerAddress;
import hankbook.yarn.Turns;
import hankbook.yarn.Weighing;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a winding is said to come to before it is done, beside what it does come to. */
class RewoundTest {
  private static final long SEED = 20260315;
  private static final String STOCK = """
      code,yarn,colour,fibre,grist,form,length,gross,tare,opened,lot,location,cost,received
      A,Skerry 16/2,Woad,cotton,16/2 cotton,cone,1000 m,,,no,K1,Left shelf,10.00 EUR,2025-02-11
      B,Skerry 16/2,Woad,cotton,16/2 cotton,cone,500 m,,,no,K1,Left shelf,8.00 EUR,2025-02-11
      C,Skerry 16/2,Woad,cotton,16/2 cotton,cone,400 m,,,no,K2,Left shelf,6.00 EUR,2025-02-11
      W,Skerry 16/2,Woad,cotton,16/2 cotton,cone,,92 g,38 g,yes,K1,Left shelf,,2025-02-11
      """;

  @TempDir private Path folder;
  private Studio studio;
  private Rewind rewind;

  @BeforeEach
  void open() throws Exception {
    studio = Studio.open(new LedgerAddress.InFile(folder.resolve("ledger")), "Ida");
    new Receive(studio).file("stock.csv", STOCK);
    rewind = new Rewind(studio);
  }

  @AfterEach
  void close() {
    studio.close();
  }

  @Test
  void trying_a_winding_writes_nothing() throws Exception {
    int entries = new Journal(studio).newestFirst().size();
    Rewound tried = rewind.triedOff("A", metres(300), new NewPackage("A2"));
    assertThat(tried.off().free()).isEqualTo(Length.metres(700));
    assertThat(tried.onto().free()).isEqualTo(Length.metres(300));
    assertThat(new Journal(studio).newestFirst()).hasSize(entries);
    assertThat(new Shelf(studio).skein("A2")).isEmpty();
  }

  @Test
  void what_cannot_be_done_is_refused_when_it_is_tried() {
    assertThatThrownBy(() -> rewind.triedOff("A", metres(1001), new NewPackage("A2"))).isInstanceOf(NotDone.class).hasMessageContaining("only 1000 m are free");
    assertThatThrownBy(() -> rewind.triedJoin("C", new WoundOff.All(), "B", false)).isInstanceOf(NotDone.class).hasMessageContaining("is of lot K2");
  }

  @Test
  void whatever_is_wound_comes_to_just_what_was_said_before() throws Exception {
    Random random = new Random(SEED);
    int done = 0;
    for (int step = 0; step < 60; step++) {
      done += asSaid(random, step) ? 1 : 0;
    }
    assertThat(done).as("seed %d", SEED).isGreaterThan(25);
  }

  private boolean asSaid(Random random, int step) throws NotDone {
    List<String> codes = new Shelf(studio).skeins().stream().map(held -> held.skein().code()).toList();
    String from = codes.get(random.nextInt(codes.size()));
    boolean join = random.nextBoolean();
    String onto = join ? codes.get(random.nextInt(codes.size())) : "N" + step;
    WoundOff much = much(random);
    Rewound said;
    try {
      said = join ? rewind.triedJoin(from, much, onto, true) : rewind.triedOff(from, much, new NewPackage(onto));
    } catch (NotDone refused) {
      return false;
    }
    if (join) {
      rewind.join(UUID.randomUUID(), from, much, onto, true, "");
    } else {
      rewind.off(UUID.randomUUID(), from, much, new NewPackage(onto), "");
    }
    assertThat(new Shelf(studio).skein(from)).as("seed %d, step %d, off", SEED, step).contains(said.off());
    assertThat(new Shelf(studio).skein(onto)).as("seed %d, step %d, onto", SEED, step).contains(said.onto());
    return true;
  }

  private static WoundOff much(Random random) {
    return switch (random.nextInt(4)) {
      case 0 -> new WoundOff.All();
      case 1 -> new WoundOff.Counted(new Turns(1 + random.nextInt(100), Length.metres(2)));
      case 2 -> new WoundOff.Weighed(new Weighing(new Mass(1000 + random.nextInt(20_000)), Mass.ZERO, Optional.empty()));
      default -> new WoundOff.Metres(new Length(1 + random.nextInt(3_000_000)));
    };
  }

  private static WoundOff metres(long metres) {
    return new WoundOff.Metres(Length.metres(metres));
  }
}
