package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.util.function.Predicate;
import javafx.embed.swing.SwingFXUtils;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TableView;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.TitledPane;
import javafx.scene.input.KeyCode;
import org.testfx.util.WaitForAsyncUtils;

/** The whole window, gone through from screen to screen with a picture taken here and there. */
abstract class PicturedTest extends ScreenTest {
  private static final int COLOURS = 40;
  private static final int LEAST_SIDE = 240;

  /** So much of what stands above is seen too, such as a heading. */
  private static final double ABOVE = 120;

  final GuidePictures pictures = new GuidePictures();

  /** Takes a picture of the whole window. */
  final void take(String name) {
    BufferedImage picture = seen();
    assertThat(picture.getWidth()).as("width of " + name).isEqualTo((int) width());
    keep(name, picture);
  }

  /** Takes a picture of what a query finds, and nothing around it. */
  final void take(String name, String query) {
    Bounds at = WaitForAsyncUtils.waitForAsyncFx(20_000, () -> {
      Node node = lookup(query).match(Node::isVisible).query();
      return node.localToScene(node.getLayoutBounds());
    });
    BufferedImage all = seen();
    int left = (int) Math.max(0, at.getMinX());
    int top = (int) Math.max(0, at.getMinY());
    keep(name, all.getSubimage(left, top, (int) Math.min(all.getWidth(), at.getMaxX()) - left, (int) Math.min(all.getHeight(), at.getMaxY()) - top));
  }

  private BufferedImage seen() {
    Scene scene = window(0).getScene();
    return WaitForAsyncUtils.waitForAsyncFx(20_000, () -> SwingFXUtils.fromFXImage(scene.snapshot(null), null));
  }

  private void keep(String name, BufferedImage picture) {
    assertThat(picture.getWidth()).as("width of " + name).isBetween(LEAST_SIDE, (int) width());
    assertThat(picture.getHeight()).as("height of " + name).isBetween(LEAST_SIDE, (int) width());
    assertThat(GuidePictures.colours(picture)).as("colours of " + name).isGreaterThan(COLOURS);
    WaitForAsyncUtils.waitForAsyncFx(20_000, () -> {
      pictures.keep(name, picture);
      return true;
    });
  }

  final void turnTo(KeyCode key) {
    press(KeyCode.CONTROL, key).release(key, KeyCode.CONTROL);
    settle();
  }

  final void press(String id) {
    interact(() -> lookup(byId(id)).queryAs(ButtonBase.class).fire());
    settle();
  }

  final void unfold(String id) {
    interact(() -> lookup(byId(id)).queryAs(TitledPane.class).setExpanded(true));
    settle();
  }

  final void type(String id, String text) {
    interact(() -> {
      Node found = lookup(byId(id)).query();
      TextInputControl field = found instanceof ComboBox<?> box ? box.getEditor() : (TextInputControl) found;
      field.requestFocus();
      field.setText(text);
      field.end();
    });
    settle();
  }

  final void choosePlan(String name) {
    turnTo(KeyCode.DIGIT2);
    interact(() -> {
      ListView<PlanRow> list = lookup("#plan-list").queryListView();
      list.getItems().stream().filter(row -> row.name().equals(name)).findFirst().ifPresent(list.getSelectionModel()::select);
    });
    settle();
  }

  final void chooseSkein(String code) {
    interact(() -> {
      TableView<SkeinRow> skeins = lookup("#skeins").queryTableView();
      skeins.getItems().stream().filter(row -> row.code().equals(code)).findFirst().ifPresent(skeins.getSelectionModel()::select);
    });
    settle();
  }

  /** Gives the second half of a split so much of the room. */
  final void leaveToTheFirst(String split, double part) {
    interact(() -> lookup(byId(split)).queryAs(SplitPane.class).setDividerPositions(part));
    settle();
  }

  /** Scrolls a page so that what a query finds stands at the top of it. */
  final void scrollTo(String query) {
    interact(() -> {
      Node node = lookup(query).match(Node::isVisible).query();
      Node above = node.getParent();
      while (!(above instanceof ScrollPane)) {
        above = above.getParent();
      }
      ScrollPane pane = (ScrollPane) above;
      double at = pane.getContent().sceneToLocal(node.localToScene(node.getLayoutBounds())).getMinY() - ABOVE;
      pane.setVvalue(at / (pane.getContent().getLayoutBounds().getHeight() - pane.getViewportBounds().getHeight()));
    });
    settle();
  }

  private static Predicate<Node> byId(String id) {
    return node -> id.equals(node.getId());
  }
}
