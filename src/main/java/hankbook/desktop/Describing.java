package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.StockFile;
import hankbook.studio.Describe;
import hankbook.studio.SkeinFacts;
import hankbook.studio.Studio;
import hankbook.yarn.Skein;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.joda.money.Money;

/** Putting right what is said of the chosen skein beside its yarn and its metres; what was said before stays in the ledger. */
public final class Describing {
  private final Studio studio;
  private final Status status;
  private final Runnable after;
  private final Act act;
  private final StringProperty lot = new SimpleStringProperty("");
  private final Typed<Money> cost = new Typed<>(StockFile::money);
  private final TypedDay received = new TypedDay();
  private Optional<Skein> skein = Optional.empty();

  /** @param after what follows once it is written down */
  public Describing(Studio studio, Work work, Status status, Runnable after) {
    this.studio = studio;
    this.status = status;
    this.after = after;
    act = new Act(work);
    Stream.of(lot, cost.textProperty(), received.textProperty()).forEach(field -> field.subscribe(_ -> changed()));
  }

  Act act() {
    return act;
  }

  StringProperty lotProperty() {
    return lot;
  }

  Typed<Money> cost() {
    return cost;
  }

  TypedDay received() {
    return received;
  }

  /** What can be said anew of a skein. */
  private record Facts(String code, String lot, Optional<Money> cost, Optional<LocalDate> received) {
    static Facts of(Skein skein) {
      return new Facts(skein.code(), skein.lot(), skein.cost(), skein.received());
    }
  }

  /** Whether something is typed that stands in no ledger yet. */
  boolean isBegun() {
    return skein.isPresent() && (facts().saySomething() || !cost.messageProperty().get().isEmpty() || !received.messageProperty().get().isEmpty());
  }

  /** Turns to a skein, or to none; what was typed and not written down stays as long as it is the same skein and nothing else is said of it. */
  void turnTo(Optional<SkeinRow> row) {
    Optional<Skein> now = row.map(SkeinRow::skein);
    boolean same = now.map(Facts::of).equals(skein.map(Facts::of));
    skein = now;
    if (!same) {
      fill();
    }
    changed();
  }

  private void fill() {
    lot.set(skein.map(Skein::lot).orElse(""));
    cost.set(skein.flatMap(Skein::cost).map(money -> money.getAmount() + " " + money.getCurrencyUnit()).orElse(""));
    received.textProperty().set(skein.flatMap(Skein::received).map(LocalDate::toString).orElse(""));
  }

  /** Writes it down. */
  void write() {
    if (act.isPossible()) {
      String code = skein.orElseThrow().code();
      SkeinFacts facts = facts();
      act.attempt(_ -> new Describe(studio).skeins(List.of(code), facts), () -> {}, () -> written(code), status::wrong);
    }
  }

  private void written(String code) {
    status.done(Say.text("Wrote down what was changed of {0}.", code));
    after.run();
  }

  /** What is said otherwise than before. */
  private SkeinFacts facts() {
    return new SkeinFacts(
        Optional.of(lot.get().strip()).filter(text -> !Optional.of(text).equals(skein.map(Skein::lot))), Optional.empty(),
        cost.value().filter(money -> !Optional.of(money).equals(skein.flatMap(Skein::cost))),
        received.day().filter(day -> !Optional.of(day).equals(skein.flatMap(Skein::received))));
  }

  private void changed() {
    act.renew();
    act.judge(whyNot());
  }

  private String whyNot() {
    if (skein.isEmpty()) {
      return Say.text("Choose a skein.");
    }
    Optional<String> bad = Stream.of(cost.messageProperty(), received.messageProperty()).map(message -> message.get()).filter(message -> !message.isEmpty()).findFirst();
    return bad.orElseGet(() -> facts().saySomething() ? "" : Say.text("So it is said already; change what was wrong."));
  }
}
