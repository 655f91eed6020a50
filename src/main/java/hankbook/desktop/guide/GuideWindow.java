package hankbook.desktop.guide;

import hankbook.desktop.say.Say;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.stage.Stage;

/** The guide's own window, so that one can read while one works. It is made when it is first asked for, and there is never a second one. */
public final class GuideWindow {
  private static final double WIDTH = 1080;
  private static final double HEIGHT = 800;

  private final Consumer<Scene> look;
  private final Consumer<String> elsewhere;
  private Optional<Open> open = Optional.empty();

  private record Open(Stage stage, GuideView view) {}

  /**
   * @param look lets a scene look as the main window does, from then on
   * @param elsewhere is given the address of a link that leads out of the guide
   */
  public GuideWindow(Consumer<Scene> look, Consumer<String> elsewhere) {
    this.look = look;
    this.elsewhere = elsewhere;
  }

  /** Shows a page by its file, in front of whatever else there is. */
  public void show(String file) {
    Open shown = open.orElseGet(this::made);
    open = Optional.of(shown);
    shown.stage().show();
    shown.stage().toFront();
    shown.view().turnTo(file);
  }

  /** Closes it, and tells the file of the page it was open at. */
  public Optional<String> close() {
    Optional<String> page = open.filter(shown -> shown.stage().isShowing()).map(shown -> shown.view().page());
    open.ifPresent(shown -> shown.stage().close());
    return page;
  }

  private Open made() {
    GuideView view = new GuideView(Guide.read(), elsewhere);
    Scene scene = new Scene(view, WIDTH, HEIGHT);
    Stage stage = new Stage();
    look.accept(scene);
    scene.getAccelerators().put(new KeyCodeCombination(KeyCode.ESCAPE), stage::hide);
    stage.setTitle(Say.text("Guide to Hankbook"));
    stage.setScene(scene);
    return new Open(stage, view);
  }
}
