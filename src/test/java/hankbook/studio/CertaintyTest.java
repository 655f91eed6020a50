package hankbook.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hankbook.allot.Cover;
import hankbook.allot.Judgement;
import hankbook.allot.Setting;
import hankbook.allot.Verdict;
import hankbook.allot.Warning;
import hankbook.exchange.AnswerFile;
import hankbook.ledger.ChainedEntry;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.Percentage;
import hankbook.store.Vendor;
import hankbook.yarn.Doubts;
import hankbook.yarn.GristSample;
import hankbook.yarn.Skein;
import hankbook.yarn.Turns;
import hankbook.yarn.Weighing;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** How surely a ledger knows its metres, in either database, with the sample studio in it. S005 came with 54 g of 16/2 cotton, 731.5323 m. */
@ParameterizedClass
@EnumSource
class CertaintyTest {
  private static final Clock NOON = Clock.fixed(Instant.parse("2026-03-14T12:00:00Z"), ZoneOffset.UTC);
  private static final String YARN = "Skerry 16/2";
  private static final String S005 = "S005";

  /** 70 tex, so 54 g are 771.4286 m. */
  private static final GristSample FINER = new GristSample(Length.metres(10), new Mass(700), new Mass(10), Length.parse("5 cm"));

  private static final Length RECEIVED = Length.parse("731.5323 m");

  private final Vendor vendor;

  @TempDir private Path folder;
  private Studio studio;

  CertaintyTest(Vendor vendor) {
    this.vendor = vendor;
  }

  @BeforeEach
  void open() throws Exception {
    studio = Studio.open(vendor.ledger(folder), "Ida", NOON);
    SampleStudio.fill(studio);
  }

  @AfterEach
  void auditAndClose() {
    assertThat(new AuditLedger(studio).audit().audit().findings()).isEmpty();
    studio.close();
  }

  @Test
  void aWeighedGristLeavesTheLedgersMetresAndProposesARecount() throws Exception {
    YarnGrist grist = new Grists(studio).weigh(" " + YARN, FINER);
    assertThat(grist.toRecount()).extracting(Skein::code).containsExactly(S005);
    assertThat(held().free()).isEqualTo(RECEIVED);
    assertThat(metres(held().uncertainty(Doubts.DEFAULT))).isCloseTo(40.6, within(0.1));
    Answer answer = new CheckPlan(studio).named("Quay towels");
    assertThat(answer.check().warnings()).extracting(Warning::code).contains(Warning.Code.GRIST_DISAGREES);
  }

  @Test
  void aRecountByWeightTakesTheWeighedGristAndIsAsSureAsThat() throws Exception {
    new Grists(studio).weigh(YARN, FINER);
    recountByWeight();
    assertThat(held().free()).isEqualTo(Length.parse("771.4286 m"));
    assertThat(held().skein().gristDisagrees()).isFalse();
    double balance = 1000 * Math.sqrt(2) / Math.sqrt(12) / 70;
    assertThat(metres(held().uncertainty(Doubts.DEFAULT))).isCloseTo(Math.hypot(771.4286 * FINER.uncertainty().fraction().doubleValue(), balance), within(0.001));
  }

  @Test
  void aRecountThatIsTakenBackTakesItsMeasurementWithIt() throws Exception {
    new Grists(studio).weigh(YARN, FINER);
    ChainedEntry entry = recountByWeight().orElseThrow();
    new Reverse(studio).entry(UUID.randomUUID(), entry.entry().id(), "another skein");
    assertThat(held().free()).isEqualTo(RECEIVED);
    assertThat(held().skein().gristDisagrees()).isTrue();
  }

  @Test
  void whatIsReceivedAfterASampleWasWeighedIsReckonedByIt() throws Exception {
    new Grists(studio).weigh(YARN, FINER);
    new Receive(studio).file("more.csv", "code,yarn,colour,fibre,grist,gross,tare\nN1,Skerry 16/2,Woad,cotton,16/2 cotton,140 g,0 g\nN2,Skerry 16/2,Woad,,,70 g,0 g\n");
    assertThat(held("N1").free()).isEqualTo(Length.metres(2000));
    assertThat(held("N2").free()).isEqualTo(Length.metres(1000));
    assertThat(held("N1").skein().gristDisagrees()).isFalse();
  }

