package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.desktop.say.Say;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** The groups of the form from top to bottom, and in each what few plans need folded away. */
final class PlanGroups {
  private static final List<String> ORDER_MORE = List.of("strands", "mark", "oneLot", "repairEnds");
  private static final List<String> WEFT_MORE = List.of("strands", "mark", "oneLot", "width");
  private static final List<String> ALLOWANCES_MORE = List.of("gap", "winding", "repairEnds");

  private static final Set<PlanPart> SEQUENCES = Set.of(PlanPart.ORDER, PlanPart.SECTIONS);

  private final PlanFields fields;
  private final PlanEditor editor;
  private final Consumer<String> focus;
  private final EndsFromOrder endsFromOrder;
  private final SectionTable sectionSum;
  private final PlanOffersPane offers;
  private final Set<String> opened = new HashSet<>();
  private final List<PlanFold> folds = new ArrayList<>();

  /**
   * @param focus puts the keyboard into the field or button of an id
   */
  PlanGroups(PlanFields fields, PlanEditor editor, PlanOffers offers, Consumer<String> focus) {
    this.fields = fields;
    this.editor = editor;
    this.focus = focus;
    this.endsFromOrder = new EndsFromOrder(editor);
    this.sectionSum = new SectionTable(editor);
    this.offers = new PlanOffersPane(offers, editor, this::used);
  }

  /** Every group, built anew. */
  List<Node> build() {
    folds.clear();
    List<Node> groups = List.of(pieces(), warp(), order(), units(), weft(), allowances(), loom());
    folds.forEach(PlanFold::openWhereFilled);
    return groups;
  }

  void openWhereAtFault() {
    folds.forEach(PlanFold::openWhereAtFault);
  }

  private VBox pieces() {
    VBox group = group(Say.text("Pieces"));
    group.getChildren().add(list(PlanPart.PIECES, Say.text("Add a piece"), List.of(), _ -> {}));
    return group;
  }

  private VBox warp() {
    PlanFold more = fold("warp", Say.text("the warp"));
    VBox group = group(Say.text("Warp"), more);
    List<PlanField> few = Stream.concat(fieldsOf(PlanPart.SELVEDGE, PlanPart.SELVEDGE.keys()).stream(), fieldsOf(PlanPart.WARP, List.of("endsMultiple")).stream()).toList();
    Node folded = rows(row(few, more), message("warp.selvedge", more));
    more.hold(folded);
    group.getChildren().addAll(row(fieldsOf(PlanPart.WARP, List.of("sett", "ends", "length", "selvedgeEnds"))), fields.message("warp"), folded);
    return group;
  }

  private VBox order() {
    PlanFold more = fold("order", Say.text("the order"));
    VBox group = group(Say.text("Order of ends"), more);
    Node rows = list(PlanPart.ORDER, Say.text("Add to the order"), ORDER_MORE, more::take);
    group.getChildren().addAll(rows, fields.box(PlanField.of(PlanPart.WARP, "succession")), fields.message("warp.order"), endsFromOrder);
    return group;
  }

  private VBox units() {
    PlanFold more = fold("units", Say.text("ends counted in units"));
    VBox group = group(Say.text("Ends counted in units"), more);
    VBox folded =
        rows(
            row(fieldsOf(PlanPart.WARP, List.of("endsPerUnit", "extendLeft", "extendRight")), more),
            list(PlanPart.SECTIONS, Say.text("Add a section"), PlanPart.SECTIONS.keys(), more::watch),
            sectionSum);
    more.hold(folded);
    group.getChildren().add(folded);
    return group;
  }

  private VBox weft() {
    PlanFold more = fold("weft", Say.text("the weft"));
    VBox group = group(Say.text("Weft"), more);
    PlanFieldBox written = fields.box(PlanField.of(PlanPart.PLAN, "weftSuccession"));
    more.take(written);
    group.getChildren().addAll(list(PlanPart.WEFT, Say.text("Add a weft"), WEFT_MORE, more::take), written);
    return group;
  }

  private VBox allowances() {
    PlanFold more = fold("allowances", Say.text("the allowances"));
    VBox group = group(Say.text("Allowances"), more);
    Node folded = row(fieldsOf(PlanPart.ALLOWANCES, ALLOWANCES_MORE), more);
    more.hold(folded);
    group.getChildren().addAll(row(fieldsOf(PlanPart.ALLOWANCES, without(PlanPart.ALLOWANCES, ALLOWANCES_MORE))), folded, fields.message("allowances"), offers);
    return group;
  }

