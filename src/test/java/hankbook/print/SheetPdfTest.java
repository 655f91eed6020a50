package hankbook.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** What is read off the page by another library than the one that set it: PDFBox. */
class SheetPdfTest {
  private static final List<Sheet.Column> COLUMNS = List.of(new Sheet.Column("Yarn", false, 3), new Sheet.Column("Used", true, 1));

  @Test
  void every_part_is_on_the_page_and_can_be_searched() throws IOException {
    try (PDDocument page = read(sheet(3))) {
      String text = new PDFTextStripper().getText(page);
      assertThat(text).contains("Quay towels", "squared on 2026-11-20", "Off the loom", "3.41 m", "Skerry 16/2, Chalk", "1,204.5 m", "loom waste", "+12.0 m", "All went well.", "Made by Hankbook");
    }
  }

  @Test
  void names_are_printed_as_they_are_written() throws IOException {
    String name = "Łąka żółć, Ängsull, Straße, ğış, čeština, Ελλάδα, лён";
    try (PDDocument page = read(new Sheet(name, "", List.of(), ""))) {
      assertThat(new PDFTextStripper().getText(page)).contains(name);
    }
  }

  @Test
  void what_fits_on_one_page_in_smaller_letters_is_on_one() throws IOException {
    try (PDDocument page = read(sheet(30))) {
      assertThat(page.getNumberOfPages()).isEqualTo(1);
    }
  }

  @Test
  void what_would_be_too_small_to_read_goes_on_to_another_page_with_its_headings_again() throws IOException {
    try (PDDocument pages = read(sheet(150))) {
      assertThat(pages.getNumberOfPages()).isGreaterThan(1);
      PDFTextStripper second = new PDFTextStripper();
      second.setStartPage(2);
      assertThat(second.getText(pages)).contains("Yarn Used", "Made by Hankbook");
    }
  }

  @Test
  void its_letters_travel_with_it() throws IOException {
    try (PDDocument page = read(sheet(1))) {
      PDPage first = page.getPage(0);
      for (var name : first.getResources().getFontNames()) {
        PDFont font = first.getResources().getFont(name);
        assertThat(font.isEmbedded()).as(font.getName()).isTrue();
      }
      assertThat(page.getDocumentInformation().getTitle()).isEqualTo("Quay towels");
    }
  }

  @Test
  void a_part_with_nothing_in_it_leaves_no_heading() throws IOException {
    Sheet empty = new Sheet("Quay towels", "", List.of(new Sheet.Facts("Measured", List.of()), new Sheet.Table("Yarn", COLUMNS, List.of()), new Sheet.Words("Note", " ")), "");
    try (PDDocument page = read(empty)) {
      assertThat(new PDFTextStripper().getText(page)).doesNotContain("Measured", "Yarn", "Note");
    }
  }

  private static PDDocument read(Sheet sheet) throws IOException {
    return Loader.loadPDF(SheetPdf.of(sheet));
  }

  private static Sheet sheet(int yarns) {
    Sheet.Row row = new Sheet.Row(List.of(new Sheet.Cell("Skerry 16/2, Chalk", Optional.of("#f4f1e8")), Sheet.Cell.of("1,204.5 m")), false);
    return new Sheet(
        "Quay towels",
        "squared on 2026-11-20",
        List.of(
            new Sheet.Facts("Measured", List.of(new Sheet.Fact("Off the loom", "3.41 m"), new Sheet.Fact("Finished", "3.12 m"), new Sheet.Fact("Picks", "3,104"))),
            new Sheet.Table("Yarn", COLUMNS, Collections.nCopies(yarns, row)),
            new Sheet.Bars(
                "Where the yarn went",
                List.of(
                    new Sheet.Bar("planned", BigDecimal.ZERO, new BigDecimal("1200"), "1,200.0 m", true),
                    new Sheet.Bar("loom waste", new BigDecimal("1200"), new BigDecimal("1212"), "+12.0 m", false),
                    new Sheet.Bar("used", BigDecimal.ZERO, new BigDecimal("1212"), "1,212.0 m", true))),
            new Sheet.Words("Note", "All went well.")),
        "Made by Hankbook");
  }
}
