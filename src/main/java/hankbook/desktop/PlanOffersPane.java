package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.desktop.say.Say;
import hankbook.exchange.PlanPart;
import hankbook.reckon.Learnable;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Below the allowances, what is proposed for them: a line for each, with a button that enters it. The lines stay where they are while one types. */
final class PlanOffersPane extends VBox {
  private final PlanOffers model;
  private final PlanEditor editor;
  private final Consumer<String> used;
  private final Map<String, Row> rows = new LinkedHashMap<>();

  /** @param used is told the field into which something was entered */
  PlanOffersPane(PlanOffers model, PlanEditor editor, Consumer<String> used) {
    this.model = model;
    this.editor = editor;
    this.used = used;
    setId("plan-offers");
    getStyleClass().add("plan-offers");
    Stream.concat(Arrays.stream(Learnable.values()).filter(which -> which.work().isEmpty()).map(Learnable::key), Stream.of(PlanOffer.OF_THE_LOOM))
        .sorted((one, other) -> Integer.compare(place(one), place(other)))
        .forEach(id -> rows.put(id, new Row(id)));
    getChildren().addAll(rows.values());
    managedProperty().bind(visibleProperty());
    model.offersProperty().subscribe(_ -> show());
    editor.draftProperty().subscribe(_ -> show());
  }

  /** In the order of the fields. */
  private static int place(String id) {
    return PlanPart.ALLOWANCES.keys().indexOf(id.equals(PlanOffer.OF_THE_LOOM) ? Learnable.LOOM_WASTE.key() : id);
  }

  private void show() {
    setVisible(!model.offersProperty().get().isEmpty());
    rows.forEach((id, row) -> row.show(model.offersProperty().get().stream().filter(offer -> offer.id().equals(id)).findFirst()));
  }

  /** One line. */
  private final class Row extends VBox {
    private final Label brief = Labels.quiet("");
    private final Label words = Labels.quiet("");
    private final ToggleButton why = new ToggleButton(Say.text("Why"));
    private final Label already = Labels.quiet("");
    private final Button use = new Button(Say.text("Use"));
    private Optional<PlanOffer> offer = Optional.empty();

    Row(String id) {
      words.setId("offer-" + id);
      why.setId("why-" + id);
      why.getStyleClass().addAll(Styles.SMALL, Styles.FLAT);
      why.setMinWidth(USE_PREF_SIZE);
      Labels.showOnly(words, why.selectedProperty());
      use.setId("use-" + id);
      use.getStyleClass().addAll(Styles.SMALL, Styles.BUTTON_OUTLINED);
      use.setMinWidth(USE_PREF_SIZE);
      use.managedProperty().bind(use.visibleProperty());
      already.setMinWidth(USE_PREF_SIZE);
      already.managedProperty().bind(already.visibleProperty());
      already.visibleProperty().bind(use.visibleProperty().not());
      managedProperty().bind(visibleProperty());
      HBox.setHgrow(brief, Priority.ALWAYS);
      brief.setMaxWidth(Double.MAX_VALUE);
      use.setOnAction(_ -> offer.ifPresent(this::use));
      HBox line = new HBox(brief, why, use, already);
      line.getStyleClass().add("plan-offer");
      getChildren().addAll(line, words);
    }

    private void use(PlanOffer proposed) {
      model.use(proposed);
      used.accept(proposed.field().toString());
    }

    void show(Optional<PlanOffer> now) {
      offer = now;
      setVisible(now.isPresent());
      now.ifPresent(proposed -> {
        brief.setText(LearntWords.unbroken(proposed.brief()));
        words.setText(LearntWords.unbroken(Say.text("{0}: {1}", proposed.caption(), proposed.words())));
        why.setAccessibleText(Say.text("Where {0} comes from", proposed.brief()));
        already.setText(proposed.already());
        use.setAccessibleText(proposed.act());
        use.setVisible(!proposed.isSaid(editor.draftProperty().get()));
      });
    }
  }
}
