package hankbook.desktop.why;

import hankbook.desktop.say.Say;
import hankbook.plan.Because;
import hankbook.plan.BecauseText;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.VBox;

/** Room below some numbers, in which the one that was asked says how it was reckoned. */
public final class WhyBelow extends VBox {
  private final String place;
  private final Opened opened;
  private final BecauseText.Written written;
  private final List<ToggleButton> figures = new ArrayList<>();

  /**
   * Room for the explanations of some numbers.
   *
   * @param place its name on its page
   */
  public WhyBelow(String place, Opened opened, BecauseText.Written written) {
    this.place = place;
    this.opened = opened;
    this.written = written;
    getStyleClass().add("why-below");
    managedProperty().bind(visibleProperty());
    setVisible(false);
  }

  /**
   * A number that can be asked.
   *
   * @param id its name at this place
   * @param caption what it is, for who does not see it
   * @param number as it is written
   */
  public ToggleButton figure(String id, String caption, String number, Supplier<Because> why) {
    ToggleButton figure = new ToggleButton(number);
    figure.setId("why-" + place + "-" + id);
    figure.getStyleClass().setAll("figure");
    figure.setMinWidth(USE_PREF_SIZE);
    figure.setAccessibleText(caption + " " + number);
    figure.setAccessibleHelp(Say.text("Shows below how it is reckoned."));
    figure.setSelected(opened.is(place, id));
    figures.add(figure);
    figure.selectedProperty().subscribe((_, shown) -> {
      if (shown) {
        opened.open(place, id);
        figures.stream().filter(other -> !other.equals(figure)).forEach(other -> other.setSelected(false));
        show(why.get(), figure);
        InView.bring(this);
      } else {
        opened.close(place, id);
        hide();
      }
    });
    if (figure.isSelected()) {
      show(why.get(), figure);
    }
    return figure;
  }

  private void hide() {
    getChildren().clear();
    setVisible(false);
  }

  private void show(Because why, ToggleButton figure) {
    getChildren().setAll(new WhyTree(why, written, () -> {
      figure.setSelected(false);
      figure.requestFocus();
    }));
    setVisible(true);
  }
}
