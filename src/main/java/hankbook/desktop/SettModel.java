package hankbook.desktop;

import hankbook.allot.PlanCheck;
import hankbook.desktop.say.Say;
import hankbook.exchange.BadInput;
import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import hankbook.gear.Diameters;
import hankbook.gear.SettAdvice;
import hankbook.gear.SleyChoice;
import hankbook.gear.Weave;
import hankbook.measure.Arithmetic;
import hankbook.measure.Grist;
import hankbook.measure.Sett;
import hankbook.plan.Plan;
import hankbook.studio.Resley;
import hankbook.studio.SettPlan;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.apache.commons.numbers.fraction.BigFraction;

/** A sett tried for the open plan, and the ways to sley it. The plan itself is changed only by taking what was tried. */
final class SettModel {
  private static final Diameters ANY = Diameters.of(new Grist(BigFraction.ONE), Diameters.FIRM);

  private final PlanDesk desk;
  private final PlanEditor editor;
  private final TypedValue<Sett> sett = new TypedValue<>(Sett::parse, this::anew);
  private final TypedValue<BigFraction> factor = new TypedValue<>(SettModel::factor, this::ask);
  private final TypedValue<Weave> weave = new TypedValue<>(Weave::parse, this::ask);
  private final TypedValue<BigFraction> part = new TypedValue<>(SettModel::part, this::ask);
  private final LiveAnswer<SettTrial> trial;
  private final ReadOnlyStringWrapper noSett = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper noSleying = new ReadOnlyStringWrapper("");
  private Optional<SleyChoice> choice = Optional.empty();

  SettModel(PlanDesk desk, Work work, PlanEditor editor) {
    this.desk = desk;
    this.editor = editor;
    this.trial = new LiveAnswer<>(work, this::question, this::why);
    editor.answerProperty().subscribe(_ -> ask());
    editor.openedProperty().subscribe(_ -> begin());
    trial.foundProperty().subscribe(_ -> judge());
  }

  private static BigFraction factor(String text) {
    return Diameters.of(new Grist(BigFraction.ONE), Arithmetic.number(text)).factor();
  }

  private static BigFraction part(String text) {
    return new SettAdvice(ANY, Weave.PLAIN, Arithmetic.number(text)).part();
  }

  private void begin() {
    choice = Optional.empty();
    sett.textProperty().set("");
    weave.textProperty().set("");
  }

  /** The sett that is tried; the plan's where nothing is typed. */
  TypedValue<Sett> sett() {
    return sett;
  }

  /** The k of the diameters. */
  TypedValue<BigFraction> factor() {
    return factor;
  }

  /** The weave that is tried; the plan's where nothing is typed. */
  TypedValue<Weave> weave() {
    return weave;
  }

  /** The part of the fullest sett that is worked with. */
  TypedValue<BigFraction> part() {
    return part;
  }

  /** What it comes to while someone looks at it. */
  LiveAnswer<SettTrial> trial() {
    return trial;
  }

  /** Why there is no other sett to take, or empty. */
  ReadOnlyStringProperty noSettProperty() {
    return noSett.getReadOnlyProperty();
  }

  /** Why there is no sleying to take, or empty. */
  ReadOnlyStringProperty noSleyingProperty() {
    return noSleying.getReadOnlyProperty();
  }

  /** Tries a sett. */
  void attempt(Sett another) {
    sett.textProperty().set(another.toString());
  }

  /** Works out another way of sleying. */
  void choose(SleyChoice another) {
    choice = Optional.of(another);
    ask();
  }

  /** Enters the sett that is tried into the plan: it stays as wide, unless its ends are given outright. */
  void takeSett() {
    found().filter(_ -> noSett.get().isEmpty()).ifPresent(now -> take(now::entered));
  }

  /** Enters the reed and the chosen sleying into the plan, and with them the sett they were chosen for. */
  void takeSleying() {
    found().filter(_ -> noSleying.get().isEmpty()).ifPresent(now -> take(draft -> sleyed(now, now.change().isEmpty() ? draft : now.entered(draft))));
  }

  private static PlanDraft sleyed(SettTrial now, PlanDraft draft) {
    SleyChoice chosen = now.sleyed().orElseThrow().choice();
    return draft.with(PlanField.of(PlanPart.PLAN, "reed"), chosen.reed().name()).with(PlanField.of(PlanPart.WARP, "sley"), chosen.sley().toString());
  }

  /** Enters the sett that is tried for a warp that is beamed: its ends stay, and the width moves. */
  void keepBeamed() {
    found().ifPresent(now -> now.change().ifPresent(change -> take(draft -> Resley.entered(draft, now.plan(), change))));
  }

  private void take(UnaryOperator<PlanDraft> entering) {
    editor.enter(entering.apply(editor.draftProperty().get()));
    editor.keep();
    begin();
  }

  /** What was found, unless something was typed since. */
  private Optional<SettTrial> found() {
    return editor.reckoningProperty().get() ? Optional.empty() : trial.foundProperty().get().filter(_ -> !trial.reckoningProperty().get());
  }

  private void judge() {
    Optional<SettTrial> now = trial.foundProperty().get();
    noSett.set(now.isEmpty() ? Say.text("Nothing is tried.") : now.get().change().isEmpty() ? Say.text("The plan has this sett.") : "");
    boolean none = now.flatMap(SettTrial::sleyed).isEmpty();
    noSleying.set(none ? Say.text("There is no sleying to take.") : now.get().isSleyedAlready() && now.get().change().isEmpty() ? Say.text("The plan has this sleying.") : "");
  }

  /** A sleying was chosen for one sett. */
  private void anew() {
    choice = Optional.empty();
    ask();
  }

  private void ask() {
    trial.ask();
  }

  private Optional<Callable<SettTrial>> question() {
    if (sett.isBad() || factor.isBad() || weave.isBad() || part.isBad()) {
      return Optional.empty();
    }
    return plan().map(plan -> {
      SettPlan.Wish wish = new SettPlan.Wish(factor.value().orElse(Diameters.FIRM), weave.value(), part.value().orElse(SettAdvice.THREE_QUARTERS));
      SettTrial.Tried tried = new SettTrial.Tried(sett.value(), wish, choice);
      return () -> SettTrial.of(plan, tried, desk.skeins(), desk.gear(), desk.judgement());
    });
  }

  private Optional<Plan> plan() {
    return editor.answerProperty().get() instanceof PlanAnswer.Reckoned(PlanCheck check) ? Optional.of(check.plan()) : Optional.empty();
  }

  private String why(Exception trouble) {
    return trouble instanceof BadInput refused ? PlanWords.why(refused, plan().map(Plan::name).orElse("")) : PlanWords.trouble(trouble);
  }
}
