package hankbook.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hankbook.measure.Sett;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The open specification is known from memory; the files here were made for these tests. */
class WeavingFileTest {
  private static final WeaveColour CHALK = new WeaveColour(1, "#f4f1e8");
  private static final WeaveColour WOAD = new WeaveColour(2, "#2f5d8a");
  private static final String SMALL = "[WARP]\nThreads=4\n[WEFT]\nThreads=2\n[COLOR TABLE]\n1=0,0,0\n2=255,255,255\n";

  @Test
  void endsAndPicksAreCountedByColourInTheirOrder() throws Exception {
    WeaveDraft draft = WeavingFile.read("twill-stripes.wif", file("twill-stripes.wif"));
    assertThat(draft.warp().count()).isEqualTo(96);
    assertThat(draft.warp().counts()).containsExactly(Map.entry(CHALK, 72), Map.entry(WOAD, 24));
    assertThat(draft.warp().colours().subList(0, 9)).containsExactly(CHALK, CHALK, CHALK, CHALK, CHALK, CHALK, WOAD, WOAD, CHALK);
    assertThat(draft.weft().counts()).containsExactly(Map.entry(CHALK, 14), Map.entry(WOAD, 2));
    assertThat(draft.notes()).isEmpty();
  }

  @Test
  void theLoomItAsksForIsRead() throws Exception {
    WeaveShafts shafts = WeavingFile.read("twill-stripes.wif", file("twill-stripes.wif")).shafts();
    assertThat(shafts.shafts()).isEqualTo(8);
    assertThat(shafts.treadles()).isEqualTo(4);
    assertThat(shafts.risingShed()).isFalse();
    assertThat(shafts.liftPlan()).isFalse();
    assertThat(shafts.heddles()).hasSize(8).allSatisfy((_, ends) -> assertThat(ends).isEqualTo(12));
  }

  @Test
  void aLiftPlanInOddHandwritingIsRead() throws Exception {
    WeaveDraft draft = WeavingFile.read("lift-plan.wif", file("lift-plan.wif"));
    assertThat(draft.warp().counts()).containsExactly(Map.entry(new WeaveColour(2, "#ffffff"), 8));
    assertThat(draft.weft().counts()).as("two blacks are one").containsExactly(Map.entry(new WeaveColour(1, "#000000"), 6));
    assertThat(draft.warp().sett()).as("36 of 720 decipoints to the inch").contains(Sett.perInch(20));
    assertThat(draft.shafts().liftPlan()).isTrue();
    assertThat(draft.shafts().heddles()).isEqualTo(Map.of(1, 2, 2, 2, 3, 1, 4, 2));
  }

  @Test
  void aThreadingAloneIsADraftWithoutColoursOrPicks() throws Exception {
    WeaveDraft draft = WeavingFile.read("bare.wif", file("bare.wif"));
    assertThat(draft.warp().counts()).containsExactly(Map.entry(WeaveColour.NONE, 12));
    assertThat(draft.weft().count()).isZero();
    assertThat(draft.shafts().shafts()).isEqualTo(4);
    assertThat(draft.notes()).containsExactly("The file has no picks.", "8 of its 12 ends are on no shaft.", "The file does not say what its colours look like.");
  }

