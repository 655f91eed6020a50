package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.measure.Length;
import hankbook.reckon.Cause;
import hankbook.reckon.YarnAccount;
import java.util.Locale;
import javafx.geometry.HPos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Where yarn went, as bars below each other: what was planned, what each cause added or spared, what was used. */
final class Waterfall extends VBox {
  private final WentBars bars;
  private final GridPane grid = new GridPane();

  Waterfall(WentBars bars) {
    this.bars = bars;
    getStyleClass().add("went");
    grid.getStyleClass().add("went-bars");
    ColumnConstraints names = new ColumnConstraints();
    names.setMinWidth(96);
    ColumnConstraints drawn = new ColumnConstraints();
    drawn.setHgrow(Priority.ALWAYS);
    ColumnConstraints values = new ColumnConstraints();
    values.setHalignment(HPos.RIGHT);
    values.setMinWidth(86);
    grid.getColumnConstraints().setAll(names, drawn, values);
    row("planned", Say.text("planned"), bars.beginning(), bars.planned(), "went-whole", Wording.yarn(bars.planned()));
    bars.steps().forEach(this::step);
    row("used", Say.text("used"), bars.beginning(), bars.used(), "went-whole", Wording.yarn(bars.used()));
    getChildren().add(grid);
    if (bars.beginning().isPositive()) {
      getChildren().add(Labels.quiet(Say.text("The bars begin at {0}, not at nothing, so that the steps can be seen.", Wording.yarn(bars.beginning()))));
    }
  }

  private void step(YarnAccount.Step step) {
    String style = step.cause() == Cause.UNEXPLAINED ? "went-unexplained" : step.part().isNegative() ? "went-less" : "went-more";
    row(step.cause().words(), Say.known(step.cause().words()), step.before(), step.after(), style, AfterWords.signed(step.part()));
  }

  private void row(String key, String name, Length from, Length to, String style, String words) {
    Label caption = new Label(name);
    Label value = new Label(words);
    value.setId("went-" + key.replace(' ', '-').toLowerCase(Locale.ROOT));
    value.setMinWidth(USE_PREF_SIZE);
    if (style.equals("went-whole")) {
      caption.getStyleClass().add("went-total");
      value.getStyleClass().add("went-total");
    }
    double one = bars.place(from);
    double other = bars.place(to);
    grid.addRow(grid.getRowCount(), caption, new Bar(Math.min(one, other), Math.max(one, other), style, name + " " + words), value);
  }

  /** One bar between two places of the scale, at least so wide that it is seen. */
  private static final class Bar extends Pane {
    private static final double LEAST = 2;

    private final double from;
    private final double to;
    private final Region bar = new Region();

    Bar(double from, double to, String style, String words) {
      this.from = from;
      this.to = to;
      bar.getStyleClass().add(style);
      bar.setManaged(false);
      getStyleClass().add("went-bar");
      getChildren().add(bar);
      setMinWidth(0);
      setAccessibleRole(AccessibleRole.IMAGE_VIEW);
      setAccessibleText(words);
    }

    @Override
    protected void layoutChildren() {
      double start = Math.min(getWidth() * from, getWidth() - LEAST);
      bar.resizeRelocate(snapPositionX(start), 0, Math.max(LEAST, snapPositionX(getWidth() * to) - snapPositionX(start)), getHeight());
    }
  }
}
