package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.gear.SleyChoice;
import hankbook.measure.Exact;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.VBox;
import org.apache.commons.numbers.fraction.BigFraction;

/** The ways to sley a sett, of which one is worked out. Filled anew only where the ways are others, so that the keyboard stays where it is. */
final class SleyChoices extends VBox {
  private static final BigFraction HUNDRED = BigFraction.of(100);

  private final SettModel sett;
  private List<SleyChoice> shown = List.of();
  private ToggleGroup group = new ToggleGroup();

  SleyChoices(SettModel sett) {
    this.sett = sett;
    getStyleClass().add("sley-choices");
  }

  void show(Optional<SettTrial> found) {
    List<SleyChoice> now = found.map(SettTrial::choices).orElse(List.of());
    if (!now.equals(shown)) {
      shown = now;
      group = new ToggleGroup();
      getChildren().setAll(now.stream().map(this::button).toList());
    }
    Optional<SleyChoice> chosen = found.flatMap(SettTrial::sleyed).map(sleyed -> sleyed.choice());
    group.getToggles().forEach(toggle -> toggle.setSelected(chosen.filter(choice -> alike(choice, toggle.getUserData())).isPresent()));
  }

  private static boolean alike(SleyChoice chosen, Object offered) {
    return offered instanceof SleyChoice choice && choice.reed().equals(chosen.reed()) && choice.sley().equals(chosen.sley());
  }

  private RadioButton button(SleyChoice choice) {
    RadioButton button = new RadioButton(words(choice));
    button.setUserData(choice);
    button.setWrapText(true);
    button.setToggleGroup(group);
    button.setOnAction(_ -> sett.choose(choice));
    return button;
  }

  private static String words(SleyChoice choice) {
    return Say.text("Reed {0} sleyed {1}: {2}, {3}", choice.reed().name(), choice.sley(), choice.sett(), off(choice));
  }

  private static String off(SleyChoice choice) {
    if (choice.off().signum() == 0) {
      return Say.text("just that");
    }
    String part = Exact.plain(choice.off().abs().multiply(HUNDRED), 1);
    return choice.off().signum() > 0 ? Say.text("{0} % closer", part) : Say.text("{0} % more open", part);
  }
}
