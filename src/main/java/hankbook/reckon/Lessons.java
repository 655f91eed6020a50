package hankbook.reckon;

import hankbook.measure.Exact;
import hankbook.yarn.YarnColour;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** What one finished cloth teaches. */
public final class Lessons {
  private final Made made;
  private final Manner manner;
  private final List<Lesson> lessons = new ArrayList<>();

  private Lessons(Made made) {
    this.made = made;
    this.manner = Manner.of(made.plan(), this::fibre);
  }

  /**
   * What it teaches, as far as what was measured tells it: how it really was, whatever its plan had allowed.
   *
   * @throws hankbook.measure.Unreadable if the plan does not add up, or the ends counted are no more than its selvedges
   */
  public static List<Lesson> of(Made made) {
    Lessons lessons = new Lessons(made);
    Realised realised = Realised.of(made);
    realised.ways().forEach((way, found) -> lessons.add(Learnable.of(way), found.value()));
    realised.loomWaste().ifPresent(found -> lessons.add(Learnable.LOOM_WASTE, found.value().exactTenths()));
    realised.times().forEach((kind, found) -> lessons.add(Learnable.time(kind), seconds(found.value())));
    return List.copyOf(lessons.lessons);
  }

  private void add(Learnable which, BigFraction value) {
    lessons.add(new Lesson(made.plan().name(), made.actuals().date(), manner, which, value));
  }

  private String fibre(YarnColour yarn) {
    return made.used().stream().filter(used -> used.yarn().equals(yarn)).map(YarnUsed::fibre).findFirst().orElse("");
  }

  private static BigFraction seconds(Duration time) {
    return Exact.of(BigDecimal.valueOf(time.getSeconds()).add(BigDecimal.valueOf(time.getNano(), 9)));
  }
}