  @Test
  void aWeightWithoutAGristCountsAsNothingUntilASampleIsWeighedAndTheFileIsReadAgain() throws Exception {
    String file = "code,yarn,colour,gross,tare\nN1,Skerry 16/2,Woad,70 g,0 g\n";
    new Receive(studio).file("more.csv", file);
    new Grists(studio).weigh(YARN, FINER);
    assertThat(held("N1").skein().isMeasured()).isFalse();
    assertThat(new Grists(studio).of(YARN).unmeasured()).singleElement().satisfies(skein -> {
      assertThat(skein.code()).isEqualTo("N1");
      assertThat(skein.holds()).isEqualTo(Length.metres(1000));
    });
    assertThat(new Receive(studio).file("more.csv", file)).isEqualTo(new Receive.Delivery(1, 0));
    assertThat(new Grists(studio).of(YARN).unmeasured()).isEmpty();
    assertThat(held("N1").free()).isEqualTo(Length.metres(1000));
    assertThat(new Receive(studio).file("more.csv", file)).isEqualTo(new Receive.Delivery(0, 1));
  }

  @Test
  void whatIsOrderedAfterASampleWasWeighedIsReckonedByIt() throws Exception {
    new Grists(studio).weigh(YARN, FINER);
    new Expect(studio).file("order.csv", "code,yarn,colour,gross,tare\nN1,Skerry 16/2,Woad,70 g,0 g\n", LocalDate.of(2026, 4, 1));
    assertThat(new Expect(studio).all()).singleElement().satisfies(coming -> assertThat(coming.length()).isEqualTo(Length.metres(1000)));
    new Expect(studio).arrived(UUID.randomUUID(), List.of("N1"));
    assertThat(held("N1").free()).isEqualTo(Length.metres(1000));
  }

  @Test
  void theMassOfANeedIsByTheGristThatWasWeighed() throws Exception {
    new Grists(studio).weigh(YARN, FINER);
    Answer answer = new CheckPlan(studio).named("Quay towels");
    JsonNode need = new ObjectMapper().readTree(AnswerFile.write(answer.check(), answer.stock(), answer.dues())).at("/needs/0");
    assertThat(need.get("massG").asDouble()).isCloseTo(need.get("lengthM").asDouble() * 70 / 1000, within(0.001));
  }

  @Test
  void aSampleIsForgottenAndAnUnknownYarnHasNone() throws Exception {
    Grists grists = new Grists(studio);
    grists.weigh(YARN, FINER);
    assertThat(grists.of(YARN).sample()).contains(FINER);
    assertThat(grists.forget(YARN).sample()).isEmpty();
    assertThat(grists.all()).allMatch(grist -> grist.sample().isEmpty()).hasSize(8);
    assertThat(metres(held().uncertainty(Doubts.DEFAULT))).isCloseTo(15.6, within(0.1));
    assertThatThrownBy(() -> grists.weigh("Skerry", FINER)).isInstanceOf(NotDone.class).hasMessageStartingWith("There is no skein of the yarn Skerry in the ledger;");
  }

  @Test
  void turnsMakeASkeinSureAndALengthAloneLeavesItAsSureAsItWas() throws Exception {
    Recount recount = new Recount(studio);
    recount.skein(UUID.randomUUID(), S005, Length.metres(700), "");
    assertThat(metres(held().uncertainty(Doubts.DEFAULT))).isCloseTo(15.6, within(0.1));
    recount.counted(UUID.randomUUID(), S005, new Turns(350, Length.parse("2 m")), "");
    assertThat(held().free()).isEqualTo(Length.metres(700));
    assertThat(held().uncertainty(Doubts.DEFAULT)).isEqualTo(Length.metres(7));
  }

  @Test
  void aLengthAloneEndsTheProposalToRecount() throws Exception {
    new Grists(studio).weigh(YARN, FINER);
    new Recount(studio).skein(UUID.randomUUID(), S005, Length.metres(770), "along the warping board");
    assertThat(held().skein().gristDisagrees()).isFalse();
    assertThat(held().free()).isEqualTo(Length.metres(770));
  }

