package hankbook.desktop;

import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.layout.StackPane;

/** Lets a window beside the main one look as that does: in its theme and at its size, whatever they change to. */
final class SameLook {
  private final Scene of;
  private final Scene beside;
  private final InvalidationListener follows = _ -> follow();

  private SameLook(Scene of, Scene beside) {
    this.of = of;
    this.beside = beside;
  }

  /**
   * @param of the scene of the main window
   * @param beside what is to look like it; what stands in it then stands in something that enlarges it
   */
  static void put(Scene of, Scene beside, Enlargement enlargement) {
    Parent content = beside.getRoot();
    beside.setRoot(new StackPane());
    beside.setRoot(new Enlarged(content, enlargement));
    SameLook look = new SameLook(of, beside);
    of.getStylesheets().addListener(new WeakInvalidationListener(look.follows));
    beside.getProperties().put(SameLook.class, look);
    look.follow();
  }

  private void follow() {
    beside.getStylesheets().setAll(of.getStylesheets());
  }
}
