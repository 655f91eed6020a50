package hankbook.desktop.colour;

import hankbook.measure.Unreadable;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Iterator;
import javax.imageio.IIOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.FileImageInputStream;
import javax.imageio.stream.ImageInputStream;

/** Reads photographs from files. Of a large one only every so manyth point is read, so that it takes little room and time. */
final class PhotographFile {
  /** About what a screen shows. */
  static final int LONGEST_SIDE = 1600;

  private PhotographFile() {}

  /**
   * Reads a picture, in sRGB whatever colours it is written in; what can be seen through is white.
   *
   * @throws Unreadable if the file is no picture of a sort that can be read
   * @throws IOException if the file cannot be read
   */
  static Photograph read(Path file) throws IOException {
    try (ImageInputStream input = new FileImageInputStream(file.toFile())) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(input);
      if (!readers.hasNext()) {
        throw noPicture(file);
      }
      ImageReader reader = readers.next();
      try {
        reader.setInput(input, true, true);
        return inSrgb(sampled(reader));
      } catch (IIOException | IllegalArgumentException | IndexOutOfBoundsException broken) {
        throw noPicture(file);
      } finally {
        reader.dispose();
      }
    }
  }

  private static Unreadable noPicture(Path file) {
    return new Unreadable(String.valueOf(file.getFileName()), "a photograph that is a whole PNG or JPEG picture");
  }

  private static BufferedImage sampled(ImageReader reader) throws IOException {
    int step = Math.ceilDiv(Math.max(reader.getWidth(0), reader.getHeight(0)), LONGEST_SIDE);
    ImageReadParam every = reader.getDefaultReadParam();
    every.setSourceSubsampling(step, step, 0, 0);
    return reader.read(0, every);
  }

  /** Drawing turns the picture's own colours into those of the screen. */
  private static Photograph inSrgb(BufferedImage read) {
    BufferedImage shown = new BufferedImage(read.getWidth(), read.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D brush = shown.createGraphics();
    brush.drawImage(read, 0, 0, Color.WHITE, null);
    brush.dispose();
    return new Photograph(shown.getWidth(), shown.getRGB(0, 0, shown.getWidth(), shown.getHeight(), null, 0, shown.getWidth()));
  }
}