  @Test
  void lineEndsAByteOrderMarkAndOldLettersMakeNoDifference() throws Exception {
    String text = "; für die Weberin\n[TEXT]\nTitle=Tücher; blau\n" + Files.readString(path("twill-stripes.wif"));
    WeaveDraft plain = WeavingFile.read("a.wif", text);
    assertThat(plain.title()).isEqualTo("Tücher; blau");
    assertThat(WeavingFile.read("a.wif", text.getBytes(StandardCharsets.UTF_8))).isEqualTo(plain);
    assertThat(WeavingFile.read("a.wif", text.getBytes(StandardCharsets.ISO_8859_1))).isEqualTo(plain);
    assertThat(WeavingFile.read("a.wif", ("\uFEFF" + text).getBytes(StandardCharsets.UTF_8))).isEqualTo(plain);
    assertThat(WeavingFile.read("a.wif", text.replace("\n", "\r\n").getBytes(StandardCharsets.UTF_8))).isEqualTo(plain);
    assertThat(WeavingFile.read("a.wif", text.replace("\n", "\r"))).isEqualTo(plain);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      0,255       | 47,93,138         | 244,241,232
      0,999       | 184,364,541       | 956,944,909
      0,65535     | 12079,23901,35466 | 62708,61937,59624
      100,355     | 147,193,238       | 344,341,332
      """)
  void aRangeOfAnyKindComesToTheSameColours(String range, String blue, String white) throws Exception {
    String text = Files.readString(path("twill-stripes.wif")).replace("0,255", range).replace("47,93,138", blue).replace("244,241,232", white);
    assertThat(WeavingFile.read("a.wif", text).warp().counts().keySet()).containsExactly(CHALK, WOAD);
  }

  @ParameterizedTest
  @CsvSource({"'1=244,241,232', 255, #f4f1e8", "'1=956,944,909', 999, #f4f1e8", "'1=62708,61937,59624', 65535, #f4f1e8", "'1=0,0,0', 255, #000000"})
  void aRangeLeftOutIsTheSmallestThatHoldsEveryValueAndThatIsSaid(String entry, int most, String hex) throws Exception {
    WeaveDraft draft = WeavingFile.read("a.wif", "[WARP]\nThreads=1\nColor=1\n[COLOR TABLE]\n" + entry + "\n[WEFT]\nThreads=1");
    assertThat(draft.warp().colours()).containsExactly(new WeaveColour(1, hex));
    assertThat(draft.notes()).containsExactly("The file gives no range for its colours; they were read as from 0 to " + most + ".");
  }

  @Test
  void coloursWithoutATableStayApartByTheirNumbers() throws Exception {
    WeaveDraft draft = WeavingFile.read("a.wif", "[WARP]\nThreads=3\nColor=4\n[WARP COLORS]\n2=7\n");
    assertThat(draft.warp().counts()).containsExactly(Map.entry(new WeaveColour(4, ""), 2), Map.entry(new WeaveColour(7, ""), 1));
    assertThat(draft.warp().colours()).extracting(Object::toString).containsExactly("colour 4", "colour 7", "colour 4");
  }

  @ParameterizedTest
  @CsvSource({
    "Inches, 0.042, 24/in", "Centimeters, 0.1, 10/cm", "Centimeters, 0.083, 12/cm", "decipoints, 30, 24/in", "Centimeters, '0,0625', 16/cm", "Centimeters, .2125, 4.71/cm",
    "Inches, 0.04166666666667, 24/in"
  })
  void theSettIsTheRoundestThatTheDigitsOfTheSpacingAllow(String units, String spacing, String sett) throws Exception {
    WeaveDraft draft = WeavingFile.read("a.wif", SMALL.replace("Threads=4", "Threads=4\nUnits=" + units + "\nSpacing=" + spacing));
    assertThat(draft.warp().sett()).contains(Sett.parse(sett));
    assertThat(draft.weft().sett()).isEmpty();
  }

  @Test
  void unevenSpacingComesToItsMean() throws Exception {
    String uneven = SMALL.replace("Threads=4", "Threads=4\nUnits=Centimeters\nSpacing=0.10") + "[WARP SPACING]\n2=0.20\n3=0.00\n";
    assertThat(WeavingFile.read("a.wif", uneven).warp().sett()).contains(Sett.parse("10/cm"));
    assertThat(WeavingFile.read("a.wif", uneven.replace("Spacing=0.10", "")).warp().sett()).as("two of four have no spacing").isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"Spacing=0", "Spacing=0.0001", "Spacing=999999999", "Units=Inches"})
  void aSpacingThatNoClothHasGivesNoSett(String line) throws Exception {
    assertThat(WeavingFile.read("a.wif", SMALL.replace("Threads=4", "Threads=4\nUnits=Centimeters\n" + line).replace("Units=Centimeters\nUnits", "Units")).warp().sett()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      Threads=4  | Threads=many       | a.wif, line 2, [WARP] threads: found 'many', wanted how many threads there are, from 0 to 100000
      Threads=4  | Threads=100001     | a.wif, line 2, [WARP] threads: found '100001', wanted how many threads there are, from 0 to 100000
      Threads=4  | Threads=0          | a.wif, [WARP]: found nothing, wanted at least one end, in Threads or in [THREADING]
      Threads=4  | Threads=4~Threads=5 | a.wif, line 3, [WARP] threads: found '5', wanted 4 as line 2 says, or one of the two lines gone
      Threads=4  | Threads=4~Color=3  | a.wif, line 3, [WARP] color: found '3', wanted the number of a colour in [COLOR TABLE]
      Threads=4  | Threads=4~Units=Ells | a.wif, line 3, [WARP] units: found 'Ells', wanted Decipoints, Inches or Centimeters
      Threads=4  | Threads=4~Spacing=wide | a.wif, line 3, [WARP] spacing: found 'wide', wanted a number such as 0.25
      Threads=4  | Threads=4~~Color 1 | a.wif, line 4, [WARP]: found 'Color 1', wanted a key and its value, such as 1=2
      [WEFT]     | [WEFT              | a.wif, line 3: found '[WEFT', wanted a section in square brackets such as [WARP]
      [WARP]     | Threads=4~[WARP]   | a.wif, line 1: found 'Threads=4', wanted a section in square brackets such as [WARP]
      [WARP]     | [WIF]~Version=2.0~[WARP] | a.wif, line 2, [WIF] version: found '2.0', wanted 1.1
      [WARP]     | [WARP COLORS]~5=1~[WARP] | a.wif, line 2, [WARP COLORS] 5: found '5', wanted an end from 1 to 4
      [WARP]     | [WARP COLORS]~two=1~[WARP] | a.wif, line 2, [WARP COLORS] two: found 'two', wanted an end from 1 to 4
      [WARP]     | [WEFT COLORS]~2=9~[WARP] | a.wif, line 2, [WEFT COLORS] 2: found '9', wanted the number of a colour in [COLOR TABLE]
      [WARP]     | [WEFT COLORS]~2=-1~[WARP] | a.wif, line 2, [WEFT COLORS] 2: found '-1', wanted the number of a colour, from 0 to 100000
      [WARP]     | [WARP THICKNESS]~2=thin~[WARP] | a.wif, line 2, [WARP THICKNESS] 2: found 'thin', wanted a number such as 0.25
      [WARP]     | [WEAVING]~Shafts=4~[THREADING]~2=5~[WARP] | a.wif, line 4, [THREADING] 2: found '5', wanted a shaft from 0 to 4
      [WARP]     | [LIFTPLAN]~3=1~[WARP] | a.wif, line 2, [LIFTPLAN] 3: found '3', wanted a pick from 1 to 2
      [WARP]     | [TREADLING]~1=left~[WARP] | a.wif, line 2, [TREADLING] 1: found 'left', wanted a treadle from 0 to 1000
      [WARP]     | [TIEUP]~1=1,,3~[WARP] | a.wif, line 2, [TIEUP] 1: found nothing, wanted a shaft from 0 to 1000
      [WARP]     | [WEAVING]~Rising Shed=perhaps~[WARP] | a.wif, line 2, [WEAVING] rising shed: found 'perhaps', wanted true or false
      1=0,0,0    | 1=0,0              | a.wif, line 6, [COLOR TABLE] 1: found '0,0', wanted red, green and blue such as 47,93,138
      1=0,0,0    | 1=0,0,red          | a.wif, line 6, [COLOR TABLE] 1: found 'red', wanted red, green or blue from 0 to 65535
      [COLOR TABLE] | [COLOR PALETTE]~Range=0,200~[COLOR TABLE] | a.wif, line 9, [COLOR TABLE] 2: found '255', wanted red, green or blue from 0 to 200
      [COLOR TABLE] | [COLOR PALETTE]~Range=255~[COLOR TABLE] | a.wif, line 6, [COLOR PALETTE] range: found '255', wanted the least and the greatest value of a colour, such as 0,255
      [COLOR TABLE] | [COLOR PALETTE]~Range=9,9~[COLOR TABLE] | a.wif, line 6, [COLOR PALETTE] range: found '9,9', wanted the least and the greatest value of a colour, such as 0,255
      [COLOR TABLE] | [COLOR PALETTE]~Form=HSV~[COLOR TABLE] | a.wif, line 6, [COLOR PALETTE] form: found 'HSV', wanted RGB
      """, quoteCharacter = '\u0001')
  void nonsenseIsRefusedWithSectionAndLine(String good, String bad, String message) {
    String text = SMALL.replace(good, bad.replace('~', '\n'));
    assertThatThrownBy(() -> WeavingFile.read("a.wif", text)).isInstanceOf(BadInput.class).hasMessage(message);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '\u0001', textBlock = """
      ~         | a.wif: found no section that says anything of a draft, wanted a weaving information file with [WARP], [WEFT] and [THREADING]
      [NOTES]~1=hello | a.wif: found no section that says anything of a draft, wanted a weaving information file with [WARP], [WEFT] and [THREADING]
      code,yarn,colour~1,Skerry,Chalk | a.wif, line 1: found 'code,yarn,colour', wanted a section in square brackets such as [WARP]
      [WIF]~Version=1.1 | a.wif, [WARP]: found nothing, wanted at least one end, in Threads or in [THREADING]
      """)
  void whatIsNoDraftIsRefused(String text, String message) {
    assertThatThrownBy(() -> WeavingFile.read("a.wif", text.replace('~', '\n'))).isInstanceOf(BadInput.class).hasMessage(message);
  }

