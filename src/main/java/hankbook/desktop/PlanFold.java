package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.desktop.say.Say;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.Node;
import javafx.scene.control.Button;

/** A small button that shows and hides what few plans need of a group. What is filled when the plan is opened, or at fault at any time, is shown. */
final class PlanFold extends Button {
  private final BooleanProperty open = new SimpleBooleanProperty();
  private final List<BooleanSupplier> filled = new ArrayList<>();
  private final List<BooleanSupplier> atFault = new ArrayList<>();

  /**
   * @param key by which it is found and remembered
   * @param name of the group, as it goes on after "More of"
   * @param remembered the keys of those the weaver has opened; kept up to date
   */
  PlanFold(String key, String name, Set<String> remembered) {
    setId("more-" + key);
    getStyleClass().addAll(Styles.FLAT, Styles.SMALL, "plan-fold");
    open.set(remembered.contains(key));
    textProperty().bind(open.map(is -> is ? Say.text("Less") : Say.text("More")));
    accessibleTextProperty().bind(open.map(is -> is ? Say.text("Less of {0}", name) : Say.text("More of {0}", name)));
    setOnAction(_ -> {
      open.set(!open.get());
      if (open.get()) {
        remembered.add(key);
      } else {
        remembered.remove(key);
      }
    });
  }

  /** Hides something while it is closed. */
  void hold(Node node) {
    Labels.showOnly(node, open);
  }

  /** Hides a field while it is closed, and opens where that is filled or at fault. */
  void take(PlanFieldBox box) {
    hold(box);
    watch(box);
  }

  /** Opens where this field is filled or at fault. */
  void watch(PlanFieldBox box) {
    filled.add(box::isFilled);
    atFault.add(box::isAtFault);
  }

  /** Opens where this says that something is wrong. */
  void watch(Node message) {
    atFault.add(message::isVisible);
  }

  void openWhereFilled() {
    open.set(open.get() || filled.stream().anyMatch(BooleanSupplier::getAsBoolean));
  }

  void openWhereAtFault() {
    open.set(open.get() || atFault.stream().anyMatch(BooleanSupplier::getAsBoolean));
  }
}