  /** A field that was folded away is seen once it is filled. */
  private void used(String field) {
    folds.forEach(PlanFold::openWhereFilled);
    focus.accept(field);
  }

  private VBox loom() {
    VBox group = group(Say.text("Loom and winding"));
    List<PlanField> all =
        Stream.of(fieldsOf(PlanPart.PLAN, List.of("loom", "reed")), fieldsOf(PlanPart.WARP, List.of("weave", "sley")), fieldsOf(PlanPart.WINDING, List.of("threads")))
            .flatMap(List::stream)
            .toList();
    group.getChildren().addAll(row(all), fields.message("winding"));
    return group;
  }

  /** The rows of a list, those of the order of ends and of sections to be moved. The folded fields come last and are handed over. */
  private VBox list(PlanPart part, String words, List<String> folded, Consumer<PlanFieldBox> fold) {
    VBox rows = rows();
    int last = editor.draftProperty().get().rows(part).size();
    for (int row = 1; row <= last; row++) {
      putBack(part, row, rows);
      rows.getChildren().addAll(listed(part, row, last, folded, fold), fields.message(new PlanField(part, row, "").toString()));
    }
    putBack(part, last + 1, rows);
    rows.getChildren().add(PlanFieldRow.more(part, words, () -> add(part)));
    return rows;
  }

  private PlanFieldRow listed(PlanPart part, int number, int last, List<String> folded, Consumer<PlanFieldBox> fold) {
    List<PlanField> all = Stream.concat(without(part, folded).stream(), folded.stream()).map(key -> new PlanField(part, number, key)).toList();
    PlanFieldRow row = row(all);
    all.stream().filter(field -> folded.contains(field.key())).forEach(field -> fields.find(field).ifPresent(fold));
    // What is folded away stays behind the buttons, so that these do not go far where it opens.
    row.withActs(folded.size() == part.keys().size() ? 0 : folded.size());
    if (SEQUENCES.contains(part)) {
      row.movable(part, number, last, editor, focus);
    }
    row.removable(part, number, editor);
    return row;
  }

  private void putBack(PlanPart part, int row, VBox rows) {
    editor.removedProperty().get().filter(gone -> gone.part() == part && gone.row() == row).ifPresent(_ -> rows.getChildren().add(PlanFieldRow.putBack(part, row, editor)));
  }

  private void add(PlanPart part) {
    editor.addRow(part);
    focus.accept(new PlanField(part, editor.draftProperty().get().rows(part).size(), part.keys().getFirst()).toString());
  }

  private PlanFold fold(String key, String name) {
    PlanFold fold = new PlanFold(key, name, opened);
    folds.add(fold);
    return fold;
  }

  private static VBox group(String title, Node... beside) {
    Label heading = new Label(title);
    heading.getStyleClass().addAll(Styles.TEXT_BOLD, "plan-heading");
    HBox head = new HBox(heading, Labels.gap());
    head.getStyleClass().add("plan-group-head");
    head.getChildren().addAll(beside);
    VBox group = new VBox(head);
    group.getStyleClass().add("plan-group");
    return group;
  }

  private static VBox rows(Node... nodes) {
    VBox rows = new VBox(nodes);
    rows.getStyleClass().add("plan-rows");
    return rows;
  }

  private PlanFieldRow row(List<PlanField> all) {
    return new PlanFieldRow(all, fields::box);
  }

  /** A row that lies in a fold as a whole. */
  private PlanFieldRow row(List<PlanField> all, PlanFold fold) {
    PlanFieldRow row = row(all);
    all.forEach(field -> fields.find(field).ifPresent(fold::watch));
    return row;
  }

  private Label message(String group, PlanFold fold) {
    Label message = fields.message(group);
    fold.watch(message);
    return message;
  }

  private static List<PlanField> fieldsOf(PlanPart part, List<String> keys) {
    return keys.stream().map(key -> PlanField.of(part, key)).toList();
  }

  private static List<String> without(PlanPart part, List<String> folded) {
    return part.keys().stream().filter(key -> !folded.contains(key)).toList();
  }
}
