package hankbook.desktop;

import hankbook.gear.Sleying;
import hankbook.gear.Weave;
import hankbook.measure.Exact;
import hankbook.measure.Length;
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
      String strands = kind.strands() == 1 ? "" : ", " + kind.strands() + " strands";
      String grist = kind.grist().map(number -> ", " + number).orElse("");
      yarns.add(kind.yarn() + grist + strands, kind.diameters(factor).map(known -> Exact.plain(known.perInch(), 1) + " side by side to the inch").orElse(""));
    }
    List<Node> parts = new ArrayList<>(List.of(yarns));
    advised.advice().ifPresentOrElse(
        advice -> parts.add(setts(advised, advice.weave(), advice.part(), attempt)),
        () -> parts.add(Labels.quiet("The shelf does not tell how fine the yarn is; give the yarn number with its skeins.")));
    parts.add(Labels.quiet("By Ashenhurst's rule with k " + Exact.plain(factor, 4) + "; 0.9 is for worsted and other firm yarn, 0.84 for soft woollen."));
    return parts.toArray(Node[]::new);
  }

  private GridPane setts(SettPlan.Advised advised, Weave weave, BigFraction part, Consumer<Sett> attempt) {
    GridPane table = new GridPane();
    table.getStyleClass().add("sett-table");
    row(table, 0, "Fullest in " + weave + ", " + weave.explained(), advised.fullest().orElseThrow(), "sett-try-fullest", attempt);
    row(table, 1, "Working, " + Exact.plain(part, 3) + " of it", advised.working().orElseThrow(), "sett-try-working", attempt);
    boolean over = advised.fullest().filter(fullest -> advised.planned().compareTo(fullest) > 0).isPresent();
    table.addRow(2, Labels.quiet(over ? "The plan, closer than the fullest" : "The plan"), bold(advised.planned().toString()));
    return table;
  }

  private void row(GridPane table, int row, String name, Sett sett, String id, Consumer<Sett> attempt) {
    Button button = new Button("Try");
    button.setId(id);
    button.getStyleClass().addAll("small", "button-outlined");
    button.setAccessibleText("Try " + sett);
    button.setOnAction(_ -> attempt.accept(sett));
    table.addRow(row, Labels.quiet(name), bold(sett.toString()), button);
  }

  /** The chosen sleying drawn, with what it comes to. */
  List<Node> sleying() {
    if (trial.sleyed().isEmpty()) {
      return List.of(Labels.quiet(trial.noReed()));
    }
    SleyPlan.Sleyed sleyed = trial.sleyed().get();
    Sleying sleying = sleyed.sleying();
    FactList facts = new FactList();
    facts.add("Reed", sleying.reed().name() + ", sleyed " + sleying.sley());
    facts.add("Sett it really gives", sleyed.choice().sett() + "; wanted " + sleyed.choice().wanted());
    facts.add("Width in the reed", centimetres(sleying.width()) + "; reckoned " + centimetres(sleyed.planned()));
    facts.add("Dents", Integer.toString(sleying.dents()) + " for " + Wording.count(sleying.ends(), "end", "ends") + over(sleying));
    facts.add("Begin", centimetres(sleying.fromMiddle()) + " from the middle" + free(sleying));
    return List.of(new DentsFigure(sleying.sley(), sleying.dents()), facts);
  }

  private static String over(Sleying sleying) {
    return sleying.leftOver() == 0 || sleying.sley().dents() == 1 ? "" : "; the last repeat is not whole";
  }

  private static String free(Sleying sleying) {
    return sleying.freeBefore().isPresent() ? ": dent " + (sleying.freeBefore().getAsInt() + 1) + " of " + sleying.reed().count().orElseThrow() : "";
  }

  /** What the sett does to a warp that is beamed, with the button that enters it. */
  Node[] beamed(Runnable keep) {
    if (trial.change().isEmpty()) {
      return new Node[] {Labels.quiet("Try another sett above to see what it does to the width and the weft.")};
    }
    SettChange change = trial.change().get();
    GridPane table = new GridPane();
    table.getStyleClass().add("sett-table");
    table.addRow(0, Labels.quiet(""), Labels.quiet("sett"), Labels.quiet("in the reed"), Labels.quiet("finished"));
    state(table, 1, "Now", change.before());
    state(table, 2, "Then", change.after());
    List<Node> parts = new ArrayList<>(List.of(PlanPage.text("The " + change.ends() + " ends stay, and the width moves.", "fact"), table));
    change.wefts().forEach(weft -> parts.add(PlanPage.text("Weft " + weft.yarn() + ": " + Wording.yarn(weft.after()) + ", " + more(weft.more()) + ".", "fact")));
    parts.add(keepButton(change, keep));
    return parts.toArray(Node[]::new);
  }

  private static HBox keepButton(SettChange change, Runnable keep) {
    Button button = new Button("Keep " + change.after().sett() + ": the warp is beamed");
    button.setId("sett-keep-beamed");
    button.setOnAction(_ -> keep.run());
    HBox line = new HBox(button);
    line.setAlignment(Pos.CENTER_LEFT);
    return line;
  }

  private static void state(GridPane table, int row, String when, SettChange.State state) {
    table.addRow(row, Labels.quiet(when), bold(state.sett().toString()), bold(centimetres(state.inReed())), bold(centimetres(state.finished())));
  }

  private static String more(Length more) {
    return more.isZero() ? "as before" : Wording.yarn(more.isNegative() ? more.negated() : more) + (more.isNegative() ? " less" : " more");
  }

  private static Label bold(String text) {
    Label label = new Label(text);
    label.getStyleClass().add("sett-figure");
    return label;
  }

  private static String centimetres(Length length) {
    return Wording.width(length);
  }
}
