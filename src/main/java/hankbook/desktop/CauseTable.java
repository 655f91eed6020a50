package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.desktop.say.Say;
import hankbook.measure.Length;
import hankbook.reckon.Cause;
import hankbook.reckon.Reckoning;
import hankbook.reckon.YarnAccount;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.HPos;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.GridPane;

/** Where each yarn went, in figures: what was planned, what each cause added or spared, what was used, and all yarns together. */
final class CauseTable extends ScrollPane {
  private final GridPane grid = new GridPane();
  private final Reckoning reckoning;

  CauseTable(Reckoning reckoning, YarnPalette palette) {
    this.reckoning = reckoning;
    grid.getStyleClass().add("cause-grid");
    List<Label> heads = new ArrayList<>(List.of(Labels.quiet("")));
    for (YarnAccount account : reckoning.yarns()) {
      Label head = new Label(account.yarn().yarn() + "\n" + account.yarn().colour(), palette.swatch(account.yarn()));
      head.setMinWidth(USE_PREF_SIZE);
      heads.add(head);
    }
    heads.add(new Label(Say.text("All yarns")));
    addRow(heads);
    row("planned", Say.text("planned"), reckoning.yarns().stream().map(YarnAccount::planned).toList(), reckoning.planned(), Styles.TEXT_BOLD, false);
    for (Cause cause : Cause.values()) {
      row(cause.words(), Say.known(cause.words()), reckoning.yarns().stream().map(yarn -> yarn.part(cause)).toList(), reckoning.part(cause), Styles.TEXT, true);
    }
    row("used", Say.text("used"), reckoning.yarns().stream().map(YarnAccount::used).toList(), reckoning.used(), Styles.TEXT_BOLD, false);
    setContent(grid);
    setId("causes");
    setFitToHeight(true);
    setVbarPolicy(ScrollBarPolicy.NEVER);
    setMinHeight(USE_PREF_SIZE);
    getStyleClass().add("cause-table");
  }

  private void row(String key, String name, List<Length> each, Length all, String style, boolean signed) {
    List<Label> cells = new ArrayList<>(List.of(new Label(name)));
    List<Length> lengths = new ArrayList<>(each);
    lengths.add(all);
    lengths.forEach(length -> cells.add(new Label(!signed ? Wording.yarn(length) : length.isZero() ? "–" : AfterWords.signed(length))));
    cells.forEach(cell -> cell.getStyleClass().add(style));
    cells.getLast().setId("cause-" + key.replace(' ', '-'));
    addRow(cells);
    grid.setAccessibleText(Say.text("Where the yarn went, {0} yarns", reckoning.yarns().size()));
  }

  private void addRow(List<Label> cells) {
    int row = grid.getRowCount();
    for (int column = 0; column < cells.size(); column++) {
      GridPane.setHalignment(cells.get(column), column == 0 ? HPos.LEFT : HPos.RIGHT);
      grid.add(cells.get(column), column, row);
    }
  }
}
