package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.gear.Sley;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;

/** The first dents of a reed with the ends in them: a wire between two dents, a thread for each end. */
final class DentsFigure extends HBox {
  private static final int MOST_DENTS = 20;

  DentsFigure(Sley sley, int dents) {
    getStyleClass().add("dents");
    setAlignment(Pos.CENTER_LEFT);
    List<Integer> repeat = sley.ends();
    for (int i = 0; i < Math.min(MOST_DENTS, dents); i++) {
      getChildren().addAll(region("reed-wire"), dent(repeat.get(i % repeat.size())));
    }
    getChildren().add(region("reed-wire"));
    setAccessibleText(repeat.size() > 1 ? Say.text("Ends in the dents: {0}, again and again", sley) : Say.text("Ends in the dents: {0} in each", sley));
  }

  private static HBox dent(int ends) {
    HBox dent = new HBox();
    dent.getStyleClass().add("dent");
    dent.setAlignment(Pos.CENTER);
    for (int i = 0; i < ends; i++) {
      dent.getChildren().add(region("dent-end"));
    }
    return dent;
  }

  private static Region region(String styleClass) {
    Region region = new Region();
    region.getStyleClass().add(styleClass);
    return region;
  }
}
