package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.plan.Plan;
import hankbook.plan.WorkKind;
import hankbook.reckon.Realised;
import hankbook.reckon.Unlikely;
import hankbook.reckon.Way;
import java.time.Duration;
import java.util.Locale;
import javafx.geometry.HPos;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The ways of cloth and loom as they came out, beside what the plan took them for. */
final class CameOut extends VBox {
  private static final double MOST_WIDTH = 560;

  private final GridPane grid = new GridPane();

  CameOut(Plan plan, Realised really) {
    getStyleClass().add("plan-section");
    grid.getStyleClass().add("came-out");
    grid.setMaxWidth(MOST_WIDTH);
    ColumnConstraints names = new ColumnConstraints();
    names.setHgrow(Priority.ALWAYS);
    ColumnConstraints values = new ColumnConstraints();
    values.setHalignment(HPos.RIGHT);
    values.setMinWidth(70);
    grid.getColumnConstraints().setAll(names, values, values);
    grid.addRow(0, Labels.quiet(""), Labels.quiet(Say.text("planned")), Labels.quiet(Say.text("really")));
    really.ways().forEach((way, found) -> row(way.words(), Say.known(way.words()), Wording.percent(way.planned(plan.allowances()), 2), Wording.percent(found.value(), 2), Wording.phrase(found.from())));
    really.sampling().ifPresent(found -> row("sampling", Say.text("sampling"), Wording.width(plan.allowances().sampling()),
        Wording.width(found.value()), Wording.phrase(found.from())));
    really.loomWaste().ifPresent(found -> row("loom waste", Say.text("loom waste"), Wording.width(plan.allowances().loomWaste()),
        Wording.width(found.value()), Wording.phrase(found.from())));
    really.times().forEach((kind, found) -> row(id(kind), Say.known(kind.key()) + ", " + of(kind), "", time(found.value()), Wording.phrase(found.from())));
    if (grid.getRowCount() == 1) {
      getChildren().add(Labels.quiet(Say.text("Take-up, draw-in, shrinkage and loom waste show here once lengths and widths are measured.")));
    } else {
      getChildren().add(grid);
    }
    really.unlikely().stream().map(Unlikely::phrase).map(Wording::phrase).map(AfterWords::begin).map(CameOut::doubt).forEach(getChildren()::add);
  }

  private static Label doubt(String words) {
    Label label = Labels.quiet(words);
    label.getStyleClass().add("came-doubt");
    return label;
  }

  private void row(String id, String name, String planned, String really, String from) {
    Label caption = new Label(AfterWords.begin(name));
    Label value = new Label(really);
    value.getStyleClass().add("went-total");
    value.setId("came-" + id.replace(' ', '-'));
    value.setMinWidth(USE_PREF_SIZE);
    int row = grid.getRowCount();
    grid.addRow(row, caption, new Label(planned), value);
    Label why = Labels.quiet(from);
    grid.add(why, 0, row + 1, 3, 1);
  }

  private static String id(WorkKind kind) {
    return kind.key() + (kind.per() == WorkKind.Per.END ? ",-an-" : ",-a-") + kind.per().name().toLowerCase(Locale.ROOT);
  }

  private static String of(WorkKind kind) {
    return switch (kind.per()) {
      case END -> Say.text("an end");
      case PICK -> Say.text("a pick");
      case PIECE -> Say.text("a piece");
    };
  }

  private static String time(Duration time) {
    return time.toMinutes() > 0 ? Say.text("{0} min {1} s", time.toMinutes(), time.toSecondsPart()) : TypedText.shown(time.toSeconds() + "." + time.toMillisPart() / 100 + " s");
  }
}
