package hankbook.desktop;

import hankbook.desktop.say.Say;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.beans.property.ObjectProperty;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** What finished plans taught: a table of it with a choice of loom, weave and fibre, or how to make plans teach. */
final class LearntPage extends VBox {
  private static final double READABLE = 600;

  private final LearntModel model;
  private final FlowPane choices = new FlowPane();
  private final Label said = Labels.quiet("");
  private final LearntTable table;
  private final VBox teaching = new VBox();

  LearntPage(LearntModel model) {
    this.model = model;
    this.table = new LearntTable(model);
    getStyleClass().addAll("plan-answer-side", "learnt");
    choices.getStyleClass().add("learnt-choices");
    said.setId("learnt-said");
    teaching.getStyleClass().add("learnt-teaching");
    VBox.setVgrow(table, Priority.ALWAYS);
    List.<Node>of(choices, said, table, teaching).forEach(node -> node.managedProperty().bind(node.visibleProperty()));
    choices.getChildren().addAll(
        choice("learnt-loom", Say.text("Loom"), model.loomProperty(), model::looms, loom -> loom.orElse(Say.text("any"))),
        choice("learnt-weave", Say.text("Weave"), model.weaveProperty(), model::weaves, weave -> weave.map(Object::toString).orElse(Say.text("any"))),
        choice("learnt-fibre", Say.text("Fibre"), model.fibreProperty(), model::fibres, fibre -> fibre.isEmpty() ? Say.text("any") : LearntWords.fibre(fibre)));
    teach();
    getChildren().addAll(Labels.title(Say.text("What was learnt")), choices, said, table, teaching);
    model.allProperty().subscribe(_ -> show());
    model.rows().subscribe(this::show);
  }

  private void show() {
    boolean known = model.allProperty().get().isPresent();
    boolean any = model.allProperty().get().filter(all -> !all.lessons().isEmpty()).isPresent();
    choices.setVisible(any);
    table.setVisible(any);
    teaching.setVisible(known && !any);
    said.setText(!known ? Say.text("Reading the ledger…") : any ? LearntWords.summary(model.rows(), model.group()) : Say.text("Nothing is learnt yet."));
  }

  private void teach() {
    LearntWords.teaching().forEach(words -> {
      Label label = new Label(words);
      label.setWrapText(true);
      label.setMaxWidth(READABLE);
      label.setMinHeight(USE_PREF_SIZE);
      teaching.getChildren().add(label);
    });
  }

  /** A box to choose in, whose choices follow the ledger; what is chosen stays. */
  private <T> Node choice(String id, String name, ObjectProperty<T> chosen, Supplier<List<T>> all, Function<T, String> words) {
    ComboBox<T> box = new ComboBox<>();
    box.setId(id);
    box.setAccessibleText(name);
    box.setConverter(new Words<>(words));
    model.allProperty().subscribe(_ -> follow(box, chosen, all.get()));
    box.setOnAction(_ -> Optional.ofNullable(box.getValue()).ifPresent(chosen::set));
    Label label = new Label(name);
    label.getStyleClass().add("field-name");
    label.setLabelFor(box);
    VBox field = new VBox(label, box);
    field.getStyleClass().add("field-box");
    return field;
  }

  private static <T> void follow(ComboBox<T> box, ObjectProperty<T> chosen, List<T> all) {
    if (!box.getItems().equals(all)) {
      T was = chosen.get();
      box.getItems().setAll(all);
      box.setValue(was);
    }
  }

  /** Shows a choice in words; it is never typed. */
  private static final class Words<T> extends StringConverter<T> {
    private final Function<T, String> words;

    Words(Function<T, String> words) {
      this.words = words;
    }

    @Override
    public String toString(T choice) {
      return choice == null ? "" : words.apply(choice);
    }

    @Override
    public T fromString(String typed) {
      throw new UnsupportedOperationException(typed);
    }
  }
}
