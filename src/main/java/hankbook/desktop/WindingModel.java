package hankbook.desktop;

import hankbook.allot.PlanCheck;
import hankbook.allot.WindingSheet;
import hankbook.allot.WindingWish;
import hankbook.exchange.BadInput;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import hankbook.exchange.WindingText;
import hankbook.measure.Arithmetic;
import hankbook.plan.Bout;
import hankbook.plan.Plan;
import java.util.Optional;
import java.util.concurrent.Callable;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;

/** The winding sheet of the open plan, and how the weaver likes to wind. */
final class WindingModel {
  /**
   * A sheet for the plan as it stands.
   *
   * @param planned the threads that the plan winds together, whatever was wished
   */
  record Planned(WindingSheet sheet, int planned) {}

  private static final PlanField THREADS = PlanField.of(PlanPart.WINDING, "threads");

  private final PlanDesk desk;
  private final PlanEditor editor;
  private final TypedValue<Integer> threads = new TypedValue<>(text -> wish(count(text), 1, 1).threads(), this::ask);
  private final TypedValue<Integer> bout = new TypedValue<>(text -> wish(1, count(text), 1).bout(), this::ask);
  private final TypedValue<Integer> group = new TypedValue<>(text -> wish(1, 1, count(text)).group(), this::ask);
  private final BooleanProperty across = new SimpleBooleanProperty(false);
  private final LiveAnswer<Planned> sheet;

  WindingModel(PlanDesk desk, Work work, PlanEditor editor) {
    this.desk = desk;
    this.editor = editor;
    this.sheet = new LiveAnswer<>(work, this::question, this::why);
    across.subscribe((_, _) -> ask());
    editor.answerProperty().subscribe(_ -> ask());
    editor.openedProperty().subscribe(_ -> threads.textProperty().set(""));
  }

  private static WindingWish wish(int threads, int bout, int group) {
    return new WindingWish(threads, false, bout, group);
  }

  private static int count(String text) {
    return Arithmetic.count(text);
  }

  /** Threads held together; those of the plan where nothing is typed. */
  TypedValue<Integer> threads() {
    return threads;
  }

  /** The most ends of a bout. */
  TypedValue<Integer> bout() {
    return bout;
  }

  /** Ends between two crossings of the counting thread. */
  TypedValue<Integer> group() {
    return group;
  }

  /** Whether the threads held may be of different yarns. */
  BooleanProperty acrossProperty() {
    return across;
  }

  /** The sheet while someone looks at it. */
  LiveAnswer<Planned> sheet() {
    return sheet;
  }

  /** The sheet as a page of text; empty where there is none. */
  String text() {
    return sheet.foundProperty().get().map(found -> WindingText.of(found.sheet(), found.planned())).orElse("");
  }

  /** Enters the threads that are tried into the plan. */
  void takeThreads() {
    threads.value().ifPresent(held -> {
      editor.enter(THREADS, Integer.toString(held));
      editor.keep();
    });
  }

  private void ask() {
    sheet.ask();
  }

  private Optional<Callable<Planned>> question() {
    if (threads.isBad() || bout.isBad() || group.isBad()) {
      return Optional.empty();
    }
    return plan().map(plan -> {
      WindingWish wish = new WindingWish(threads.value().orElse(plan.threads()), across.get(), bout.value().orElse(Bout.USUAL), group.value().orElse(WindingWish.USUAL_GROUP));
      return () -> new Planned(desk.winding(plan, wish), plan.threads());
    });
  }

  private Optional<Plan> plan() {
    return editor.answerProperty().get() instanceof PlanAnswer.Reckoned(PlanCheck check) ? Optional.of(check.plan()) : Optional.empty();
  }

  private String why(Exception trouble) {
    return trouble instanceof BadInput refused ? PlanWords.why(refused, plan().map(Plan::name).orElse("")) : PlanWords.trouble(trouble);
  }
}
