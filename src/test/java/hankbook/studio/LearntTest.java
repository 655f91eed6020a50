package hankbook.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import hankbook.allot.Cover;
import hankbook.exchange.ActualsFile;
import hankbook.gear.Weave;
import hankbook.reckon.Finding;
import hankbook.reckon.Findings;
import hankbook.reckon.Lesson;
import hankbook.reckon.Manner;
import hankbook.reckon.Offer;
import hankbook.store.Vendor;
import hankbook.yarn.FibreFamily;
import hankbook.yarn.Uncertainty;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** Scarves of 100 ends, 2 m of cloth and 1 m of loom waste planned, finished one after the other on a ledger in either database. */
@ParameterizedClass
@EnumSource
class LearntTest {
  private static final String STOCK = """
      code,yarn,colour,fibre,grist,length
      A,Fjara,Ash,wool,tex 100,1500 m
      """;
  private static final String SCARF = """
      { "format": "hankbook-plan/1", "name": "%s", "loom": "Window loom", "pieces": [{"name": "scarf", "count": 1, "length": "2 m", "width": "20 cm"}],
        "warp": {"sett": "5/cm", "ends": 100, "weave": "plain", "order": [{"yarn": "Fjara", "colour": "Ash", "ends": 100}]}, "allowances": {"loomWaste": "1 m"} }
      """;
  private static final Manner ON_WINDOW_LOOM = new Manner(Optional.of("Window loom"), Optional.of(Weave.PLAIN), Set.of(FibreFamily.WOOL));

  private final Vendor vendor;

  @TempDir private Path folder;
  private Studio studio;

  LearntTest(Vendor vendor) {
    this.vendor = vendor;
  }

  @BeforeEach
  void receive() throws Exception {
    studio = Studio.open(vendor.ledger(folder), "Ida");
    new Receive(studio).file("stock.csv", STOCK);
    new Plans(studio).add("next.json", SCARF.formatted("Next"), false);
  }

  @AfterEach
  void close() {
    studio.close();
  }

  private void finish(String plan, int left, String waste) throws Exception {
    String found = """
        { "format": "hankbook-actuals/1", "reason": "as it was", "leftovers": [{"skein": "A", "left": "%d m"}],
          "warp": {"length": "3 m", "loomWaste": "%s"}, "hours": {"threading": "20 min"} }
        """.formatted(left, waste);
    new Plans(studio).add("scarf.json", SCARF.formatted(plan), false);
    new Reserve(studio).plan(UUID.randomUUID(), plan, false);
    new Draw(studio).plan(UUID.randomUUID(), plan);
    new Finish(studio).plan(UUID.randomUUID(), plan, ActualsFile.read("found.json", found).actuals());
  }

  private void finishThree() throws Exception {
    finish("First", 1200, "70 cm");
    finish("Second", 900, "68 cm");
    finish("Third", 600, "72 cm");
  }

  @Test
  void nothingFinishedTeachesNothing() throws Exception {
    assertThat(new Learnt(studio).all().lessons()).isEmpty();
    assertThat(new CheckPlan(studio).named("Next").offers()).isEmpty();
    assertThat(new Learnt(studio).forPlan("Next", Manner.ANY).manner()).isEqualTo(ON_WINDOW_LOOM);
  }

  /** Mean 70 cm, s = 2 cm, and 4.3027 × 2 × √(4/3) = 9.94 cm either way. */
  @Test
  void finishedPlansProposeTheNextOnesLoomWasteAndTimes() throws Exception {
    finishThree();
    assertThat(new Learnt(studio).all().lessons()).extracting(Lesson::manner).containsOnly(ON_WINDOW_LOOM);
    assertThat(new Learnt(studio).forPlan("Next", Manner.ANY).offers()).extracting(offer -> offer.words().english())
        .contains("70 cm, from 3 plans on Window loom, 60.1 to 79.9 cm", "12 s an end, from 3 plans on Window loom, always the same");
    assertThat(Learnt.waste(new Learnt(studio).all(), "Window loom").map(Finding::count)).contains(3);
    assertThat(Learnt.waste(new Learnt(studio).all(), "Table loom")).isEmpty();
  }

  /** u = 2 × √(4/3) cm of loom waste, 2.31 cm to the tenth of a millimetre, × 100 ends; the need stays what is planned. */
  @Test
  void whatTheyScatterMakesTheNextNeedUnsureAndTakingOneBackUndoesThat() throws Exception {
    Cover before = cover();
    finishThree();
    assertThat(cover().need()).isEqualTo(before.need());
    assertThat(cover().doubt().parts()).filteredOn(part -> part.skeins() == 0).extracting(part -> part.cause().english(), part -> part.error().metres().toPlainString())
        .containsExactly(tuple("loom waste, learnt from 3 plans on Window loom", "2.3100"));
    assertThat(new PlanStandings(studio).all()).extracting(PlanStanding::name).contains("Next");
    new Finish(studio).takeBack(UUID.randomUUID(), "Third", "measured the wrong beam");
    assertThat(cover().doubt().parts()).noneMatch(part -> part.skeins() == 0);
    assertThat(new Learnt(studio).all().lessons()).extracting(Lesson::plan).containsOnly("First", "Second");
  }

  @Test
  void whatIsSaidBesideThePlanWins() throws Exception {
    finishThree();
    Manner other = new Manner(Optional.of("Table loom"), Optional.empty(), Set.of());
    Learnt.Proposal proposal = new Learnt(studio).forPlan("Next", other);
    assertThat(proposal.manner().loom()).contains("Table loom");
    assertThat(proposal.manner().weave()).contains(Weave.PLAIN);
    assertThat(proposal.offers()).extracting(offer -> offer.words().english()).contains("70 cm, from 3 plans of every kind, 60.1 to 79.9 cm");
  }

  @Test
  void aProgramThatOpensTheLedgerAnewHasLearntTheSame() throws Exception {
    finishThree();
    Findings anew = studio.read(session -> new LearntSoFar().findings(session));
    assertThat(anew).isEqualTo(new Learnt(studio).all());
    assertThat(anew.lessons()).isNotEmpty();
  }

  private Cover cover() throws Exception {
    return new CheckPlan(studio).named("Next").check().covers().getFirst();
  }
}
