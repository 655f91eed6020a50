package hankbook.desktop;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;

/** Where the guide's pictures are put, and which ones its pages show. */
final class GuidePictures {
  private static final Path PAGES = Path.of("docs", "guide");
  private static final Pattern SHOWN = Pattern.compile("]\\(pictures/([a-z-]+)\\.png\\)");

  private final Path folder = Path.of(System.getProperty("guide.pictures", "target/guide/pictures"));
  private final Set<String> taken = new TreeSet<>();

  /** Keeps a picture under a name of its own. */
  void keep(String name, BufferedImage picture) throws IOException {
    if (!taken.add(name)) {
      throw new IllegalStateException("two pictures are called " + name);
    }
    Files.createDirectories(folder);
    ImageIO.write(picture, "png", folder.resolve(name + ".png").toFile());
  }

  /** The names of those taken so far. */
  Set<String> taken() {
    return taken;
  }

  /** The names of those that the pages show. */
  static Set<String> shown() throws IOException {
    try (Stream<Path> pages = Files.list(PAGES)) {
      Stream<String> texts = pages.filter(page -> page.toString().endsWith(".md")).map(GuidePictures::text);
      return texts.flatMap(text -> SHOWN.matcher(text).results().map(found -> found.group(1))).collect(Collectors.toCollection(TreeSet::new));
    }
  }

  /** How many colours a picture has: a blank one has one or two. */
  static long colours(BufferedImage picture) {
    return Arrays.stream(picture.getRGB(0, 0, picture.getWidth(), picture.getHeight(), null, 0, picture.getWidth())).distinct().count();
  }

  private static String text(Path page) {
    try {
      return Files.readString(page);
    } catch (IOException unread) {
      throw new UncheckedIOException(unread);
    }
  }
}
