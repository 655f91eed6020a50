package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.studio.NotDone;
import hankbook.studio.SampleStudio;
import hankbook.studio.Studio;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.TableView;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** Every screen of the sample studio, in both themes and at four sizes; the pictures lie in target/looks to be looked at. */
class LooksTest extends ScreenTest {
  private static final Path PICTURES = Path.of("target", "looks");
  private static final List<Integer> SIZES = List.of(100, 125, 150, 200);

  private final Set<String> complaints = new LinkedHashSet<>();

  @Override
  void fill(Studio blank) throws NotDone {
    SampleStudio.fill(blank);
  }

  @Test
  void everyScreenIsWholeAndLegibleAndNamedInBothThemesAndAtEverySize() throws IOException {
    Files.createDirectories(PICTURES);
    Map<String, Runnable> screens = new LinkedHashMap<>();
    screens.put("shelf", () -> go("shelf"));
    screens.put("skein", () -> ((TableView<?>) lookup("#skeins").query()).getSelectionModel().select(0));
    screens.put("receive", () -> press("open-receive"));
    screens.put("plans", () -> go("plans"));
    screens.put("plan", () -> home().open("Quay towels"));
    for (String screen : List.of("journal", "ahead", "after", "costs", "looms", "settings")) {
      screens.put(screen, () -> go(screen));
    }
    screens.forEach((name, way) -> {
      interact(way);
      settle();
      for (Theme theme : Theme.values()) {
        interact(() -> theme.on(scene()));
        for (int size : SIZES) {
          interact(() -> home().enlargement().set(size));
          settle();
          look(name, theme, size);
        }
        interact(() -> home().enlargement().ownSize());
      }
    });
    Files.write(PICTURES.resolve("complaints.txt"), complaints);
    assertThat(complaints).isEmpty();
  }

  private void look(String name, Theme theme, int size) {
    String where = name + "-" + theme.name().toLowerCase(Locale.ROOT) + "-" + size;
    interact(() -> {
      scene().getRoot().applyCss();
      scene().getRoot().layout();
      Whole.faults(scene().getRoot()).forEach(fault -> complaints.add(where + ": " + fault));
      if (size == 100) {
        Contrast.tooFaint(scene().getRoot()).forEach(fault -> complaints.add(where + ": " + fault));
        Named.faults(scene().getRoot()).forEach(fault -> complaints.add(name + ": " + fault));
      }
      try {
        ImageIO.write(SwingFXUtils.fromFXImage(scene().snapshot(null), null), "png", PICTURES.resolve(where + ".png").toFile());
      } catch (IOException unwritten) {
        throw new UncheckedIOException(unwritten);
      }
    });
  }

  private Scene scene() {
    return home().node().getScene();
  }

  private void go(String screen) {
    press("go-" + screen);
  }

  private void press(String id) {
    ((ButtonBase) scene().getRoot().lookup("#" + id)).fire();
  }
}
