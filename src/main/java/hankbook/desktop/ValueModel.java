package hankbook.desktop;

import hankbook.allot.Setting;
import hankbook.cost.ValueMethod;
import hankbook.desktop.say.Say;
import hankbook.studio.Settings;
import hankbook.studio.Studio;
import hankbook.studio.Value;
import hankbook.studio.ValueBy;
import hankbook.studio.ValuedStock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;

/** What the yarn in the house is worth: on which day, by which method, and grouped by what. */
public final class ValueModel {
  /**
   * An answer of the ledger.
   *
   * @param stocks one in each currency that was paid in, that of the house first
   * @param inForce the method that the settings name
   */
  record Found(List<ValuedStock> stocks, ValueMethod inForce) {
    Found {
      stocks = List.copyOf(stocks);
    }

    /** That in the currency of the house. */
    ValuedStock home() {
      return stocks.getFirst();
    }
  }

  private final Studio studio;
  private final Value value;
  private final Settings settings;
  private final Status status;
  private final Act adopt;
  private final TypedDay on = new TypedDay();
  private final ReadOnlyStringWrapper dayMessage = new ReadOnlyStringWrapper("");
  private final ObjectProperty<Optional<ValueMethod>> method = new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<ValueBy> by = new SimpleObjectProperty<>(ValueBy.YARN);
  private final LiveAnswer<Found> answer;

  /** @param work where the ledger is read through, which may take long */
  public ValueModel(Studio studio, Work work, Status status) {
    this.studio = studio;
    this.value = new Value(studio);
    this.settings = new Settings(studio);
    this.status = status;
    adopt = new Act(work);
    answer = LiveAnswer.slow(work, status, () -> Say.text("Reckoning the value of the stock."), this::question);
    on.textProperty().subscribe((_, _) -> ask());
    method.subscribe((_, _) -> ask());
    answer.foundProperty().subscribe(_ -> judge());
  }

  /** The day at whose end; now where nothing is typed. */
  TypedDay on() {
    return on;
  }

  /** What is wrong with the day, or empty. */
  ReadOnlyStringProperty dayMessageProperty() {
    return dayMessage.getReadOnlyProperty();
  }

  /** The method that is looked at; the one in force where none was chosen. */
  ObjectProperty<Optional<ValueMethod>> methodProperty() {
    return method;
  }

  /** What the lines are grouped by. */
  ObjectProperty<ValueBy> byProperty() {
    return by;
  }

  /** The stock while someone looks at it. */
  LiveAnswer<Found> answer() {
    return answer;
  }

  /** Lets the method that is looked at be in force. */
  Act adoptAct() {
    return adopt;
  }

  /** Today, by the clock of the ledger. */
  LocalDate today() {
    return studio.today();
  }

  /** Asks the ledger anew. */
  public void refresh() {
    ask();
  }

  /** Lets the method that is looked at be in force from now on. */
  void adopt() {
    if (adopt.isPossible()) {
      ValueMethod wanted = method.get().orElseThrow();
      adopt.attempt(_ -> settings.set(Setting.VALUE_METHOD, wanted.key()), () -> {}, () -> adopted(wanted), status::wrong);
    }
  }

  private void adopted(ValueMethod now) {
    status.done(Say.text("The stock is valued by {0} now.", PlanWords.inside(ValueMethodWords.name(now))));
    ask();
  }

  private void ask() {
    dayMessage.set(on.day().filter(day -> day.isAfter(studio.today())).map(_ -> Say.text("That day is yet to come.")).orElse(on.messageProperty().get()));
    answer.ask();
    judge();
  }

  private Optional<Underway.Errand<Found>> question() {
    Optional<LocalDate> day = on.day();
    Optional<ValueMethod> how = method.get();
    return dayMessage.get().isEmpty()
        ? Optional.of(progress -> new Found(value.stock(day, how, progress), ValueMethod.parse(settings.judgement().text(Setting.VALUE_METHOD))))
        : Optional.empty();
  }

  private void judge() {
    Optional<ValueMethod> inForce = answer.foundProperty().get().map(Found::inForce);
    adopt.judge(method.get().isEmpty() || method.get().equals(inForce) ? Say.text("This method is in force.") : "");
  }
}
