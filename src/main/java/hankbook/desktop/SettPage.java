package hankbook.desktop;

import hankbook.allot.PlanCheck;
import hankbook.desktop.say.Say;
import hankbook.gear.Diameters;
import hankbook.plan.Dressing;
import hankbook.plan.Plan;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** How closely the warp may be set, how it goes through a reed, and what another sett does to a warp that is beamed. */
final class SettPage extends PlanPage {
  private static final PseudoClass STALE = PseudoClass.getPseudoClass("stale");

  private final SettModel sett;
  private final FieldBox tried;
  private final FieldBox weave;
  private final VBox close = part();
  private final SleyChoices choices;
  private final VBox sleyed = part();
  private final VBox beamed = part();

  SettPage(PlansModel model) {
    super("sett", Say.text("Sett"), model);
    this.sett = model.sett();
    this.choices = new SleyChoices(sett);
    this.tried = FieldRow.field(Say.text("Sett to try"), Say.text("the plan's"), "sett-tried", 110, sett.sett());
    this.weave = FieldRow.field(Say.text("Weave"), "plain", "sett-weave", 150, sett.weave());
    FieldBox part = FieldRow.field(Say.text("Part of the fullest"), "3/4", "sett-part", 110, sett.part());
    FieldRow fields = new FieldRow(tried, weave, part, factor());
    stands(fields, take(), Labels.fault(sett.trial().troubleProperty()), close, reed(), beamed);
    visibleProperty().subscribe(seen -> sett.trial().watch(seen));
    sett.trial().foundProperty().subscribe(this::show);
    sett.trial().reckoningProperty().subscribe(reckoning -> {
      close.pseudoClassStateChanged(STALE, reckoning);
      sleyed.pseudoClassStateChanged(STALE, reckoning);
      beamed.pseudoClassStateChanged(STALE, reckoning);
    });
  }

  private static VBox part() {
    VBox part = new VBox();
    part.getStyleClass().add("sett-part");
    part.managedProperty().bind(part.visibleProperty());
    return part;
  }

  /** The k is typed, or one of the two that handbooks give is chosen. */
  private VBox factor() {
    FieldBox field = FieldRow.field(Say.text("k of the yarn"), "0.9", "sett-factor", 90, sett.factor());
    Button firm = common(Say.text("Firm {0}", Wording.number(Diameters.FIRM, 2)), "sett-firm", "0.9");
    firm.setAccessibleHelp(Say.text("Worsted and other firm yarn"));
    Button soft = common(Say.text("Soft {0}", Wording.number(Diameters.SOFT, 2)), "sett-soft", "0.84");
    soft.setAccessibleHelp(Say.text("Soft woollen yarn"));
    VBox lowered = new VBox(Labels.quiet(" "), new HBox(4, firm, soft));
    lowered.getStyleClass().add("field-box");
    return new VBox(new HBox(6, field, lowered));
  }

  private Button common(String words, String id, String factor) {
    Button button = new Button(words);
    button.setId(id);
    button.getStyleClass().addAll("small", "button-outlined");
    button.setMinWidth(USE_PREF_SIZE);
    button.setOnAction(_ -> sett.factor().textProperty().set(factor));
    return button;
  }

  private ActButton take() {
    return new ActButton(Say.text("Take this sett"), sett::takeSett, sett.noSettProperty().map(String::isEmpty), sett.noSettProperty()).named("sett-take");
  }

  private VBox reed() {
    ActButton take = new ActButton(Say.text("Take this sleying"), sett::takeSleying, sett.noSleyingProperty().map(String::isEmpty), sett.noSleyingProperty()).named("sett-take-sleying");
    HBox.setHgrow(sleyed, Priority.ALWAYS);
    VBox all = new VBox();
    section(all, Say.text("In the reed"), choices, sleyed, take);
    all.visibleProperty().bind(sett.trial().foundProperty().map(Optional::isPresent));
    all.managedProperty().bind(all.visibleProperty());
    return all;
  }

  private void show(Optional<SettTrial> found) {
    close.getChildren().clear();
    sleyed.getChildren().clear();
    beamed.getChildren().clear();
    choices.show(found);
    found.ifPresent(trial -> {
      SettWords words = new SettWords(trial, sett.factor().value().orElse(Diameters.FIRM));
      section(close, Say.text("How close"), words.closeness(sett::attempt));
      sleyed.getChildren().addAll(words.sleying());
      section(beamed, Say.text("If the warp is beamed already"), words.beamed(sett::keepBeamed));
    });
  }

  /** The page has its own answer, which comes after the plan's. */
  @Override
  void fill(PlanAnswer.Reckoned reckoned) {
    PlanCheck check = reckoned.check();
    Plan plan = check.plan();
    Dressing dressing = plan.dressing();
    tried.field().setPromptText(plan.warp().sett().toString());
    weave.field().setPromptText(dressing.weave().map(Object::toString).orElse("plain"));
  }
}
