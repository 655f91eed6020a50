package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import hankbook.measure.Arithmetic;
import hankbook.measure.Length;
import hankbook.measure.Sett;
import hankbook.plan.Variation;
import hankbook.studio.Alternative;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;

/** One of the plans that lie side by side: a plan as it is kept, or a variant of one, which is held here and touches no plan. */
final class BesideColumn {
  private final String plan;
  private final String letter;
  private final PlanDraft draft;
  private final List<YarnColour> yarns;
  private final TypedValue<Sett> sett;
  private final Map<String, TypedValue<Integer>> counts = new LinkedHashMap<>();
  private final TypedValue<Length> width;
  private final TypedValue<Length> sampling;
  private final ObjectProperty<Optional<YarnColour>> from = new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<YarnColour>> to = new SimpleObjectProperty<>(Optional.empty());

  private BesideColumn(String plan, String letter, PlanDraft draft, Runnable changed) {
    this.plan = plan;
    this.letter = letter;
    this.draft = draft;
    this.yarns = yarns(draft);
    this.sett = new TypedValue<>(Sett::parse, changed);
    this.width = new TypedValue<>(Length::parse, changed);
    this.sampling = new TypedValue<>(Length::parse, changed);
    for (int i = 0; i < draft.rows(PlanPart.PIECES).size(); i++) {
      String name = draft.rows(PlanPart.PIECES).get(i).text("name").strip();
      counts.put((i + 1) + " " + name, new TypedValue<>(Arithmetic::count, changed));
    }
    from.subscribe((_, _) -> changed.run());
    to.subscribe((_, _) -> changed.run());
  }

  /** A plan as it is kept. */
  static BesideColumn kept(String plan) {
    return new BesideColumn(plan, "", PlanDraft.BLANK, () -> {});
  }

  /**
   * A variant of a plan.
   *
   * @param letter by which it is told from others
   * @param draft the plan as it is kept
   * @param changed is run when something else is tried
   */
  static BesideColumn variant(String plan, String letter, PlanDraft draft, Runnable changed) {
    return new BesideColumn(plan, letter, draft, changed);
  }

  private static List<YarnColour> yarns(PlanDraft draft) {
    return Stream.of(PlanPart.ORDER, PlanPart.WEFT, PlanPart.SELVEDGE)
        .flatMap(part -> draft.rows(part).stream())
        .filter(row -> !row.text("yarn").isBlank() && !row.text("colour").isBlank())
        .map(row -> new YarnColour(row.text("yarn"), row.text("colour")))
        .distinct()
        .toList();
  }

  /** The plan of the ledger that it is, or that it varies. */
  String plan() {
    return plan;
  }

  boolean isVariant() {
    return !letter.isEmpty();
  }

  /** The letter of a variant. */
  String letter() {
    return letter;
  }

  /** What it is called. */
  String name() {
    return isVariant() ? Say.text("Variant {0}", letter) : plan;
  }

  /** The yarns of the plan that it varies. */
  List<YarnColour> yarns() {
    return yarns;
  }

  /** What the plan says that it varies, in the first row of a part; empty where it says nothing. */
  String said(PlanPart part, String key) {
    return draft.rows(part).stream().findFirst().map(row -> row.text(key)).orElse("");
  }

  /** How many of a kind of piece the plan has. */
  String countSaid(String kind) {
    return draft.text(new PlanField(PlanPart.PIECES, Integer.parseInt(kind.substring(0, kind.indexOf(' '))), "count"));
  }

  TypedValue<Sett> sett() {
    return sett;
  }

  /** How many of each kind of piece, by the kind's place and name. */
  Map<String, TypedValue<Integer>> counts() {
    return counts;
  }

  TypedValue<Length> width() {
    return width;
  }

  TypedValue<Length> sampling() {
    return sampling;
  }

  /** The yarn that another is tried for. */
  ObjectProperty<Optional<YarnColour>> fromProperty() {
    return from;
  }

  /** The yarn that is tried in its place. */
  ObjectProperty<Optional<YarnColour>> toProperty() {
    return to;
  }

  /** Whether something is typed that cannot be read. */
  boolean isBad() {
    return Stream.concat(Stream.of(sett, width, sampling), counts.values().stream()).anyMatch(TypedValue::isBad);
  }

  /** Whether something is typed that makes it another plan. */
  boolean isBegun() {
    return from.get().isPresent() || to.get().isPresent() || Stream.concat(Stream.of(sett, width, sampling), counts.values().stream()).anyMatch(value -> !value.textProperty().get().isBlank());
  }

  Variation variation() {
    Map<Integer, Integer> pieces = new LinkedHashMap<>();
    List<TypedValue<Integer>> typed = new ArrayList<>(counts.values());
    for (int i = 0; i < typed.size(); i++) {
      int kind = i;
      typed.get(i).value().ifPresent(count -> pieces.put(kind, count));
    }
    Map<YarnColour, YarnColour> instead = from.get().isPresent() && to.get().isPresent() ? Map.of(from.get().get(), to.get().get()) : Map.of();
    return new Variation(sett.value(), pieces, width.value(), sampling.value(), instead);
  }

  Alternative alternative() {
    return new Alternative(name(), plan, variation());
  }
}
