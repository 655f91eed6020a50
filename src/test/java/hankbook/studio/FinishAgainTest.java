package hankbook.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.exchange.ActualsFile;
import hankbook.ledger.Balances;
import hankbook.ledger.ChainedEntry;
import hankbook.ledger.Entry;
import hankbook.ledger.EntryKind;
import hankbook.measure.Length;
import hankbook.reckon.Actuals;
import hankbook.reckon.YarnUsed;
import hankbook.store.LedgerAddress;
import hankbook.store.Vendor;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A scarf finished with 300 m of A and 220 m of B left, so that 100 m of A and 20 m of B came back, finished again or taken back after its yarn went elsewhere.
 * Every figure is worked by hand.
 */
@ParameterizedClass
@EnumSource
class FinishAgainTest {
  private static final String LEFT = """
      { "format": "hankbook-actuals/1", "leftovers": [{"skein": "A", "left": "300 m"}, {"skein": "B", "left": "220 m"}], "reason": "woven short" }
      """;

  private final Vendor vendor;
  private final AtomicLong seconds = new AtomicLong();

  @TempDir private Path folder;
  private LedgerAddress address;
  private Studio studio;
  private Finish finish;

  FinishAgainTest(Vendor vendor) {
    this.vendor = vendor;
  }

  @BeforeEach
  void finishTheScarf() throws Exception {
    address = vendor.ledger(folder);
    studio = Studio.open(address, "Ida", FinishTest.ticking(seconds));
    finish = new Finish(studio);
    new Receive(studio).file("stock.csv", FinishTest.STOCK);
    wind("Scarf", FinishTest.SCARF);
    finish.plan(UUID.randomUUID(), "Scarf", actuals(LEFT));
  }

  @AfterEach
  void auditAndClose() {
    assertThat(new AuditLedger(studio).audit().audit().findings()).isEmpty();
    studio.close();
  }

  @Test
  void bySameLeftoversNothingMovesWhateverWasTakenOffTheSkeinsSince() throws Exception {
    windOther(30);
    assertThat(balances()).contains("A CLOTH(Scarf) 200 m", "A SHELF 210 m");
    List<String> before = balances();
    Finish.Finished again = finish.again(UUID.randomUUID(), "Scarf", actuals(LEFT.replace("\"reason\"", "\"note\": \"soft\", \"reason\"")), "a note");
    assertThat(again.entered()).isEmpty();
    assertThat(again.finishing()).isPresent();
    assertThat(balances()).isEqualTo(before);
    FinishedPlan finished = new FinishedPlans(studio).named("Scarf").orElseThrow();
    assertThat(finished.number()).isEqualTo(2);
    assertThat(finished.asReserved().actuals().note()).isEqualTo("soft");
    assertThat(finished.asReserved().used()).extracting(YarnUsed::used).containsExactly(Length.metres(200), Length.metres(180));
    assertThat(finish.takeBack(UUID.randomUUID(), "Scarf", "not cut off yet").entered()).hasSize(2);
    assertThat(balances()).contains("A LOOM(Scarf) 300 m", "A SHELF 110 m").noneMatch(balance -> balance.contains("CLOTH"));
  }

  @Test
  void whatMothsAteSinceIsNoPartOfTheCloth() throws Exception {
    new Recount(studio).skein(UUID.randomUUID(), "A", Length.metres(250), "moths");
    assertThat(finish.again(UUID.randomUUID(), "Scarf", actuals(LEFT), "once more").entered()).isEmpty();
    assertThat(balances()).contains("A CLOTH(Scarf) 200 m", "A SHELF 250 m");
    finish.again(UUID.randomUUID(), "Scarf", actuals(LEFT.replace("300 m", "310 m")), "misread");
    assertThat(balances()).contains("A CLOTH(Scarf) 190 m", "A SHELF 260 m");
  }

  @Test
  void otherLeftoversAreHeldAgainstTheShelfOfThatDay() throws Exception {
    windOther(30);
    Actuals less = actuals(LEFT.replace("300 m", "290 m"));
    Finishing preview = finish.preview("Scarf", less);
    Finish.Finished again = finish.again(UUID.randomUUID(), "Scarf", less, "misread");
    assertThat(again.finishing().orElseThrow().squared()).isEqualTo(preview.squared());
    assertThat(balances()).contains("A CLOTH(Scarf) 210 m", "A SHELF 200 m", "A LOOM(Other) 90 m");
    finish.again(UUID.randomUUID(), "Scarf", actuals(LEFT.replace("300 m", "180 m")), "and again");
    assertThat(balances()).contains("A CLOTH(Scarf) 320 m", "A SHELF 90 m", "A LOOM(Other) 90 m");
    finish.again(UUID.randomUUID(), "Scarf", actuals(LEFT), "right at first");
    assertThat(balances()).contains("A CLOTH(Scarf) 200 m", "A SHELF 210 m", "A LOOM(Other) 90 m");
  }