  @Test
  void bytesThatAreNoTextAreRefused() {
    assertThatThrownBy(() -> WeavingFile.read("a.wif", new byte[] {0x50, 0x4b, 3, 4, 0, 0}))
        .hasMessage("a.wif: found bytes that are no text, wanted a weaving information file in UTF-8 or ISO 8859-1");
    assertThatThrownBy(() -> WeavingFile.read("a.wif", new byte[WeavingFile.MOST_BYTES + 1]))
        .hasMessage("a.wif: found more than 8 MiB, wanted a weaving information file of at most as much");
  }

  @Test
  void theFirstTwentyFaultsAreToldInTheOrderOfTheirLines() {
    String threading = IntStream.rangeClosed(1, 30).mapToObj(end -> end + "=x").collect(Collectors.joining("\n"));
    BadInput bad = catchThrowableOfType(BadInput.class, () -> WeavingFile.read("a.wif", "[THREADING]\n" + threading + "\n[WARP]\nThreads=30"));
    assertThat(bad.faults()).hasSize(21).startsWith("a.wif, line 2, [THREADING] 1: found 'x', wanted a shaft from 0 to 1000").endsWith("a.wif: found 10 faults more, wanted none");
  }

  @Test
  void linesThatSayTheSameTwiceAreTaken() throws Exception {
    assertThat(WeavingFile.read("a.wif", SMALL + "[WARP COLORS]\n1=2\n01=2\n[WARP]\nthreads=4\n").warp().colours().get(0).hex()).isEqualTo("#ffffff");
    assertThatThrownBy(() -> WeavingFile.read("a.wif", SMALL + "[WARP COLORS]\n1=2\n01=1\n"))
        .hasMessage("a.wif, line 10, [WARP COLORS] 1: found '1', wanted 2 as line 9 says, or one of the two lines gone");
  }

  @Test
  void theGreatestDraftIsRead() throws Exception {
    String threads = IntStream.rangeClosed(1, 100_000).mapToObj(thread -> thread + "=" + (1 + thread % 2)).collect(Collectors.joining("\n"));
    WeaveDraft draft = WeavingFile.read("a.wif", SMALL.replace("Threads=4", "Threads=100000") + "[THREADING]\n" + threads + "\n[WARP COLORS]\n" + threads);
    assertThat(draft.warp().counts().values()).containsExactly(50_000, 50_000);
  }

  private static byte[] file(String name) throws IOException {
    return Files.readAllBytes(path(name));
  }

  static Path path(String name) {
    return Path.of("src/test/resources/drafts", name);
  }
}
