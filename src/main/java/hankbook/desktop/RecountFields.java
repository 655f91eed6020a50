package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.measure.Arithmetic;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.Percentage;
import hankbook.measure.Unreadable;
import hankbook.yarn.Measures;
import hankbook.yarn.PackageForm;
import hankbook.yarn.Regain;
import hankbook.yarn.Skein;
import hankbook.yarn.Turns;
import hankbook.yarn.Weighing;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;

/** What is typed of a skein that is measured again, and what length that comes to. */
final class RecountFields {
  final ObjectProperty<RecountWay> way = new SimpleObjectProperty<>(RecountWay.LENGTH);
  final Typed<Length> found = new Typed<>(Length::parse);
  final Typed<Mass> gross = new Typed<>(Mass::parse);
  final Typed<Mass> tare = new Typed<>(Mass::parse);
  final Typed<Percentage> regain = new Typed<>(Percentage::parse);
  final Typed<Integer> turns = new Typed<>(Arithmetic::count);
  final Typed<Length> reel = new Typed<>(Length::parse);

  /**
   * What was found.
   *
   * @param length of the whole skein; empty where that is not known yet
   * @param measures how it was found, or nothing where it was given outright
   * @param whyNot why no length is known, or empty
   */
  record Found(Optional<Length> length, Measures measures, String whyNot) {
    private static Found none(String whyNot) {
      return new Found(Optional.empty(), Measures.NONE, whyNot);
    }
  }

  /** Tells of every change. */
  void subscribe(Runnable changed) {
    way.subscribe(_ -> changed.run());
    Stream.of(found, gross, tare, regain, turns, reel).forEach(field -> field.textProperty().subscribe(_ -> changed.run()));
  }

  /** Empties them, but for what the skein is wound on and the reel it was counted on, which stay the same. */
  void begin(Optional<Skein> skein) {
    Stream.of(found, gross, regain, turns).forEach(field -> field.set(""));
    Optional<Measures> before = skein.map(Skein::measures);
    tare.set(before.flatMap(Measures::weighing).map(weighing -> weighing.tare().toString()).orElse(""));
    reel.set(before.flatMap(Measures::turns).map(counted -> counted.reel().toString()).orElse(""));
  }

  /** Whether something is typed that stands in no ledger yet. */
  boolean isBegun() {
    return Stream.of(found, gross, regain, turns).anyMatch(field -> !field.isBlank());
  }

  /** What is found of a skein by what is typed. */
  Found found(Skein skein) {
    Optional<String> bad = typed().map(field -> field.messageProperty().get()).filter(message -> !message.isEmpty()).findFirst();
    if (bad.isPresent()) {
      return Found.none(bad.get());
    }
    try {
      return switch (way.get()) {
        case LENGTH -> found.value().map(length -> new Found(Optional.of(length), Measures.NONE, "")).orElseGet(() -> Found.none(Say.text("Type what it measures now.")));
        case WEIGHT -> weighed(skein);
        case TURNS -> counted(skein);
      };
    } catch (Unreadable unreadable) {
      return Found.none(Wording.wanted(unreadable));
    }
  }

  /** The fields of the way that is chosen. */
  private Stream<Typed<?>> typed() {
    return switch (way.get()) {
      case LENGTH -> Stream.of(found);
      case WEIGHT -> Stream.of(gross, tare, regain);
      case TURNS -> Stream.of(turns, reel);
    };
  }

  private Found weighed(Skein skein) {
    boolean wound = skein.form() == PackageForm.CONE || skein.form() == PackageForm.SPOOL;
    if (gross.value().isEmpty()) {
      return Found.none(Say.text("Type what it weighs now."));
    }
    if (tare.isBlank() && wound) {
      return Found.none(Say.text("Type what the empty {0} weighs, 0 g where there is none.", Say.known(skein.form().toString())));
    }
    if (!regain.isBlank() && Regain.standard(skein.fibre()).isEmpty()) {
      return Found.none(Say.text("The usual moisture of its fibre is not known; leave the moisture out."));
    }
    Weighing weighing = new Weighing(gross.value().get(), tare.value().orElse(Mass.ZERO), regain.value());
    Found weighed = measured(skein, new Measures(Optional.empty(), Optional.empty(), Optional.of(weighing)));
    return weighed.length().isPresent() ? weighed : Found.none(Say.text("No grist of it is known: weigh a sample of the yarn first, or type its length."));
  }

  private Found counted(Skein skein) {
    if (turns.value().isEmpty() || reel.value().isEmpty()) {
      return Found.none(turns.value().isEmpty() ? Say.text("Type how many turns it has.") : Say.text("Type how long one turn is."));
    }
    return measured(skein, new Measures(Optional.empty(), Optional.of(new Turns(turns.value().get(), reel.value().get())), Optional.empty()));
  }

  private static Found measured(Skein skein, Measures measures) {
    return new Found(measures.measurement(skein.grist(), skein.sample(), skein.fibre()).length(), measures, "");
  }
}