  @Test
  void aSkeinThatCameSinceCountsAsItIsNow() throws Exception {
    new Receive(studio).file("late.csv", "code,yarn,colour,fibre,grist,length\nD,Fjara,Ash,wool,tex 100,50 m\n");
    finish.again(UUID.randomUUID(), "Scarf", actuals(LEFT.replace("{\"skein\": \"B\"", "{\"skein\": \"D\", \"left\": \"40 m\"}, {\"skein\": \"B\"")), "D as well");
    assertThat(balances()).contains("A CLOTH(Scarf) 200 m", "D CLOTH(Scarf) 10 m", "D SHELF 40 m");
  }

  /** Of the 300 m of A that were left the other took 240 m, so of the 100 m that came back 40 m are gone. */
  @Test
  void yarnThatCameBackAndWentElsewhereIsNamed() throws Exception {
    windOther(80);
    List<String> before = balances();
    String gone = "40 m of what came back on A have since gone elsewhere; return them to the shelf first. Nothing was changed.";
    Actuals less = actuals(LEFT.replace("300 m", "290 m"));
    assertThatThrownBy(() -> finish.preview("Scarf", less)).isInstanceOf(NotDone.class).hasMessage(gone);
    assertThatThrownBy(() -> finish.again(UUID.randomUUID(), "Scarf", less, "misread")).isInstanceOf(NotDone.class).hasMessage(gone);
    assertThatThrownBy(() -> finish.takeBack(UUID.randomUUID(), "Scarf", "not yet")).isInstanceOf(NotDone.class).hasMessage(gone);
    assertThat(balances()).isEqualTo(before);
    ToFinish toFinish = ToFinish.of(studio, "Scarf");
    assertThat(toFinish.skeins().getFirst().drawn().free()).isEqualTo(Length.metres(200));
    assertThat(finish.preview("Scarf", actuals(LEFT)).squared().skeins()).extracting(use -> use.woven()).containsExactly(Length.metres(200), Length.metres(180));
  }

  /** 230 m more than were drawn were used, but of the 200 m that were free then the other took all but 110 m. */
  @Test
  void moreUsedThanIsThereNowIsNamed() throws Exception {
    windOther(30);
    Actuals used = actuals(LEFT.replace("300 m", "60 m"));
    String gone = "30 m of what Scarf used of A by that have since gone elsewhere; return them to the shelf first, or measure again. Nothing was changed.";
    assertThatThrownBy(() -> finish.preview("Scarf", used)).isInstanceOf(NotDone.class).hasMessage(gone);
    assertThatThrownBy(() -> finish.again(UUID.randomUUID(), "Scarf", used, "misread")).isInstanceOf(NotDone.class).hasMessage(gone);
  }

  /** 10 m more were found of A than the book knew of: on no day 20 m. */
  @Test
  void onNoDayBetweenDoesYarnCountTwice() throws Exception {
    finish.again(UUID.randomUUID(), "Scarf", actuals(LEFT.replace("300 m", "510 m")), "misread");
    seconds.addAndGet(Duration.ofDays(10).toSeconds());
    List<ChainedEntry> entered = finish.again(UUID.randomUUID(), "Scarf", actuals(LEFT.replace("300 m", "510 m").replace("220 m", "230 m")), "misread").entered();
    assertThat(entered).extracting(chained -> chained.entry().date()).containsOnly(LocalDate.of(2026, 3, 14));
    assertThat(entered).extracting(chained -> chained.entry().kind()).contains(EntryKind.REVERSAL, EntryKind.RECOUNT);
    List<Entry> untilThen = studio.read(session -> session.entries().chain()).stream().map(ChainedEntry::entry).filter(entry -> entry.date().isBefore(LocalDate.of(2026, 3, 20))).toList();
    assertThat(lines(Balances.of(untilThen))).isEqualTo(balances()).contains("A RECOUNT -10 m", "A SHELF 510 m");
    assertThat(finish.takeBack(UUID.randomUUID(), "Scarf", "not yet").entered()).extracting(chained -> chained.entry().date()).containsOnly(LocalDate.of(2026, 3, 24));
  }

