package hankbook.desktop.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.desktop.Work;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntBinaryOperator;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ColourPickingTest {
  private static final int BLUE = 0x2f5d8a;
  private static final int WHITE = 0xffffff;

  @TempDir private Path folder;
  private final List<String> taken = new ArrayList<>();
  private final ColourPicking picking = new ColourPicking(new Work(Runnable::run, Runnable::run), taken::add);

  @Test
  void a_colour_is_taken_as_it_is_typed() {
    picking.typedProperty().set("47, 93, 138");
    picking.take();
    assertThat(taken).containsExactly("#2f5d8a");
  }

  @Test
  void what_is_no_colour_is_said_and_not_taken() {
    picking.typedProperty().set("woad");
    picking.take();
    assertThat(picking.messageProperty().get()).isEqualTo("Wanted: a colour such as #2f5d8a or 47, 93, 138.");
    picking.typedProperty().set("");
    picking.take();
    assertThat(picking.messageProperty().get()).isEmpty();
    assertThat(taken).isEmpty();
  }

  @Test
  void a_photograph_opens_with_its_middle_pointed_at() throws IOException {
    picking.open(picture("left and right.png", 100, 40, (x, _) -> x < 60 ? BLUE : WHITE));
    assertThat(picking.spotProperty().get()).isEqualTo(new Spot(50, 20));
    assertThat(picking.hexProperty().get()).isEqualTo("#2f5d8a");
  }

  @Test
  void the_colour_is_the_mean_of_the_light_of_the_patch() throws IOException {
    picking.open(picture("stripes.png", 90, 90, (x, y) -> (x + y) % 2 == 0 ? 0x000000 : WHITE));
    // 41 of the 81 points are black where the point itself is: 40/81 of the light of white is 1.055 x 0.4938^(1/2.4) - 0.055 = 0.7313, x 255 = 186.5
    picking.point(new Spot(44, 44));
    assertThat(picking.hexProperty().get()).isEqualTo("#bababa");
  }

  @Test
  void the_crosshair_moves_by_steps_and_stays_in_the_picture() throws IOException {
    picking.open(picture("half.png", 100, 40, (x, _) -> x < 50 ? BLUE : WHITE));
    picking.move(20, -3);
    assertThat(picking.spotProperty().get()).isEqualTo(new Spot(70, 17));
    assertThat(picking.hexProperty().get()).isEqualTo("#ffffff");
    picking.move(-1000, -1000);
    assertThat(picking.spotProperty().get()).isEqualTo(new Spot(0, 0));
    assertThat(picking.hexProperty().get()).isEqualTo("#2f5d8a");
    picking.move(1000, 1000);
    assertThat(picking.spotProperty().get()).isEqualTo(new Spot(99, 39));
  }

  @Test
  void a_jpeg_is_read_as_well() throws IOException {
    picking.open(picture("wool.jpg", 64, 64, (_, _) -> 0x808080));
    assertThat(picking.hexProperty().get()).isEqualTo("#808080");
  }

  @Test
  void a_large_photograph_is_read_smaller() throws IOException {
    picking.open(picture("large.jpg", 5472, 3648, (x, _) -> x < 2000 ? 0x000000 : WHITE));
    Photograph read = picking.photographProperty().get().orElseThrow();
    assertThat(read.width()).isLessThanOrEqualTo(PhotographFile.LONGEST_SIDE).isGreaterThan(PhotographFile.LONGEST_SIDE / 2);
    assertThat((double) read.width() / read.height()).isBetween(1.49, 1.51);
  }

  @Test
  void what_is_no_picture_is_said_and_the_photograph_before_stays() throws IOException {
    picking.open(picture("first.png", 20, 20, (_, _) -> BLUE));
    picking.open(Files.writeString(folder.resolve("notes.txt"), "two skeins of blue"));
    assertThat(picking.troubleProperty().get()).isEqualTo("Wanted: a photograph that is a whole PNG or JPEG picture.");
    assertThat(picking.photographProperty().get()).isPresent();
    assertThat(picking.readingProperty().get()).isFalse();
    picking.open(folder.resolve("gone.jpg"));
    assertThat(picking.troubleProperty().get()).isEqualTo("gone.jpg cannot be read; choose another photograph.");
    picking.open(picture("second.png", 20, 20, (_, _) -> WHITE));
    assertThat(picking.troubleProperty().get()).isEmpty();
    assertThat(picking.hexProperty().get()).isEqualTo("#ffffff");
  }

  @Test
  void a_file_that_was_cut_short_is_no_picture() throws IOException {
    byte[] whole = Files.readAllBytes(picture("whole.png", 300, 300, (x, y) -> x * y * 7919));
    picking.open(Files.write(folder.resolve("cut.png"), Arrays.copyOf(whole, whole.length / 3)));
    assertThat(picking.photographProperty().get()).isEmpty();
    assertThat(picking.troubleProperty().get()).startsWith("Wanted: a photograph");
  }

  @Test
  void of_two_photographs_asked_for_the_later_is_shown() throws IOException {
    List<Runnable> away = new ArrayList<>();
    ColourPicking slow = new ColourPicking(new Work(away::add, Runnable::run), taken::add);
    slow.open(picture("one.png", 20, 20, (_, _) -> BLUE));
    slow.open(picture("two.png", 20, 20, (_, _) -> WHITE));
    assertThat(slow.readingProperty().get()).isTrue();
    away.reversed().forEach(Runnable::run);
    assertThat(slow.hexProperty().get()).isEqualTo("#ffffff");
    assertThat(slow.readingProperty().get()).isFalse();
  }

  @Test
  void points_are_whole_lines() {
    assertThatThrownBy(() -> new Photograph(3, new int[4])).isInstanceOf(IllegalArgumentException.class);
  }

  private Path picture(String name, int width, int height, IntBinaryOperator colour) throws IOException {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        image.setRGB(x, y, colour.applyAsInt(x, y));
      }
    }
    Path file = folder.resolve(name);
    ImageIO.write(image, name.substring(name.lastIndexOf('.') + 1), file.toFile());
    return file;
  }
}
