package hankbook.studio;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.exchange.StockFile;
import hankbook.exchange.WeaveColour;
import hankbook.exchange.WeaveDraft;
import hankbook.exchange.WeaveUse;
import hankbook.exchange.WeavingFile;
import hankbook.plan.Need.Role;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class DraftPreviewTest {
  private static final YarnColour ASH = new YarnColour("Fjara 2/20", "Ash");

  @Test
  void eachSideOfAColourIsAChoiceOfItsOwn() throws Exception {
    DraftPreview preview = scarf();
    assertThat(preview.colours()).extracting(DraftColour::mark).containsExactly("A", "B", "C");
    assertThat(preview.uses()).extracting(use -> use.role() + " " + use.colour())
        .containsExactly("WARP #8e8a82", "WARP #a6332e", "WARP #d9b53d", "WEFT #8e8a82", "WEFT #a6332e", "WEFT #d9b53d");
  }

  @Test
  void theNearestYarnIsTakenOnlyWhereNoneWasChosen() throws Exception {
    DraftPreview preview = scarf();
    WeaveUse red = new WeaveUse(Role.WARP, preview.colours().get(1).colour());
    Map<WeaveUse, YarnColour> all = preview.withNearest(Map.of(red, ASH));
    assertThat(all).hasSize(6).containsEntry(red, ASH).containsEntry(new WeaveUse(Role.WEFT, red.colour()), new YarnColour("Fjara 2/20", "Madder"));
  }

  @Test
  void aColourThatTheDraftDoesNotShowHasNothingNearIt() throws Exception {
    DraftPreview preview = DraftPreview.of(WeavingFile.read("a.wif", "[WARP]\nThreads=2\n"), stock(), Optional.empty());
    assertThat(preview.colours()).containsExactly(new DraftColour("A", WeaveColour.NONE, 2, 0, List.of()));
    assertThat(preview.withNearest(Map.of())).isEmpty();
  }

  @Test
  void afterTwentySixColoursTheMarksHaveTwoLetters() throws Exception {
    String warp = IntStream.rangeClosed(1, 60).mapToObj(end -> end + "=" + end).collect(Collectors.joining("\n"));
    WeaveDraft draft = WeavingFile.read("a.wif", "[WARP COLORS]\n" + warp);
    List<String> marks = DraftPreview.of(draft, List.of(), Optional.empty()).colours().stream().map(DraftColour::mark).toList();
    assertThat(marks).doesNotHaveDuplicates().contains("Z", "AA", "AZ", "BA").endsWith("BH");
  }

  private static DraftPreview scarf() throws Exception {
    return DraftPreview.of(BringInDraft.read(Path.of("imports/heron-scarf.wif")), stock(), Optional.empty());
  }

  private static List<Skein> stock() throws Exception {
    return StockFile.read("stock.csv", Files.readString(Path.of("imports/stock.csv")));
  }
}
