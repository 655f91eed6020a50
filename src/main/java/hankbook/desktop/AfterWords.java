package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.BadInput;
import hankbook.exchange.Fault;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.reckon.SkeinUse;
import hankbook.studio.Finishing;
import hankbook.studio.UsedAgainstPlan;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;

/** What is said of finished cloths. */
final class AfterWords {
  private AfterWords() {}

  /** What squaring the book came to. */
  static String squared(Finishing finishing) {
    return Say.text("Squared the book of {0}: {1} used, {2} back on the shelf; its loom is empty.", finishing.plan(),
        Wording.metres(sum(finishing, SkeinUse::used)), Wording.metres(sum(finishing, SkeinUse::returned)));
  }

  private static Length sum(Finishing finishing, Function<SkeinUse, Length> part) {
    return finishing.squared().skeins().stream().map(part).reduce(Length.ZERO, Length::plus);
  }

  /** What of a yarn cannot be explained, and whether that is much. */
  static String unexplained(UsedAgainstPlan yarn) {
    Length amount = Length.max(yarn.unexplained(), yarn.unexplained().negated());
    if (amount.isZero()) {
      return Say.text("All of it is explained.");
    }
    String metres = Wording.metres(amount);
    boolean less = yarn.unexplained().isNegative();
    if (!yarn.wantsReason()) {
      return less ? Say.text("{0} less than can be explained, which may stay so.", metres) : Say.text("{0} more than can be explained, which may stay so.", metres);
    }
    String may = Wording.metres(yarn.mayStay());
    return less
        ? Say.text("{0} less than can be explained; up to {1} may stay so without a reason.", metres, may)
        : Say.text("{0} more than can be explained; up to {1} may stay so without a reason.", metres, may);
  }

  /** More or less of something, with its sign; a zero without. */
  static String signed(Length length) {
    String metres = Wording.metres(length.isNegative() ? length.negated() : length);
    return length.isZero() ? metres : (length.isNegative() ? "−" : "+") + metres;
  }

  /** Centimetres or metres, whichever reads better. */
  static String fine(Length length) {
    return length.compareTo(Length.metres(1)) < 0 ? length.print(LengthUnit.CENTIMETRE, 1) : length.print(LengthUnit.METRE, 2);
  }

  /** Why what was found cannot be taken as it is. */
  static String why(BadInput refused, String plan) {
    return refused.field().map(fault -> said(fault)).orElseGet(() -> PlanWords.why(refused, plan));
  }

  private static String said(Fault fault) {
    String wanted = Say.known(fault.wanted());
    return fault.found().isBlank()
        ? Say.text("{0} is still wanted: {1}.", place(fault.field()), wanted)
        : Say.text("{0} reads '{1}', wanted {2}.", place(fault.field()), fault.found(), wanted);
  }

  /** Where a field stands: {@code Length wound}, {@code Thrums 2}. */
  private static String place(String path) {
    Optional<String> measured = Arrays.stream(FoundField.values()).filter(field -> path.equals(field.part().key() + "." + field.key())).map(FoundField::caption).findFirst();
    return measured.orElseGet(() -> unmeasured(path));
  }

  private static String unmeasured(String path) {
    if (path.startsWith("hours.")) {
      return Say.text("{0}, hours", begin(Say.known(path.substring("hours.".length()))));
    }
    String[] parts = path.replaceFirst("\\[(\\d+)].*", " $1").split(" ", 2);
    String part = begin(Say.known(parts[0]));
    return parts.length == 1 ? part : part + " " + parts[1];
  }

  /** With a great letter at its beginning. */
  static String begin(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
