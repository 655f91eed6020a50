package hankbook.desktop;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Locale;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.layout.Region;
import javafx.scene.transform.Scale;

/**
 * Everything in the window, as large as the user likes it: laid out in a window that is so many times smaller, and drawn so many times larger. So texts, paddings, table
 * rows and drawn things all keep their proportion, whoever set their size. Lists and tips that open in windows of their own get letters of the same size.
 */
final class Enlarged extends Region {
  /** The size of letters at 100, as the style sheet has it. */
  private static final double LETTERS = 13;

  private static final String OWN_SHEET = "data:text/css;base64,";

  private final Parent content;
  private final Enlargement enlargement;
  private final Scale scale = new Scale(1, 1, 0, 0);

  Enlarged(Parent content, Enlargement enlargement) {
    this.content = content;
    this.enlargement = enlargement;
    getStyleClass().add("enlarged");
    content.getTransforms().add(scale);
    getChildren().add(content);
    enlargement.percentProperty().subscribe(_ -> follow());
    sceneProperty().subscribe(_ -> follow());
  }

  private void follow() {
    scale.setX(enlargement.times());
    scale.setY(enlargement.times());
    requestLayout();
    Scene scene = getScene();
    if (scene != null) {
      scene.getStylesheets().removeIf(Enlarged::isOwn);
      scene.getStylesheets().add(letters(enlargement.times()));
    }
  }

  /** Whether a style sheet is one that says how large letters are in windows of their own. */
  static boolean isOwn(String sheet) {
    return sheet.startsWith(OWN_SHEET);
  }

  private static String letters(double times) {
    String rule = String.format(Locale.ROOT, ".root.popup { -fx-font-size: %.2fpx; }", LETTERS * times);
    return OWN_SHEET + Base64.getEncoder().encodeToString(rule.getBytes(StandardCharsets.UTF_8));
  }

  @Override
  protected void layoutChildren() {
    content.resizeRelocate(0, 0, getWidth() / enlargement.times(), getHeight() / enlargement.times());
  }

  @Override
  protected double computePrefWidth(double height) {
    return content.prefWidth(-1) * enlargement.times();
  }

  @Override
  protected double computePrefHeight(double width) {
    return content.prefHeight(-1) * enlargement.times();
  }

  @Override
  protected double computeMinWidth(double height) {
    return 0;
  }

  @Override
  protected double computeMinHeight(double width) {
    return 0;
  }
}
