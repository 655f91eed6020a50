package hankbook.print;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.openpdf.text.Font;
import org.openpdf.text.pdf.BaseFont;

/** The letters of a sheet. They travel in the file, so that a yarn's name is printed as it is written, in whichever European language. */
final class SheetFonts {
  private static final BaseFont PLAIN = load("LiberationSans-Regular.ttf");
  private static final BaseFont BOLD = load("LiberationSans-Bold.ttf");

  private final float size;

  /**
   * @param size of the running text, in points
   */
  SheetFonts(float size) {
    this.size = size;
  }

  float size() {
    return size;
  }

  Font text() {
    return new Font(PLAIN, size, Font.NORMAL, SheetColours.INK);
  }

  Font strong() {
    return new Font(BOLD, size, Font.NORMAL, SheetColours.INK);
  }

  Font quiet() {
    return new Font(PLAIN, size, Font.NORMAL, SheetColours.QUIET);
  }

  Font heading() {
    return new Font(BOLD, size + 1.5f, Font.NORMAL, SheetColours.ACCENT);
  }

  Font title() {
    return new Font(BOLD, size * 2, Font.NORMAL, SheetColours.INK);
  }

  private static BaseFont load(String file) {
    try (InputStream in = BaseFont.class.getResourceAsStream("/liberation/" + file)) {
      if (in == null) {
        throw new IllegalStateException("the letters of " + file + " are missing from the program");
      }
      return BaseFont.createFont(file, BaseFont.IDENTITY_H, BaseFont.EMBEDDED, BaseFont.CACHED, in.readAllBytes(), null);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
