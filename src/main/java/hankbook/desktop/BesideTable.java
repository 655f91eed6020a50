package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.cost.Alternatives;
import hankbook.cost.Aspect;
import hankbook.cost.Figure;
import hankbook.cost.Trait;
import hankbook.desktop.say.Say;
import hankbook.exchange.BadInput;
import hankbook.studio.ComparePlans;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javafx.collections.ListChangeListener;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The figures of plans side by side. The heads of the columns stay while one types in them. */
final class BesideTable extends GridPane {
  private static final PseudoClass STALE = PseudoClass.getPseudoClass("stale");

  private final PlansModel plans;
  private final BesideModel model;
  private final List<Node> figures = new ArrayList<>();

  BesideTable(PlansModel plans) {
    this.plans = plans;
    this.model = plans.beside();
    setId("beside-table");
    getStyleClass().add("beside-table");
    model.columns().addListener((ListChangeListener<BesideColumn>) _ -> lay());
    model.answer().foundProperty().subscribe(found -> showFound(found));
    model.answer().reckoningProperty().subscribe(reckoning -> figures.forEach(node -> node.pseudoClassStateChanged(STALE, reckoning)));
  }

  private void lay() {
    getChildren().clear();
    figures.clear();
    getColumnConstraints().setAll(constraints(120, Priority.SOMETIMES));
    for (int i = 0; i < model.columns().size(); i++) {
      getColumnConstraints().add(constraints(132, Priority.ALWAYS));
      add(new BesideHead(model, model.columns().get(i), i, plans.skeinsProperty()::get), i + 1, 0);
    }
  }

  private static ColumnConstraints constraints(double least, Priority grows) {
    ColumnConstraints column = new ColumnConstraints(least, least + 20, 260);
    column.setHgrow(grows);
    return column;
  }

  private void showFound(Optional<ComparePlans.Compared> found) {
    getChildren().removeAll(figures);
    figures.clear();
    // An answer to columns that were changed since is followed by another.
    found.filter(compared -> compared.all().size() == model.columns().size()).ifPresent(this::show);
  }

  private void show(ComparePlans.Compared compared) {
    List<Integer> places = IntStream.range(0, compared.all().size()).filter(i -> compared.all().get(i).contender().isPresent()).boxed().toList();
    for (int i = 0; i < compared.all().size(); i++) {
      int column = i + 1;
      compared.all().get(i).why().ifPresent(why -> put(PlanPage.text(words(why), "fault"), column, 1));
    }
    compared.alternatives().ifPresent(alternatives -> show(alternatives, places));
  }

  private static String words(BadInput why) {
    return Say.text("It cannot be reckoned: {0}", PlanWords.why(why, ""));
  }

  private void show(Alternatives alternatives, List<Integer> places) {
    int row = 2;
    Optional<Trait> before = Optional.empty();
    for (Aspect aspect : alternatives.aspects()) {
      if (aspect.yarn().isPresent() && !before.equals(Optional.of(aspect.trait()))) {
        put(heading(BesideWords.name(aspect.trait())), 0, row++);
      }
      before = Optional.of(aspect.trait());
      put(name(aspect), 0, row);
      for (int i = 0; i < places.size(); i++) {
        put(cell(aspect, i), places.get(i) + 1, row);
      }
      row++;
    }
    for (String words : alternatives.contenders().stream().flatMap(plan -> BesideWords.uncounted(plan).stream()).toList()) {
      Label label = Labels.quiet(words);
      put(label, 0, row++);
      setColumnSpan(label, REMAINING);
    }
  }

  private void put(Node node, int column, int row) {
    figures.add(node);
    add(node, column, row);
  }

  private static Label heading(String words) {
    Label heading = Labels.heading(words);
    setColumnSpan(heading, REMAINING);
    return heading;
  }

  private Node name(Aspect aspect) {
    Label name = new Label(aspect.yarn().map(YarnColour::toString).orElseGet(() -> BesideWords.name(aspect.trait())));
    name.setWrapText(true);
    HBox line = new HBox(6);
    line.getStyleClass().add("beside-name");
    aspect.yarn().ifPresent(yarn -> line.getChildren().add(plans.palette().swatch(yarn)));
    line.getChildren().add(name);
    return aspect.differs() || aspect.figures().size() == 1 ? line : new VBox(line, Labels.quiet(Say.text("= the same")));
  }

  /** The figure, then by how much it differs from the first, and whether it is the best. */
  private static VBox cell(Aspect aspect, int place) {
    Optional<Figure> figure = aspect.figures().get(place);
    VBox cell = new VBox();
    cell.getStyleClass().add("beside-cell");
    if (figure.isPresent() && figure.get() instanceof Figure.Stands(var verdict)) {
      cell.getChildren().add(StandingMark.labelled(Standing.of(verdict)));
    } else {
      Label words = new Label(figure.map(there -> BesideWords.figure(aspect.trait(), there)).orElseGet(() -> Say.text("none of it")));
      words.setWrapText(true);
      words.getStyleClass().add(aspect.differs() ? "beside-figure" : "beside-same");
      cell.getChildren().add(words);
    }
    if (aspect.best().contains(place)) {
      Label best = new Label("✓ " + BesideWords.best(aspect.trait()));
      best.getStyleClass().addAll(Styles.TEXT_SMALL, "beside-best");
      cell.getChildren().add(best);
    }
    aspect.beyondFirst(place).flatMap(beyond -> BesideWords.beyond(aspect.trait(), beyond)).ifPresent(words -> cell.getChildren().add(Labels.quiet(words)));
    return cell;
  }
}