  @Test
  void aPlanWhoseBookIsSquaredTakesNoYarnAgainUntilThatIsTakenBack() throws Exception {
    String why = "Scarf was woven and its book squared; keep it under a new name to weave it again.";
    assertThatThrownBy(() -> new Reserve(studio).plan(UUID.randomUUID(), "Scarf", true)).isInstanceOf(NotDone.class).hasMessage(why);
    assertThatThrownBy(() -> new Draw(studio).plan(UUID.randomUUID(), " Scarf ")).isInstanceOf(NotDone.class).hasMessage(why);
    finish.takeBack(UUID.randomUUID(), "Scarf", "not yet");
    assertThat(new Reserve(studio).plan(UUID.randomUUID(), "Scarf", true)).isEmpty();
  }

  @Test
  void anEntryThatSquaresABookIsNotTakenBackAlone() throws Exception {
    List<String> before = balances();
    UUID woven = first(EntryKind.WOVEN);
    assertThatThrownBy(() -> new Reverse(studio).entry(UUID.randomUUID(), woven, "a slip")).isInstanceOf(NotDone.class)
        .hasMessage("That entry squares the book of Scarf together with others; take back the whole under After the cloth, or by finish --take-back. Nothing was changed.");
    finish.again(UUID.randomUUID(), "Scarf", actuals(LEFT.replace("woven short", "short")), "a word");
    assertThatThrownBy(() -> new Reverse(studio).entry(UUID.randomUUID(), woven, "a slip")).as("by the version before").hasMessageStartingWith("That entry squares the book of Scarf");
    assertThat(balances()).isEqualTo(before);
    UUID back = finish.takeBack(UUID.randomUUID(), "Scarf", "not yet").entered().getFirst().entry().id();
    assertThatThrownBy(() -> new Reverse(studio).entry(UUID.randomUUID(), back, "a slip")).isInstanceOf(NotDone.class)
        .hasMessage("That entry squared the book of Scarf together with others, and was taken back with them; finish Scarf anew instead. Nothing was changed.");
    UUID drawn = first(EntryKind.DRAW);
    assertThat(new Reverse(studio).entry(UUID.randomUUID(), drawn, "of no finish")).isPresent();
  }

  @Test
  void whatAnotherFoundMeanwhileIsNotOverwrittenUnseen() throws Exception {
    int seen = ToFinish.of(studio, "Scarf").finish();
    finish.again(UUID.randomUUID(), "Scarf", actuals(LEFT.replace("300 m", "295 m")), "misread", seen);
    assertThatThrownBy(() -> finish.again(UUID.randomUUID(), "Scarf", actuals(LEFT.replace("300 m", "290 m")), "misread", seen)).isInstanceOf(NotDone.class)
        .hasMessage("Scarf was finished meanwhile, by Ida; open it again to see by what. Nothing was changed.");
    assertThat(balances()).contains("A CLOTH(Scarf) 205 m");
  }

  /** Takes 3 m of A's yarn for each of its ends. */
  private void windOther(int ends) throws Exception {
    wind("Other", """
        { "format": "hankbook-plan/1", "name": "Other",
          "warp": {"sett": "5/cm", "ends": ENDS, "length": "3 m", "order": [{"yarn": "Fjara", "colour": "Ash", "ends": ENDS}]},
          "weft": [{"yarn": "Tussock", "colour": "Rust", "picks": "1/cm", "length": "1 m"}] }
        """.replace("ENDS", Integer.toString(ends)));
  }

  private void wind(String name, String plan) throws Exception {
    new Plans(studio).add(name, plan, false);
    new Reserve(studio).plan(UUID.randomUUID(), name, false);
    new Draw(studio).plan(UUID.randomUUID(), name);
  }

  private UUID first(EntryKind kind) {
    return studio.read(session -> session.entries().chain()).stream().map(ChainedEntry::entry).filter(entry -> entry.kind() == kind).findFirst().orElseThrow().id();
  }

  private static Actuals actuals(String text) throws Exception {
    return ActualsFile.read("found.json", text).actuals();
  }

  private List<String> balances() {
    return lines(studio.read(session -> session.balances().all()));
  }

  private static List<String> lines(Balances balances) {
    return balances.lengths().entrySet().stream().map(balance -> balance.getKey().skein() + " " + balance.getKey().place() + " " + balance.getValue()).toList();
  }
}
