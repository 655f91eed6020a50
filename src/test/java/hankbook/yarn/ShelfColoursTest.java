package hankbook.yarn;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.measure.Length;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ShelfColoursTest {
  private static final List<Skein> SHELF =
      List.of(
          skein("1", "Skerry 16/2", "Woad", "#2f5d8a"),
          skein("2", "Skerry 16/2", "Woad", "#2f5d8a"),
          skein("3", "Skerry 16/2", "Chalk", "#f4f1e8"),
          skein("4", "Loft", "Blue", "#2f5d8b"),
          skein("5", "Loft", "Unseen", ""),
          skein("6", "Skerry 16/2", "Woad", "#ffffff"));

  @Test
  void theNearestYarnComesFirstWithAllThatThereIsOfIt() {
    List<NearestYarn> nearest = new ShelfColours(SHELF, Optional.empty()).nearest("#2f5d8a");
    assertThat(nearest).extracting(near -> near.yarn().toString()).containsExactly("Skerry 16/2 Woad", "Loft Blue", "Skerry 16/2 Chalk");
    assertThat(nearest.getFirst().difference()).isEqualTo(new ColourDifference(0));
    assertThat(nearest.getFirst().holds()).isEqualTo(Length.metres(300));
    assertThat(nearest.get(1).difference().deltaE()).isBetween(0.01, 1.0);
  }

  @Test
  void ofSeveralSwatchesOfAYarnTheNearestCounts() {
    assertThat(new ShelfColours(SHELF, Optional.empty()).nearest("#ffffff").getFirst()).extracting(NearestYarn::hex).isEqualTo("#ffffff");
  }

  @Test
  void oneYarnAloneMayComeIntoQuestion() {
    assertThat(new ShelfColours(SHELF, Optional.of("loft")).nearest("#f4f1e8")).extracting(near -> near.yarn().toString()).containsExactly("Loft Blue");
  }

  private static Skein skein(String code, String yarn, String colour, String hex) {
    return new Skein(
        code, new YarnColour(yarn, colour), hex, "", Optional.empty(), PackageForm.SKEIN, Optional.of(Length.metres(100)), Optional.empty(), false, "", "", Optional.empty(), Optional.empty(),
        Optional.empty());
  }
}
