package hankbook.reckon;

import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import hankbook.plan.WorkKind;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What was found after the cloth of a plan was cut off. What is left of each skein that was drawn must be said before the book can be squared; of the rest
 * as much as was measured.
 *
 * @param date when the cloth was cut off; empty for today
 * @param leftovers one for each skein
 * @param thrums loom waste and trimmings
 * @param samples yarn used up in samples
 * @param warp as it was wound
 * @param cloth as it was woven
 * @param times spent, each at least zero
 * @param reason why what cannot be explained is accepted as it is; blank where it is not
 * @param note what else is to be remembered; may be blank
 */
public record Actuals(
    Optional<LocalDate> date, List<Leftover> leftovers, List<Bundle> thrums, List<Bundle> samples, WarpAsWound warp, ClothAsWoven cloth,
    Map<WorkKind, Duration> times, String reason, String note) {
  public Actuals {
    leftovers = List.copyOf(leftovers);
    thrums = List.copyOf(thrums);
    samples = List.copyOf(samples);
    Map<WorkKind, Duration> inOrder = new EnumMap<>(WorkKind.class);
    inOrder.putAll(times);
    times = Collections.unmodifiableMap(inOrder);
    Set<String> skeins = new HashSet<>();
    for (Leftover leftover : leftovers) {
      if (!skeins.add(leftover.skein())) {
        throw new Unreadable(leftover.skein(), "each skein once in the leftovers");
      }
    }
    times.forEach((kind, time) -> {
      if (time.isNegative()) {
        throw new Unreadable(time.toString(), Phrase.of("a time for {0} of at least zero", kind.key()));
      }
    });
  }

  /** The same, cut off on this day. */
  public Actuals dated(LocalDate day) {
    return new Actuals(Optional.of(day), leftovers, thrums, samples, warp, cloth, times, reason, note);
  }

  /** The same, with a reason why what cannot be explained is accepted. */
  public Actuals because(String why) {
    return new Actuals(date, leftovers, thrums, samples, warp, cloth, times, why, note);
  }
}
