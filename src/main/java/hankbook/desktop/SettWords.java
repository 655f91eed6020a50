package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.gear.Sleying;
import hankbook.gear.Weave;
import hankbook.measure.Sett;
import hankbook.plan.SettChange;
import hankbook.studio.SettPlan;
import hankbook.studio.SleyPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import org.apache.commons.numbers.fraction.BigFraction;

/** What is shown of a sett that is tried. */
record SettWords(SettTrial trial, BigFraction factor) {
  /** The yarns' diameters, the fullest and the working sett, and the plan's beside them. */
  Node[] closeness(Consumer<Sett> attempt) {
    SettPlan.Advised advised = trial.advised();
    FactList yarns = new FactList();
    for (SettPlan.Kind kind : advised.kinds()) {
      yarns.add(yarn(kind), kind.diameters(factor).map(known -> Say.text("{0} side by side to the inch", Wording.number(known.perInch(), 1))).orElse(""));
    }
    List<Node> parts = new ArrayList<>(List.of(yarns));
    advised.advice().ifPresentOrElse(
        advice -> parts.add(setts(advised, advice.weave(), advice.part(), attempt)),
        () -> parts.add(Labels.quiet(Say.text("The shelf does not tell how fine the yarn is; give the yarn number with its skeins."))));
    parts.add(Labels.quiet(
        Say.text("By Ashenhurst's rule with k {0}; 0.9 is for worsted and other firm yarn, 0.84 for soft woollen.", Wording.number(factor, 4))));
    return parts.toArray(Node[]::new);
  }

  private static String yarn(SettPlan.Kind kind) {
    String yarn = kind.yarn() + kind.grist().map(number -> ", " + number).orElse("");
    return kind.strands() == 1 ? yarn : Say.count(kind.strands(), "{1}, {0} strand", "{1}, {0} strands", yarn);
  }

  private GridPane setts(SettPlan.Advised advised, Weave weave, BigFraction part, Consumer<Sett> attempt) {
    GridPane table = new GridPane();
    table.getStyleClass().add("sett-table");
    row(table, 0, Say.text("Fullest in {0}, {1}", weave, weave.explained()), advised.fullest().orElseThrow(), "sett-try-fullest", attempt);
    row(table, 1, Say.text("Working, {0} of it", Wording.number(part, 3)), advised.working().orElseThrow(), "sett-try-working", attempt);
    boolean over = advised.fullest().filter(fullest -> advised.planned().compareTo(fullest) > 0).isPresent();
    table.addRow(2, Labels.quiet(over ? Say.text("The plan, closer than the fullest") : Say.text("The plan")), bold(Wording.sett(advised.planned())));
    return table;
  }

  private void row(GridPane table, int row, String name, Sett sett, String id, Consumer<Sett> attempt) {
    Button button = new Button(Say.text("Try"));
    button.setId(id);
    button.getStyleClass().addAll("small", "button-outlined");
    button.setAccessibleText(Say.text("Try {0}", Wording.sett(sett)));
    button.setOnAction(_ -> attempt.accept(sett));
    table.addRow(row, Labels.quiet(name), bold(Wording.sett(sett)), button);
  }

  /** The chosen sleying drawn, with what it comes to. */
  List<Node> sleying() {
    if (trial.sleyed().isEmpty()) {
      return List.of(Labels.quiet(trial.noReed()));
    }
    SleyPlan.Sleyed sleyed = trial.sleyed().get();
    Sleying sleying = sleyed.sleying();
    FactList facts = new FactList();
    facts.add(Say.text("Reed"), Say.text("{0}, sleyed {1}", sleying.reed().name(), sleying.sley()));
    facts.add(Say.text("Sett it really gives"), Say.text("{0}; wanted {1}", Wording.sett(sleyed.choice().sett()), Wording.sett(sleyed.choice().wanted())));
    facts.add(Say.text("Width in the reed"), Say.text("{0}; reckoned {1}", Wording.width(sleying.width()), Wording.width(sleyed.planned())));
    facts.add(Say.text("Dents"), dents(sleying));
    facts.add(Say.text("Begin"), begin(sleying));
    return List.of(new DentsFigure(sleying.sley(), sleying.dents()), facts);
  }

  private static String dents(Sleying sleying) {
    return sleying.leftOver() == 0 || sleying.sley().dents() == 1
        ? Say.count(sleying.ends(), "{1} for {0} end", "{1} for {0} ends", sleying.dents())
        : Say.count(sleying.ends(), "{1} for {0} end; the last repeat is not whole", "{1} for {0} ends; the last repeat is not whole", sleying.dents());
  }

  private static String begin(Sleying sleying) {
    String from = Wording.width(sleying.fromMiddle());
    return sleying.freeBefore().isPresent()
        ? Say.text("{0} from the middle: dent {1} of {2}", from, sleying.freeBefore().getAsInt() + 1, sleying.reed().count().orElseThrow())
        : Say.text("{0} from the middle", from);
  }

  /** What the sett does to a warp that is beamed, with the button that enters it. */
  Node[] beamed(Runnable keep) {
    if (trial.change().isEmpty()) {
      return new Node[] {Labels.quiet(Say.text("Try another sett above to see what it does to the width and the weft."))};
    }
    SettChange change = trial.change().get();
    GridPane table = new GridPane();
    table.getStyleClass().add("sett-table");
    table.addRow(0, Labels.quiet(""), Labels.quiet(Say.text("sett")), Labels.quiet(Say.text("in the reed")), Labels.quiet(Say.text("finished")));
    state(table, 1, Say.text("Now"), change.before());
    state(table, 2, Say.text("Then"), change.after());
    List<Node> parts = new ArrayList<>(List.of(PlanPage.text(Say.count(change.ends(), "The {0} end stays, and the width moves.", "The {0} ends stay, and the width moves."), "fact"), table));
    change.wefts().forEach(weft -> parts.add(PlanPage.text(weft(weft), "fact")));
    parts.add(keepButton(change, keep));
    return parts.toArray(Node[]::new);
  }

  private static HBox keepButton(SettChange change, Runnable keep) {
    Button button = new Button(Say.text("Keep {0}: the warp is beamed", Wording.sett(change.after().sett())));
    button.setId("sett-keep-beamed");
    button.setOnAction(_ -> keep.run());
    HBox line = new HBox(button);
    line.setAlignment(Pos.CENTER_LEFT);
    return line;
  }

  private static void state(GridPane table, int row, String when, SettChange.State state) {
    table.addRow(row, Labels.quiet(when), bold(Wording.sett(state.sett())), bold(Wording.width(state.inReed())), bold(Wording.width(state.finished())));
  }

  private static String weft(SettChange.WeftChange weft) {
    String after = Wording.yarn(weft.after());
    if (weft.more().isZero()) {
      return Say.text("Weft {0}: {1}, as before.", weft.yarn(), after);
    }
    return weft.more().isNegative()
        ? Say.text("Weft {0}: {1}, {2} less.", weft.yarn(), after, Wording.yarn(weft.more().negated()))
        : Say.text("Weft {0}: {1}, {2} more.", weft.yarn(), after, Wording.yarn(weft.more()));
  }

  private static Label bold(String text) {
    Label label = new Label(text);
    label.getStyleClass().add("sett-figure");
    return label;
  }
}
