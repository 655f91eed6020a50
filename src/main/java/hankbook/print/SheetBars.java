package hankbook.print;

import java.math.BigDecimal;
import java.util.stream.Stream;
import org.openpdf.text.Element;
import org.openpdf.text.Image;
import org.openpdf.text.pdf.PdfContentByte;
import org.openpdf.text.pdf.PdfTemplate;

/** Draws bars on one scale: names at the left, figures at the right. */
final class SheetBars {
  private static final float NAMES = 0.30f;
  private static final float FIGURES = 0.16f;

  private final SheetFonts fonts;
  private final float width;
  private final float line;

  SheetBars(SheetFonts fonts, float width) {
    this.fonts = fonts;
    this.width = width;
    this.line = fonts.size() * 1.7f;
  }

  /** The picture, as wide as the page. */
  Element of(Sheet.Bars bars, PdfContentByte page) {
    float height = line * bars.bars().size();
    PdfTemplate picture = page.createTemplate(width, height);
    double least = ends(bars).mapToDouble(BigDecimal::doubleValue).min().orElse(0);
    double most = ends(bars).mapToDouble(BigDecimal::doubleValue).max().orElse(1);
    double scale = most > least ? width * (1 - NAMES - FIGURES) / (most - least) : 0;
    float y = height;
    for (Sheet.Bar bar : bars.bars()) {
      y -= line;
      draw(picture, bar, y, least, scale);
    }
    return Image.getInstance(picture);
  }

  private static Stream<BigDecimal> ends(Sheet.Bars bars) {
    return bars.bars().stream().flatMap(bar -> Stream.of(bar.from(), bar.to()));
  }

  private void draw(PdfTemplate picture, Sheet.Bar bar, float y, double least, double scale) {
    double from = Math.min(bar.from().doubleValue(), bar.to().doubleValue());
    double to = Math.max(bar.from().doubleValue(), bar.to().doubleValue());
    float x = (float) (width * NAMES + (from - least) * scale);
    float wide = Math.max(0.6f, (float) ((to - from) * scale));
    picture.setColorFill(bar.whole() ? SheetColours.ACCENT : SheetColours.PART);
    picture.rectangle(x, y + line * 0.18f, wide, line * 0.62f);
    picture.fill();
    write(picture, bar.name(), bar.whole(), Element.ALIGN_LEFT, 0, y);
    write(picture, bar.words(), bar.whole(), Element.ALIGN_RIGHT, width, y);
  }

  private void write(PdfTemplate picture, String words, boolean strong, int align, float x, float y) {
    picture.beginText();
    picture.setFontAndSize((strong ? fonts.strong() : fonts.text()).getBaseFont(), fonts.size());
    picture.setColorFill(SheetColours.INK);
    picture.showTextAligned(align, words, x, y + line * 0.32f, 0);
    picture.endText();
  }
}
