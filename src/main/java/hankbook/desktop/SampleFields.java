package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.Unreadable;
import hankbook.yarn.GristSample;
import java.util.Optional;
import java.util.stream.Stream;

/** What is typed of a sample of a yarn. The balance's division and how far the length may be off are proposed where nothing is typed. */
final class SampleFields {
  final Typed<Length> length = new Typed<>(Length::parse);
  final Typed<Mass> mass = new Typed<>(Mass::parse);
  final Typed<Mass> division = new Typed<>(Mass::parse);
  final Typed<Length> within = new Typed<>(Length::parse);

  /**
   * What it comes to.
   *
   * @param sample where there is one
   * @param whyNot why there is none, or empty
   */
  record Reading(Optional<GristSample> sample, String whyNot) {}

  /** Tells of every change. */
  void subscribe(Runnable changed) {
    all().forEach(field -> field.textProperty().subscribe(_ -> changed.run()));
  }

  void clear() {
    all().forEach(field -> field.set(""));
  }

  /** Whether something is typed that stands in no ledger yet. */
  boolean isBegun() {
    return all().anyMatch(field -> !field.isBlank());
  }

  private Stream<Typed<?>> all() {
    return Stream.of(length, mass, division, within);
  }

  Reading read() {
    Optional<String> bad = all().map(field -> field.messageProperty().get()).filter(message -> !message.isEmpty()).findFirst();
    if (bad.isPresent()) {
      return new Reading(Optional.empty(), bad.get());
    }
    if (length.value().isEmpty() || mass.value().isEmpty()) {
      return new Reading(Optional.empty(), length.value().isEmpty() ? Say.text("Type how long the sample is.") : Say.text("Type what it weighs."));
    }
    try {
      Length cut = length.value().get();
      return new Reading(Optional.of(new GristSample(cut, mass.value().get(), step(), within.value().orElseGet(() -> GristSample.usuallyWithin(cut)))), "");
    } catch (Unreadable unreadable) {
      return new Reading(Optional.empty(), Wording.wanted(unreadable));
    }
  }

  /** What is taken for the balance's division as long as none is typed, or empty. */
  String usualDivision() {
    try {
      return mass.value().isEmpty() ? "" : Mass.lastDigit(mass.textProperty().get()).toString();
    } catch (Unreadable tooFine) {
      return "";
    }
  }

  /** How far the length is taken to be off as long as nothing is typed, or empty. */
  String usualWithin() {
    return length.value().map(cut -> GristSample.usuallyWithin(cut).toString()).orElse("");
  }

  private Mass step() {
    return division.value().orElseGet(() -> Mass.lastDigit(mass.textProperty().get()));
  }
}
