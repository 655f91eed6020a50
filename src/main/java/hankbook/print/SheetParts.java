package hankbook.print;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import org.openpdf.text.Element;
import org.openpdf.text.Paragraph;
import org.openpdf.text.Phrase;
import org.openpdf.text.Rectangle;
import org.openpdf.text.pdf.PdfContentByte;
import org.openpdf.text.pdf.PdfPCell;
import org.openpdf.text.pdf.PdfPTable;
import org.openpdf.text.pdf.PdfWriter;

/** Sets the parts of a sheet. */
final class SheetParts {
  private static final int FACTS_ABREAST = 2;

  private final SheetFonts fonts;
  private final PdfWriter writer;
  private final float width;

  SheetParts(SheetFonts fonts, PdfWriter writer, float width) {
    this.fonts = fonts;
    this.writer = writer;
    this.width = width;
  }

  /** What is added to the page for a part; nothing for an empty one. */
  List<Element> of(Sheet.Part part) {
    List<Element> below = switch (part) {
      case Sheet.Facts facts -> facts.facts().isEmpty() ? List.of() : List.of(facts(facts));
      case Sheet.Table table -> table.rows().isEmpty() ? List.of() : List.of(table(table));
      case Sheet.Bars bars -> bars.bars().isEmpty() ? List.of() : List.of(new SheetBars(fonts, width).of(bars, writer.getDirectContent()));
      case Sheet.Words words -> words.words().isBlank() ? List.of() : List.of(new Paragraph(fonts.size() * 1.4f, words.words(), fonts.text()));
    };
    List<Element> all = new ArrayList<>();
    if (!below.isEmpty()) {
      all.add(heading(part.heading()));
      all.addAll(below);
    }
    return all;
  }

  private Paragraph heading(String words) {
    Paragraph heading = new Paragraph(fonts.size() * 1.6f, words, fonts.heading());
    heading.setSpacingBefore(fonts.size() * 0.8f);
    heading.setSpacingAfter(fonts.size() * 0.4f);
    heading.setKeepTogether(true);
    return heading;
  }

  private PdfPTable facts(Sheet.Facts facts) {
    PdfPTable table = new PdfPTable(new float[] {3, 5, 3, 5});
    table.setWidthPercentage(100);
    facts.facts().forEach(fact -> {
      table.addCell(cell(new Phrase(fact.name(), fonts.quiet()), false));
      table.addCell(cell(new Phrase(fact.words(), fonts.text()), false));
    });
    for (int filled = facts.facts().size(); filled % FACTS_ABREAST != 0; filled++) {
      table.addCell(cell(new Phrase("", fonts.text()), false));
      table.addCell(cell(new Phrase("", fonts.text()), false));
    }
    return table;
  }

  private PdfPTable table(Sheet.Table of) {
    float[] shares = new float[of.columns().size()];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = of.columns().get(i).share();
    }
    PdfPTable table = new PdfPTable(shares);
    table.setWidthPercentage(100);
    table.setHeaderRows(1);
    of.columns().forEach(column -> table.addCell(lined(cell(new Phrase(column.title(), fonts.quiet()), column.figures()), Rectangle.BOTTOM)));
    for (Sheet.Row row : of.rows()) {
      for (int i = 0; i < shares.length; i++) {
        table.addCell(cell(row.cells().get(i), row, of.columns().get(i)));
      }
    }
    return table;
  }

  private PdfPCell cell(Sheet.Cell of, Sheet.Row row, Sheet.Column column) {
    PdfPCell cell = cell(new Phrase(of.words(), row.sum() ? fonts.strong() : fonts.text()), column.figures());
    of.hex().ifPresent(hex -> {
      cell.setPaddingLeft(fonts.size() * 1.4f);
      cell.setCellEvent((_, place, canvases) -> patch(canvases[PdfPTable.BACKGROUNDCANVAS], place, Color.decode(hex)));
    });
    return row.sum() ? lined(cell, Rectangle.TOP) : cell;
  }

  /** The patch of colour has a line around it, so that white yarn is seen on white paper. */
  private void patch(PdfContentByte canvas, Rectangle place, Color colour) {
    float side = fonts.size() * 0.9f;
    canvas.setColorFill(colour);
    canvas.setColorStroke(SheetColours.QUIET);
    canvas.setLineWidth(0.4f);
    canvas.rectangle(place.getLeft() + 0.5f, place.getTop() - fonts.size() * 0.35f - side, side, side);
    canvas.fillStroke();
  }

  private PdfPCell cell(Phrase words, boolean figures) {
    PdfPCell cell = new PdfPCell(words);
    cell.setBorder(Rectangle.NO_BORDER);
    cell.setPadding(fonts.size() * 0.18f);
    cell.setPaddingLeft(0);
    cell.setPaddingRight(fonts.size() * 0.8f);
    cell.setHorizontalAlignment(figures ? Element.ALIGN_RIGHT : Element.ALIGN_LEFT);
    return cell;
  }

  private static PdfPCell lined(PdfPCell cell, int side) {
    cell.setBorder(side);
    cell.setBorderColor(SheetColours.LINE);
    cell.setBorderWidth(0.6f);
    return cell;
  }
}
