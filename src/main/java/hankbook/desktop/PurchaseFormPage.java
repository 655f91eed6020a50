package hankbook.desktop;

import hankbook.desktop.say.Say;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.value.ObservableValue;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The form by which a purchase is entered or corrected, with what it comes to while it is typed. */
final class PurchaseFormPage extends VBox {
  private final PurchaseForm form;
  private final PurchaseFields fields;
  private final String id;
  private final VBox lines = new VBox();
  private final FieldBox first;

  /** @param id begins the names of its nodes */
  PurchaseFormPage(PurchaseForm form, String id) {
    this.form = form;
    this.fields = form.fields();
    this.id = id;
    first = box(Say.text("Date"), "2026-03-14", "date", 110);
    getStyleClass().add("purchase-page");
    lines.getStyleClass().add("purchase-lines");
    Button more = new Button(Say.text("Another line"));
    more.setId(id + "-more");
    more.getStyleClass().add("small");
    more.setOnAction(_ -> addLine());
    LandingPane landing = new LandingPane(id + "-sum");
    form.landing().foundProperty().subscribe(landing::show);
    VBox body = new VBox(top(), head(), Labels.heading(Say.text("Lines of the bill")), lines, more, charges(), landing, reason());
    body.getStyleClass().add("side-body");
    ScrollPane scroll = new ScrollPane(body);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(scroll, foot(landing.sum()));
    ListChangeListener<PurchaseLineForm> changed = _ -> showLines();
    fields.lines().addListener(changed);
    showLines();
  }

  /** Takes the keyboard; before the first pulse the fields would not be in the scene yet. */
  void begin() {
    applyCss();
    first.field().requestFocus();
  }

  private Node top() {
    Label title = Labels.title("");
    title.textProperty().bind(form.correctedProperty().map(one -> one.map(now -> Say.text("Correct purchase {0}", now.kept().number())).orElse(Say.text("Enter a purchase"))));
    Button clear = new Button();
    clear.textProperty().bind(form.correctedProperty().map(one -> one.isPresent() ? Say.text("Leave it as it was") : Say.text("Clear")));
    clear.setId(id + "-clear");
    clear.getStyleClass().addAll("flat", "small");
    clear.setMinWidth(USE_PREF_SIZE);
    clear.setOnAction(_ -> form.clear());
    clear.disableProperty().bind(form.halfTypedProperty().not().and(Bindings.createBooleanBinding(() -> form.correctedProperty().get().isEmpty(), form.correctedProperty())));
    HBox top = new HBox(title, Labels.gap(), clear);
    top.getStyleClass().add("page-top");
    return top;
  }

  private Node head() {
    FieldBox from = box(Say.text("From whom"), "", "from", 180);
    FieldBox currency = box(Say.text("Currency"), "", "currency", 90);
    currency.field().promptTextProperty().bind(form.groundProperty().map(ground -> ground.home().getCode()));
    FieldBox rate = box("", "0.0884", "rate", 160);
    FieldBox day = box(Say.text("Day of the rate"), "2026-03-14", "rateDate", 120);
    rate.called(form.rateNameProperty());
    Labels.showOnly(rate, form.foreignProperty());
    Labels.showOnly(day, form.foreignProperty());
    Label home = Labels.quiet(form.homeWordsProperty());
    VBox head = new VBox(new FieldRow(first, from, currency, rate, day), home);
    head.getStyleClass().add("field-box");
    return head;
  }

  private FieldBox box(String name, String example, String key, double width) {
    FieldBox box = new FieldBox(name, example, fields.field(key), fields.message(key)).named(id + "-" + key).quantityIf(key);
    box.field().setOnAction(_ -> form.enter());
    box.setPrefWidth(width);
    box.setMaxWidth(width);
    return box;
  }

  private Node charges() {
    ObservableValue<Boolean> several = Bindings.size(fields.lines()).greaterThan(1);
    FieldRow row = new FieldRow(charge(Say.text("Carriage"), "carriage", several), charge(Say.text("Duty"), "duty", several), charge(Say.text("Discount"), "discount", several));
    VBox charges = new VBox(Labels.heading(Say.text("For all of it")), row);
    charges.getStyleClass().add("field-box");
    return charges;
  }

  private Node charge(String name, String key, ObservableValue<Boolean> several) {
    return new ChargeBox(name, key, id + "-" + key, fields, several, form::enter);
  }

  private void addLine() {
    fields.addLine();
    ((PurchaseLineCard) lines.getChildren().getLast()).begin();
  }

  /** Cards of lines that stay are kept, so that typing is never disturbed. */
  private void showLines() {
    List<Node> cards = new ArrayList<>();
    for (PurchaseLineForm line : fields.lines()) {
      Optional<Node> there = lines.getChildren().stream().filter(card -> ((PurchaseLineCard) card).shows(line)).findFirst();
      cards.add(there.orElseGet(() -> new PurchaseLineCard(fields, line, form::enter)));
      ((PurchaseLineCard) cards.getLast()).name(id + "-line-" + cards.size());
    }
    lines.getChildren().setAll(cards);
  }

  /** A correction says why, so that whoever reads the ledger later knows. */
  private Node reason() {
    FieldBox reason = new FieldBox(Say.text("Why it is corrected"), Say.text("the carriage was missing"), form.reasonProperty(), new SimpleStringProperty("")).named(id + "-reason");
    reason.field().setOnAction(_ -> form.enter());
    Labels.showOnly(reason, form.correctedProperty().map(Optional::isPresent));
    return reason;
  }

  private Node foot(Label sum) {
    ActButton enter = new ActButton("", form::enter, form.act().possibleProperty(), form.act().whyNotProperty()).named(id + "-enter").main().belowReason();
    enter.words(form.correctedProperty().map(one -> one.isPresent() ? Say.text("Correct the purchase") : Say.text("Enter the purchase")));
    VBox foot = new VBox(sum, enter);
    foot.getStyleClass().add("side-foot");
    return foot;
  }
}
