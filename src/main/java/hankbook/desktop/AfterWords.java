package hankbook.desktop;

import hankbook.exchange.BadInput;
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
    return "Squared the book of " + finishing.plan() + ": " + Wording.metres(sum(finishing, SkeinUse::used)) + " used, "
        + Wording.metres(sum(finishing, SkeinUse::returned)) + " back on the shelf; its loom is empty.";
  }

  private static Length sum(Finishing finishing, Function<SkeinUse, Length> part) {
    return finishing.squared().skeins().stream().map(part).reduce(Length.ZERO, Length::plus);
  }

  /** What of a yarn cannot be explained, and whether that is much. */
  static String unexplained(UsedAgainstPlan yarn) {
    Length amount = Length.max(yarn.unexplained(), yarn.unexplained().negated());
    if (amount.isZero()) {
      return "All of it is explained.";
    }
    String what = Wording.metres(amount) + (yarn.unexplained().isNegative() ? " less" : " more") + " than can be explained";
    return yarn.wantsReason() ? what + "; up to " + Wording.metres(yarn.mayStay()) + " may stay so without a reason." : what + ", which may stay so.";
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
    return refused.field().map(fault -> place(fault.field()) + (fault.found().isBlank() ? " is still wanted: " : " reads '" + fault.found() + "', wanted ") + fault.wanted() + ".")
        .orElseGet(() -> PlanWords.why(refused, plan));
  }

  /** Where a field stands: {@code Length wound}, {@code Thrums 2}. */
  private static String place(String path) {
    Optional<String> measured = Arrays.stream(FoundField.values()).filter(field -> path.equals(field.part().key() + "." + field.key())).map(FoundField::caption).findFirst();
    return measured.orElseGet(() -> begin(path.replaceFirst("\\[(\\d+)].*", " $1").replaceFirst("^hours\\.(.*)", "$1, hours")));
  }

  /** With a great letter at its beginning. */
  static String begin(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
