package hankbook.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.exchange.BadInput;
import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanFile;
import hankbook.exchange.RemedyDraft;
import hankbook.exchange.VariationText;
import hankbook.measure.Length;
import hankbook.measure.Sett;
import hankbook.measure.Unreadable;
import hankbook.yarn.YarnColour;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** A plan with a few values said otherwise. */
class VariationTest {
  private static final YarnColour CHALK = new YarnColour("Skerry 16/2", "Chalk");
  private static final YarnColour WOAD = new YarnColour("Skerry 16/2", "Woad");

  private final String text = Files.readString(Path.of("imports/quay-towels.json"));
  private final Plan towels = PlanFile.read("quay-towels.json", text);

  VariationTest() throws IOException, BadInput {}

  private Plan varied(String changes) {
    return VariationText.read(changes, towels).of(towels);
  }

  @Example
  void whatIsNotSaidStaysAsThePlanHasIt() {
    assertThat(Variation.NONE.of(towels)).isEqualTo(towels);
    assertThat(varied("sett=" + towels.warp().sett())).isEqualTo(towels);
    assertThat(varied("pieces=6; sampling=1 m")).isEqualTo(PlanVariants.withSampling(PlanVariants.withPieces(towels, 0, 6), Length.parse("1 m")));
  }

  @Property(tries = 100, seed = "20261126")
  void whatIsEnteredForAVariantReadsAsTheVariant(@ForAll @IntRange(min = 4, max = 14) int sett, @ForAll @IntRange(min = 1, max = 9) int pieces, @ForAll @IntRange(min = 20, max = 90) int width)
      throws BadInput {
    Plan varied = varied("sett=" + sett + "/cm; towel=" + pieces + "; width=" + width + " cm; Skerry 16/2, Woad=Skerry 16/2, Moss");
    assertThat(PlanFile.read("entered", RemedyDraft.apply(PlanDraft.of(text), towels, varied).json())).isEqualTo(varied);
    assertThat(varied.warp().sett()).isEqualTo(Sett.perCentimetre(sett));
    assertThat(Width.of(varied).ends()).isBetween(Math.toIntExact(Sett.perCentimetre(sett).threadsIn(Width.of(varied).inReedTenths()).longValue()), Integer.MAX_VALUE);
  }

  @Example
  void aWiderPieceWidensTheWarpAndANarrowerOneNarrowsIt() {
    assertThat(Width.of(varied("width=60 cm")).ends()).isGreaterThan(Width.of(towels).ends());
    assertThat(Width.of(varied("width=30 cm")).ends()).isLessThan(Width.of(towels).ends());
    Plan outright = PlanVariants.withEnds(towels, 500);
    assertThatThrownBy(() -> VariationText.read("width=60 cm", outright).of(outright)).isInstanceOf(Unreadable.class).hasMessageContaining("ends are given outright");
  }

  @Example
  void twoYarnsMayChangePlaces() {
    Plan varied = varied("Skerry 16/2, Chalk=Skerry 16/2, Woad; Skerry 16/2, Woad=Skerry 16/2, Chalk");
    assertThat(varied.warp().order()).extracting(OrderEntry::yarn).isEqualTo(
        towels.warp().order().stream().map(entry -> entry.yarn().equals(CHALK) ? WOAD : entry.yarn().equals(WOAD) ? CHALK : entry.yarn()).toList());
    assertThat(VariationText.read("Skerry 16/2, Chalk=Skerry 16/2, Woad; Skerry 16/2, Woad=Skerry 16/2, Chalk", varied).of(varied)).isEqualTo(towels);
  }

  @Example
  void whatCannotBeVariedIsRefusedWithWhatIsWanted() {
    assertThatThrownBy(() -> varied("setts=3")).hasMessageStartingWith("found 'setts', wanted sett=8/cm");
    assertThatThrownBy(() -> varied("sett=8/cm; sett=9/cm")).hasMessage("found 'sett twice', wanted each thing once");
    assertThatThrownBy(() -> varied(" ")).isInstanceOf(Unreadable.class);
    assertThatThrownBy(() -> varied("pieces=0")).hasMessageContaining("a count of at least 1");
    assertThatThrownBy(() -> varied("Beck, Milk=Beck, Slate")).hasMessage("found 'another yarn for Beck Milk', wanted one for a yarn of the plan");
  }

  @Example
  void aFreeNameIsNumberedOnFromTheOneItIsLike() {
    Set<String> taken = Set.of("Quay towels", "Quay towels 2", "Runner 9");
    assertThat(List.of(PlanName.another("Quay towels", taken::contains), PlanName.another("Quay towels 2", taken::contains), PlanName.another("Runner 9", taken::contains)))
        .containsExactly("Quay towels 3", "Quay towels 3", "Runner 2");
    assertThat(PlanName.free("Shawl", taken::contains)).isEqualTo("Shawl");
    assertThat(PlanName.like("quay TOWELS", taken)).contains("Quay towels");
    assertThat(PlanName.like("Quay towels", taken)).isEmpty();
  }
}
