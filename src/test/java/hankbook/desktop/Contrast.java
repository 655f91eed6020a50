package hankbook.desktop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.layout.Background;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;

/** How far texts stand out from what they stand on, after WCAG 2.2. */
final class Contrast {
  private static final double LEAST = 4.5;

  private Contrast() {}

  /** The texts below a node that can be used, are to be seen, and stand out too little. */
  static List<String> tooFaint(Node node) {
    List<String> faint = new ArrayList<>();
    if (!node.isVisible() || node.isDisabled()) {
      return faint;
    }
    if (node instanceof Labeled text && text.getTextFill() instanceof Color ink && text.getText() != null && !text.getText().isBlank()) {
      ground(text).filter(paper -> ratio(ink, paper) < LEAST).ifPresent(paper -> faint.add(text.getText() + ": " + ink + " on " + paper));
    }
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> faint.addAll(tooFaint(child)));
    }
    return faint;
  }

  /** The nearest colour below it that nothing shines through. */
  private static Optional<Color> ground(Node node) {
    for (Node at = node; at != null; at = at.getParent()) {
      Optional<Color> colour = at instanceof Region region ? top(region.getBackground()) : Optional.empty();
      if (colour.isPresent()) {
        return colour;
      }
    }
    return Optional.empty();
  }

  private static Optional<Color> top(Background background) {
    if (background == null) {
      return Optional.empty();
    }
    return background.getFills().reversed().stream()
        .map(BackgroundFill::getFill)
        .filter(Color.class::isInstance)
        .map(Color.class::cast)
        .filter(Color::isOpaque)
        .findFirst();
  }

  static double ratio(Color one, Color other) {
    double lighter = Math.max(luminance(one), luminance(other));
    double darker = Math.min(luminance(one), luminance(other));
    return (lighter + 0.05) / (darker + 0.05);
  }

  private static double luminance(Color colour) {
    return 0.2126 * linear(colour.getRed()) + 0.7152 * linear(colour.getGreen()) + 0.0722 * linear(colour.getBlue());
  }

  private static double linear(double channel) {
    return channel <= 0.04045 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4);
  }
}
