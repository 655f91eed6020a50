package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.BadInput;
import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import hankbook.measure.Arithmetic;
import hankbook.measure.Length;
import hankbook.measure.Unreadable;
import hankbook.plan.Plan;
import hankbook.plan.PlanChange;
import hankbook.plan.Section;
import hankbook.plan.SectionSum;
import hankbook.studio.PlanSections;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Another form of one section of the open plan, and what it would change; nothing of it is in the plan before it is kept. */
final class SectionTrial {
  private final Plan plan;
  private final PlanEditor editor;
  private final List<Section> sections;
  private final IntegerProperty chosen = new SimpleIntegerProperty();
  private final StringProperty repeats = new SimpleStringProperty("");
  private final StringProperty units = new SimpleStringProperty("");
  private final ReadOnlyStringWrapper words = new ReadOnlyStringWrapper(unchanged());
  private final ReadOnlyBooleanWrapper keepable = new ReadOnlyBooleanWrapper();

  /**
   * @param plan the plan as it is, with sections
   */
  SectionTrial(Plan plan, PlanEditor editor) {
    this.plan = plan;
    this.editor = editor;
    this.sections = plan.warp().sections().orElseThrow().sections();
    chosen.subscribe(_ -> begin());
    repeats.subscribe(_ -> look());
    units.subscribe(_ -> look());
  }

  /** What the sections are called. */
  List<String> names() {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < sections.size(); i++) {
      names.add(sections.get(i).name().isEmpty() ? Say.text("section {0}", i + 1) : sections.get(i).name());
    }
    return names;
  }

  /** Which section would be another, counted from 0. */
  IntegerProperty chosenProperty() {
    return chosen;
  }

  /** How often it would come, as typed. */
  StringProperty repeatsProperty() {
    return repeats;
  }

  /** How many units it would have each time, as typed. */
  StringProperty unitsProperty() {
    return units;
  }

  /** What that would change, or why it cannot be. */
  ReadOnlyStringProperty wordsProperty() {
    return words.getReadOnlyProperty();
  }

  /** Whether there is something to keep. */
  ReadOnlyBooleanProperty keepableProperty() {
    return keepable.getReadOnlyProperty();
  }

  private void begin() {
    Section section = sections.get(chosen.get());
    repeats.set(Integer.toString(section.repeats()));
    units.set(Integer.toString(section.units()));
  }

  private void look() {
    Section section = sections.get(chosen.get());
    try {
      int often = Arithmetic.count(repeats.get());
      int each = Arithmetic.count(units.get());
      boolean other = often != section.repeats() || each != section.units();
      words.set(other ? changed(often, each) : unchanged());
      keepable.set(other);
    } catch (Unreadable unreadable) {
      refuse(Wording.wanted(unreadable));
    } catch (BadInput refused) {
      refuse(PlanWords.why(refused, ""));
    }
  }

  private static String unchanged() {
    return Say.text("Change repeats or units to see what that would do.");
  }

  private void refuse(String why) {
    words.set(why);
    keepable.set(false);
  }

  private String changed(int often, int each) throws BadInput {
    PlanSections.Wish wish = new PlanSections.Wish(chosen.get() + 1, OptionalInt.of(often), OptionalInt.of(each));
    PlanSections.Tried tried = PlanSections.tried("plan", plan, wish);
    SectionSum after = tried.after();
    PlanChange change = tried.change();
    List<String> lines = new ArrayList<>();
    lines.add(Say.text("{0} = {1} ends.", after.arithmetic(), after.ends()));
    lines.add(Say.text("Ends {0}, in the reed {1}, finished {2}.", signed(Integer.toString(change.ends())), signed(centimetres(change.inReed())), signed(centimetres(change.finished()))));
    change.yarn().forEach((yarn, more) -> lines.add(yarn + " " + signed(Wording.yarn(more)) + "."));
    if (change.inProportion()) {
      lines.add(Say.text("The order of ends has to be made to fit then; each yarn is reckoned in proportion here."));
    }
    return String.join("\n", lines);
  }

  private static String signed(String number) {
    return number.startsWith("-") ? "−" + number.substring(1) : "+" + number;
  }

  private static String centimetres(Length length) {
    return Wording.width(length);
  }

  /** Puts it into the plan. */
  void keep() {
    PlanDraft draft = editor.draftProperty().get();
    int row = chosen.get() + 1;
    if (keepable.get() && row <= draft.rows(PlanPart.SECTIONS).size()) {
      editor.enter(
          draft.with(new PlanField(PlanPart.SECTIONS, row, "repeats"), repeats.get().strip()).with(new PlanField(PlanPart.SECTIONS, row, "units"), units.get().strip()));
      editor.keep();
    }
  }
}
