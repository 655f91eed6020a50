package hankbook.desktop;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeoutException;
import javafx.application.Platform;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.testfx.framework.junit5.ApplicationTest;
import org.testfx.util.WaitForAsyncUtils;

class WindowTest extends ApplicationTest {
  final MemoryDesk desk = new MemoryDesk();

  @Override
  public void start(Stage stage) {
    int width = Integer.getInteger("snap.width", 1000);
    Home home = new Home(desk, new Work(Runnable::run, Platform::runLater), new Status(), new Label("Plans"), () -> {}, "sample.mv.db");
    Scene scene = new Scene(home.node(), width, 760);
    Theme.valueOf(System.getProperty("snap.theme", "LIGHT")).on(scene);
    stage.setScene(scene);
    stage.show();
    home.begin(scene, () -> Optional.of(Path.of("/tmp/bad.csv")));
  }

  void snap(String name) {
    WaitForAsyncUtils.waitForFxEvents();
    WaitForAsyncUtils.waitForAsyncFx(9000, () -> {
      Scene scene = listWindows().getFirst().getScene();
      try {
        ImageIO.write(SwingFXUtils.fromFXImage(scene.snapshot(null), null), "png", new File("/tmp/snap-" + System.getProperty("snap.width", "1000") + System.getProperty("snap.theme", "") + "-" + name + ".png"));
      } catch (IOException e) {
        throw new RuntimeException(e);
      }
    });
    WaitForAsyncUtils.waitForFxEvents();
  }

  @Test
  void tour() throws TimeoutException {
    snap("welcome");
    clickOn("#begin-file");
    snap("faults");
    clickOn("#begin-sample");
    snap("shelf");
    clickOn("#search-shelf").write("woad S004"); WaitForAsyncUtils.waitForFxEvents(); clickOn("S004");
    snap("skein");
    clickOn("#measure-again");
    clickOn("#recount-length").write("1300 m");
    snap("recount");
    clickOn("#recount");
    snap("recounted");
    clickOn("#open-receive");
    clickOn("#receive-yarn").write("Tussock");
    clickOn("#receive-colour").write("Peat");
    clickOn("#receive-length").write("1,5 m");
    snap("receive");
    clickOn("#go-journal");
    snap("j0"); clickOn("61");
    snap("journal");
    clickOn("#reason").write("wrong cone"); clickOn("#take-back"); snap("taken-back"); clickOn("#other-theme"); clickOn("#earlier"); snap("dark-journal"); clickOn("#go-shelf"); clickOn("#other-theme"); clickOn("#go-plans");
    snap("plans");
  }
}
