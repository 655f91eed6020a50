package hankbook.desktop;

import hankbook.desktop.say.Say;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Subscription;
import org.jspecify.annotations.Nullable;

/** What was last done or what went wrong, in full, and on request all that was said before. */
final class StatusLine extends VBox {
  private static final double EARLIER_HEIGHT = 150;

  private final GoingLine going;
  private final Subscription hears;

  StatusLine(Status status, String ledger, String whole) {
    getStyleClass().add("status");
    Region mark = new Region();
    mark.getStyleClass().add("status-mark");
    Label text = new Label();
    text.setId("status");
    text.getStyleClass().add("said");
    text.setWrapText(true);
    text.setMinHeight(USE_PREF_SIZE);
    text.textProperty().bind(status.lastProperty().map(Status.Said::text));
    ToggleButton more = new ToggleButton(Say.text("Earlier"));
    more.getStyleClass().addAll("flat", "small");
    more.setId("earlier");
    HBox.setHgrow(text, Priority.ALWAYS);
    text.setMaxWidth(Double.MAX_VALUE);
    Label end = Labels.quiet(ledger);
    end.setTooltip(new Tooltip(whole));
    end.setWrapText(false);
    end.setMinWidth(USE_PREF_SIZE);
    more.setMinWidth(USE_PREF_SIZE);
    going = new GoingLine(status.underway());
    HBox line = new HBox(mark, text, going, end, more);
    line.getStyleClass().add("status-line");
    ObservableValue<Boolean> said = Bindings.isNotEmpty(status.earlier());
    Labels.showOnly(more, said);
    ListView<Status.Said> earlier = earlier(status);
    Labels.showOnly(earlier, more.selectedProperty());
    getChildren().addAll(earlier, line);
    hears = status.lastProperty().subscribe(last -> {
      getStyleClass().removeAll("done", "trouble");
      if (!last.text().isEmpty()) {
        getStyleClass().add(last.trouble() ? "trouble" : "done");
      }
    });
  }

  /** Hears no more of what is said, which outlives it. */
  void leave() {
    hears.unsubscribe();
    going.leave();
  }

  private static ListView<Status.Said> earlier(Status status) {
    ListView<Status.Said> list = new ListView<>(status.earlier());
    list.setPrefHeight(EARLIER_HEIGHT);
    list.setAccessibleText(Say.text("What was said before"));
    list.setCellFactory(view -> new SaidCell());
    return list;
  }

  private static final class SaidCell extends ListCell<Status.Said> {
    SaidCell() {
      setWrapText(true);
      setPrefWidth(0);
    }

    @Override
    protected void updateItem(Status.@Nullable Said said, boolean empty) {
      super.updateItem(said, empty);
      setText(empty || said == null ? null : said.trouble() ? Say.text("Not done: {0}", said.text()) : said.text());
      getStyleClass().remove("said-trouble");
      if (!empty && said != null && said.trouble()) {
        getStyleClass().add("said-trouble");
      }
    }
  }
}
