package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.gear.Loom;
import hankbook.gear.Reed;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The looms and the reeds of the studio. */
public final class GearView extends BorderPane {
  private final GearPart<Loom> looms;

  GearView(GearModel<Loom> looms, GearModel<Reed> reeds) {
    this.looms = new GearPart<>(Say.text("Looms"), Say.text("No loom yet. A plan that names its loom is told where it is too wide, has too few shafts or too little waste."), looms);
    GearPart<Reed> below = new GearPart<>(Say.text("Reeds"), Say.text("No reed yet. With reeds here, a plan is told how its sett is sleyed in one of them."), reeds);
    getStyleClass().add("screen");
    VBox top = new VBox(Labels.title(Say.text("Looms and reeds")), Labels.quiet(Say.text("A plan is held against the loom and the reed that it names.")));
    top.getStyleClass().add("gear-top");
    VBox.setVgrow(this.looms, Priority.ALWAYS);
    VBox.setVgrow(below, Priority.ALWAYS);
    VBox both = new VBox(this.looms, below);
    both.getStyleClass().add("gear");
    setTop(top);
    setCenter(both);
  }

  /** Puts the keyboard into the list of looms. */
  public void search() {
    looms.search();
  }
}
