package hankbook.plan;

import java.text.Normalizer;
import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The names of plans. Two that differ in capitals alone are two names, and easily taken for one another. */
public final class PlanName {
  private static final Pattern NUMBERED = Pattern.compile("(.*\\S) [1-9]\\d{0,5}");

  private PlanName() {}

  /** Whether two names differ in nothing but capitals, or ways to write the same letter. */
  public static boolean alike(String one, String other) {
    return folded(one).equals(folded(other));
  }

  /** The name that is like another without being it, where there is one. */
  public static Optional<String> like(String name, Collection<String> taken) {
    return taken.contains(name) ? Optional.empty() : taken.stream().filter(other -> alike(name, other)).findFirst();
  }

  /** A name, or where it is taken the same with the first number behind it that makes it free. */
  public static String free(String wanted, Predicate<String> taken) {
    String name = wanted;
    for (int number = 2; taken.test(name); number++) {
      name = wanted + " " + number;
    }
    return name;
  }

  /** A free name for one more of the same: {@code Quay towels 2} for {@code Quay towels}, {@code Quay towels 3} for that. */
  public static String another(String of, Predicate<String> taken) {
    Matcher numbered = NUMBERED.matcher(of);
    String stem = numbered.matches() ? numbered.group(1) : of;
    return free(stem, name -> name.equals(stem) || taken.test(name));
  }

  private static String folded(String name) {
    return Normalizer.normalize(name.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT), Normalizer.Form.NFKC);
  }
}
