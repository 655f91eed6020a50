package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.framework.junit5.ApplicationTest;

class StageMemoryTest extends ApplicationTest {
  @TempDir
  Path dir;

  private final Remembered remembered = Remembered.nothing();

  @Test
  void aWindowStandsOnTheNextStartWhereItWasClosed() {
    interact(() -> {
      Stage first = stage();
      new StageMemory(first, remembered).restore();
      first.show();
      new StageMemory(first, remembered).watch();
      first.setX(31);
      first.setY(42);
      first.setWidth(510);
      first.setHeight(320);
      first.hide();
    });
    assertThat(remembered.get("window", WindowPlace.class)).contains(new WindowPlace(31, 42, 510, 320, false));
    assertThat(restored()).isEqualTo(new Rectangle2D(31, 42, 510, 320));
  }

  @Test
  void aWindowOnAScreenThatIsGoneIsBroughtBack() {
    remembered.put("window", new WindowPlace(-9000, 20, 510, 320, false));
    Rectangle2D screen = javafx.stage.Screen.getPrimary().getVisualBounds();
    assertThat(screen.contains(restored())).isTrue();
  }

  @Test
  void whatIsNotWrittenYetIsWrittenOnClosing() {
    RememberedFile file = new RememberedFile(dir.resolve("window.json"));
    interact(() -> {
      RememberedKeeping keeping = new RememberedKeeping(remembered, file);
      Theme.DARK.remember(remembered);
      closed(keeping);
    });
    assertThat(Theme.in(file.read())).isEqualTo(Theme.DARK);
  }

  @Test
  void whereNothingChangedNothingIsWritten() {
    RememberedFile file = new RememberedFile(dir.resolve("window.json"));
    interact(() -> closed(new RememberedKeeping(remembered, file)));
    assertThat(Files.exists(file.file())).isFalse();
  }

  private static void closed(RememberedKeeping keeping) {
    try {
      keeping.close();
    } catch (InterruptedException interrupted) {
      throw new IllegalStateException(interrupted);
    }
  }

  private Rectangle2D restored() {
    Rectangle2D[] found = new Rectangle2D[1];
    interact(() -> {
      Stage next = stage();
      new StageMemory(next, remembered).restore();
      next.show();
      found[0] = new Rectangle2D(next.getX(), next.getY(), next.getWidth(), next.getHeight());
      next.hide();
    });
    return found[0];
  }

  private static Stage stage() {
    Stage stage = new Stage();
    stage.setScene(new Scene(new StackPane(), 300, 200));
    return stage;
  }
}
