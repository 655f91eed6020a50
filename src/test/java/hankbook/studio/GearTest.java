package hankbook.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.allot.Warning;
import hankbook.allot.WindingSheet;
import hankbook.allot.WindingWish;
import hankbook.gear.Loom;
import hankbook.gear.Reed;
import hankbook.gear.Sley;
import hankbook.measure.Length;
import hankbook.measure.Sett;
import hankbook.plan.Bout;
import hankbook.plan.SettChange;
import hankbook.store.LedgerAddress;
import hankbook.store.Vendor;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** Looms, reeds and what they mean for a plan, on a ledger in either database with the sample studio in it. */
@ParameterizedClass
@EnumSource
class GearTest {
  private static final String TOWELS = "Quay towels";
  private static final SleyPlan.Wish NOTHING = new SleyPlan.Wish(Optional.empty(), Optional.empty(), Optional.empty(), OptionalInt.empty());

  private final Vendor vendor;

  @TempDir private Path folder;
  private Studio studio;

  GearTest(Vendor vendor) {
    this.vendor = vendor;
  }

  @BeforeEach
  void open() throws Exception {
    LedgerAddress address = vendor.ledger(folder);
    studio = Studio.open(address, "Ida");
    SampleStudio.fill(studio);
  }

  @AfterEach
  void close() {
    studio.close();
  }

  @Test
  void theSampleStudioHasLoomsAndReedsThatServeItsPlans() throws Exception {
    assertThat(new OwnGear(studio).all().looms()).extracting(Loom::name).containsExactly("Table loom", "Window loom");
    assertThat(new OwnGear(studio).all().reeds()).extracting(Reed::name).containsExactly("12/in", "40/10 cm", "50/10 cm");
    for (String plan : new Plans(studio).names()) {
      assertThat(new CheckPlan(studio).named(plan).check().warnings()).as(plan).noneMatch(warning -> warning.yarn().isEmpty());
    }
  }

  @Test
  void aBookThatHasOnlyALoomIsNotBlank() throws Exception {
    try (Studio blank = Studio.open(vendor.ledger(Files.createDirectory(folder.resolve("blank"))), "Ida")) {
      new Looms(blank).add(new Loom("Loom", Length.metres(1), Length.ZERO, 4), false);
      assertThat(blank.isBlank()).isFalse();
    }
  }

  @Test
  void aPlanIsSleyedInTheNearestReedOfTheStudio() throws Exception {
    SleyPlan.Sleyed sleyed = SleyPlan.named(studio, TOWELS, NOTHING);
    assertThat(sleyed.choice().reed().name()).isEqualTo("50/10 cm");
    assertThat(sleyed.sleying().sley()).isEqualTo(Sley.parse("2"));
    new Reeds(studio).putAway("50/10 cm");
    assertThat(SleyPlan.named(studio, TOWELS, NOTHING).choice().reed().name()).isEqualTo("40/10 cm");
  }

  @Test
  void aWindingSheetForMoreThreadsKeepsWhatLoomAndReedHaveToSay() throws Exception {
    new Looms(studio).putAway("Window loom");
    new Looms(studio).add(new Loom("Table loom", Length.parse("20 cm"), Length.ZERO, 8), true);
    Answer answer = new CheckPlan(studio).named(TOWELS);
    WindingSheet sheet = answer.winding(new WindingWish(answer.check().plan().threads() + 1, false, Bout.USUAL, WindingWish.USUAL_GROUP));
    assertThat(sheet.check().warnings()).extracting(Warning::code).contains(Warning.Code.TOO_WIDE);
  }

  @Test
  void aChangeOfSettIsANewVersionThatKeepsTheEndsAndTheWarp() throws Exception {
    KeptPlan before = new Plans(studio).kept(TOWELS).orElseThrow();
    Answer planned = new CheckPlan(studio).named(TOWELS);
    SettChange tried = new Resley(studio).tried(TOWELS, Sett.perCentimetre(11));
    assertThat(new Plans(studio).kept(TOWELS)).contains(before);
    assertThat(new Resley(studio).keep(TOWELS, Sett.perCentimetre(11))).isEqualTo(tried);
    assertThat(new Plans(studio).kept(TOWELS).orElseThrow().version()).isEqualTo(before.version() + 1);
    Answer resleyed = new CheckPlan(studio).named(TOWELS);
    assertThat(resleyed.check().yardage().width().ends()).isEqualTo(planned.check().yardage().width().ends());
    assertThat(resleyed.check().yardage().warp().total()).isEqualTo(planned.check().yardage().warp().total());
    assertThat(resleyed.check().yardage().width().inReed()).isEqualTo(tried.after().inReed());
  }

  /** Its ends come from sections of units, which stay as they were written. */
  @Test
  void sectionsStayThroughAChangeOfSett() throws Exception {
    SettChange change = new Resley(studio).keep("Ash blanket", Sett.perInch(36));
    assertThat(change.ends()).isEqualTo(690);
    assertThat(new Plans(studio).text("Ash blanket").orElseThrow()).contains("\"sections\"").doesNotContain("\"ends\"");
    assertThat(new CheckPlan(studio).named("Ash blanket").check().yardage().width().inReed()).isEqualTo(change.after().inReed());
  }

  @Test
  void anotherLoomOfTheSameNameIsNotEnteredOverTheFirst() throws Exception {
    Loom other = new Loom("Table loom", Length.metres(1), Length.ZERO, 16);
    assertThatThrownBy(() -> new Looms(studio).add(other, false))
        .isInstanceOf(NotDone.class)
        .hasMessage("There is a loom Table loom already that is another; replace it outright, or give this one another name.");
    new Looms(studio).add(other, true);
    assertThat(new Looms(studio).all()).contains(other).hasSize(2);
    assertThatThrownBy(() -> new Reeds(studio).putAway("7/in")).isInstanceOf(NotDone.class).hasMessage("There is no reed 7/in; reed list shows those there are.");
  }
}
