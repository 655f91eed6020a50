package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.ledger.Change;
import hankbook.studio.Undoing;
import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.GridPane;

/** What taking something back would do: for each skein and place how much is there now, and how much would be then. */
final class ChangeList extends ScrollPane {
  private static final double MOST_HIGH = 112;

  private final GridPane lines = new GridPane();

  ChangeList(ObservableValue<Optional<Undoing>> undoing) {
    lines.getStyleClass().add("change-list");
    getStyleClass().add("change-scroll");
    setContent(lines);
    setFitToWidth(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    setMaxHeight(MOST_HIGH);
    setMinHeight(0);
    setFocusTraversable(false);
    setAccessibleText(Say.text("What taking it back would do"));
    undoing.subscribe(now -> show(now.map(Undoing::changes).orElse(List.of())));
  }

  private void show(List<Change> changes) {
    lines.getChildren().clear();
    int line = 0;
    for (Change change : changes.stream().filter(ChangeList::isSaid).toList()) {
      lines.addRow(line, said(change.holding().skein()), said(Wording.place(change.holding().place())), amount(change), Labels.quiet(lacking(change)));
      line++;
    }
  }

  /** What the maker sold in all, and what was ever recounted, is of no use to anybody here. */
  private static boolean isSaid(Change change) {
    return change.holding().place().neverNegative() || change.lacks();
  }

  private static Label amount(Change change) {
    return said(Say.text("{0} → {1}", Wording.yarn(change.now()), Wording.yarn(change.then())));
  }

  private static String lacking(Change change) {
    return change.lacks() ? Say.text("not enough: {0} short", Wording.yarn(change.then().negated())) : "";
  }

  private static Label said(String text) {
    Label label = new Label(text);
    label.setWrapText(true);
    return label;
  }
}