  @Test
  void aWeightIsRecountedOnlyWhereAGristAndItsMoistureAreKnown() throws Exception {
    Recount recount = new Recount(studio);
    Weighing plain = new Weighing(Mass.grams(60), Mass.ZERO);
    Weighing damp = new Weighing(Mass.grams(60), Mass.ZERO, Optional.of(Percentage.parse("15 %")));
    assertThatThrownBy(() -> recount.weighed(UUID.randomUUID(), "S055", plain, "")).isInstanceOf(NotDone.class).hasMessageStartingWith("The weight of S055 alone gives no length");
    assertThatThrownBy(() -> recount.weighed(UUID.randomUUID(), "S999", plain, "")).isInstanceOf(NotDone.class).hasMessage("There is no skein S999 in the ledger.");
    new Receive(studio).file("more.csv", "code,yarn,colour,fibre,grist,gross\nN1,Nettle,Green,nettle,tex 100,70 g\n");
    assertThatThrownBy(() -> recount.weighed(UUID.randomUUID(), "N1", damp, "")).isInstanceOf(NotDone.class).hasMessage("The standard regain of N1 is not known, its fibre being 'nettle'; leave the regain out.");
    recount.weighed(UUID.randomUUID(), S005, new Weighing(Mass.grams(115), Mass.ZERO, Optional.of(Percentage.parse("15 %"))), "");
    assertThat(held().skein().measurement().length()).contains(held().free());
    assertThat(held().free().metres().doubleValue()).isCloseTo(108.5 / 73.8176 * 1000, within(0.01));
  }

  @Test
  void theSameWeighingTwiceChangesNothingMore() throws Exception {
    recountByWeight();
    assertThat(recountByWeight()).isEmpty();
    assertThat(held().free()).isEqualTo(RECEIVED);
  }

  @Test
  void whatIsSetIsJudgedBy() throws Exception {
    assertThat(cover().verdict()).isEqualTo(Verdict.TIGHT);
    assertThat(new Settings(studio).set(Setting.RISK_LIMIT, "15 %")).isEqualTo(Judgement.DEFAULT.with(Setting.RISK_LIMIT, "15 %"));
    assertThat(cover().verdict()).isEqualTo(Verdict.COVERED);
    assertThat(new Settings(studio).unset(Setting.RISK_LIMIT)).isEqualTo(Judgement.DEFAULT);
    assertThat(cover().verdict()).isEqualTo(Verdict.TIGHT);
    assertThat(new PlanStandings(studio).all()).filteredOn(plan -> plan.name().equals("Ash blanket")).extracting(PlanStanding::verdict).containsExactly(Optional.of(Verdict.TIGHT));
  }

  @Test
  void theDefaultMayBeSetAsAnythingElseAndPutBack() throws Exception {
    Settings settings = new Settings(studio);
    assertThat(settings.unset(Setting.WEAVING_TIME)).as("nothing was set").isEqualTo(Judgement.DEFAULT);
    assertThat(settings.set(Setting.WEAVING_TIME, Setting.WEAVING_TIME.standard()).set()).isEqualTo(Map.of(Setting.WEAVING_TIME, "4 s"));
    for (Setting setting : Setting.values()) {
      settings.set(setting, setting.standard());
      assertThat(settings.unset(setting).set()).as(setting.key()).doesNotContainKey(setting);
    }
    assertThat(settings.judgement()).isEqualTo(Judgement.DEFAULT);
    assertThat(settings.set(Setting.WEAVING_TIME, "4 s").set()).as("set again").containsKey(Setting.WEAVING_TIME);
  }

  private Cover cover() throws Exception {
    return new CheckPlan(studio).named("Ash blanket").check().covers().getFirst();
  }

  private Optional<ChainedEntry> recountByWeight() throws NotDone {
    return new Recount(studio).weighed(UUID.randomUUID(), S005, new Weighing(Mass.grams(92), Mass.grams(38)), "");
  }

  private ShelfSkein held() {
    return held(S005);
  }

  private ShelfSkein held(String code) {
    return new Shelf(studio).skein(code).orElseThrow();
  }

  private static double metres(Length length) {
    return length.metres().doubleValue();
  }
}
