package hankbook.print;

import java.io.ByteArrayOutputStream;
import org.openpdf.text.Document;
import org.openpdf.text.HeaderFooter;
import org.openpdf.text.PageSize;
import org.openpdf.text.Paragraph;
import org.openpdf.text.Phrase;
import org.openpdf.text.pdf.PdfWriter;

/** Sets a sheet as a PDF of A4 pages: of one page where its letters stay legible on one. */
public final class SheetPdf {
  private static final float MARGIN = 42;
  private static final float LARGEST = 9.5f;
  private static final float SMALLEST = 7;
  private static final float STEP = 0.5f;

  private SheetPdf() {}

  private record Printed(ByteArrayOutputStream file, int pages) {}

  /** The file's content. */
  public static byte[] of(Sheet sheet) {
    float size = LARGEST;
    Printed printed = set(sheet, size);
    while (printed.pages() > 1 && size > SMALLEST) {
      size -= STEP;
      printed = set(sheet, size);
    }
    Printed chosen = printed.pages() > 1 ? set(sheet, LARGEST) : printed;
    return chosen.file().toByteArray();
  }

  private static Printed set(Sheet sheet, float size) {
    SheetFonts fonts = new SheetFonts(size);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Document document = new Document(PageSize.A4, MARGIN, MARGIN, MARGIN, MARGIN);
    PdfWriter writer = PdfWriter.getInstance(document, out);
    document.addTitle(sheet.title());
    document.addCreator("Hankbook");
    document.setDocumentLanguage("en");
    document.setFooter(foot(sheet, fonts));
    document.open();
    document.add(new Paragraph(size * 2.4f, sheet.title(), fonts.title()));
    if (!sheet.subtitle().isEmpty()) {
      document.add(new Paragraph(size * 1.5f, sheet.subtitle(), fonts.quiet()));
    }
    SheetParts parts = new SheetParts(fonts, writer, PageSize.A4.getWidth() - 2 * MARGIN);
    sheet.parts().forEach(part -> parts.of(part).forEach(document::add));
    document.close();
    return new Printed(out, writer.getPageNumber() - 1);
  }

  private static HeaderFooter foot(Sheet sheet, SheetFonts fonts) {
    HeaderFooter foot = new HeaderFooter(new Phrase(sheet.foot(), fonts.quiet()), false);
    foot.setBorder(0);
    return foot;
  }
}
