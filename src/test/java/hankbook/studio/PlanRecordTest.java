package hankbook.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.exchange.ActualsFile;
import hankbook.exchange.BadInput;
import hankbook.store.LedgerAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.UUID;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The record of the sample studio's towels, woven by the sample file of what was found, as another library than the one that set it reads it: PDFBox. */
class PlanRecordTest {
  private static final String PLAN = "Quay towels";

  @TempDir private Path folder;
  private Studio studio;

  @BeforeEach
  void drawTheTowels() throws Exception {
    studio = Studio.open(LedgerAddress.parse(folder.resolve("ledger").toString()), "Ida", Clock.fixed(Instant.parse("2026-03-14T12:00:00Z"), ZoneOffset.UTC));
    SampleStudio.fill(studio);
    new Reserve(studio).plan(UUID.randomUUID(), PLAN, false);
    new Draw(studio).plan(UUID.randomUUID(), PLAN);
  }

  @AfterEach
  void close() {
    studio.close();
  }

  private void finish() throws Exception {
    String found = Files.readString(Path.of("imports/quay-towels-actuals.json"));
    new Finish(studio).plan(UUID.randomUUID(), PLAN, ActualsFile.read("quay-towels-actuals.json", found).actuals());
  }

  @Test
  void onePageSaysWhatWasPlannedFoundUsedAndPaid() throws Exception {
    finish();
    try (PDDocument page = Loader.loadPDF(new PlanRecord(studio).page(PLAN))) {
      assertThat(page.getNumberOfPages()).isEqualTo(1);
      assertThat(new PDFTextStripper().getText(page)).contains(
          "Quay towels", "Cut off on 2026-03-14; the book was squared by Ida.", "4 x towel, 70 cm x 48 cm", "556, 556 planned", "warp take-up 8 % 8.77 %", "length shrinkage 8 % 8.19 %",
          "all yarns 4521.5 4534.5 +13.0", "planned 4521.5 m", "loom waste -16.7 m", "used 4534.5 m", "S003 Skerry 16/2 Chalk K-311 832.0", "weaving 9 h 30 min", "EUR",
          "the cost is not known of S005", "The third towel has the better beat.", "printed on 2026-03-14");
    }
  }

  @Test
  void thePageIsWrittenToANewFileAndNoFileIsOverwritten() throws Exception {
    finish();
    Path file = folder.resolve("towels.pdf");
    new PlanRecord(studio).write(PLAN, file);
    byte[] written = Files.readAllBytes(file);
    assertThat(new String(written, 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
    assertThatThrownBy(() -> new PlanRecord(studio).write(PLAN, file)).isInstanceOf(BadInput.class).hasMessageContaining("towels.pdf: found a file here already");
    assertThat(Files.readAllBytes(file)).isEqualTo(written);
    assertThatThrownBy(() -> new PlanRecord(studio).write(PLAN, folder.resolve("nowhere/towels.pdf"))).isInstanceOf(BadInput.class).hasMessageContaining("wanted a folder that takes a file");
  }

  @Test
  void aClothThatIsNotFinishedHasNoRecordYet() {
    assertThatThrownBy(() -> new PlanRecord(studio).page(PLAN)).isInstanceOf(NotDone.class).hasMessageContaining("is not finished");
    assertThatThrownBy(() -> new PlanRecord(studio).page("No such plan")).isInstanceOf(BadInput.class).hasMessageContaining("found no plan of this name");
  }
}
