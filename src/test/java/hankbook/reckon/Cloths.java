package hankbook.reckon;

import hankbook.gear.Weave;
import hankbook.measure.Length;
import hankbook.measure.Percentage;
import hankbook.yarn.FibreFamily;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/** Finished cloths of an invented studio, and what they taught. */
final class Cloths {
  static final Weave TWILL = Weave.parse("2/2 twill");
  static final Manner WOOL_TWILL = new Manner(Optional.of("Window loom"), Optional.of(TWILL), Set.of(FibreFamily.WOOL));
  static final Manner COTTON_TWILL = new Manner(Optional.of("Table loom"), Optional.of(TWILL), Set.of(FibreFamily.COTTON));
  static final Manner WOOL_PLAIN = new Manner(Optional.of("Table loom"), Optional.of(Weave.PLAIN), Set.of(FibreFamily.WOOL));

  private Cloths() {}

  /** Percentages of one thing, of cloths named a, b, c … */
  static List<Lesson> percent(Learnable which, Manner manner, String... percentages) {
    List<Lesson> lessons = new ArrayList<>();
    for (String percentage : percentages) {
      lessons.add(lesson(which, manner, lessons.size(), Percentage.parse(percentage + " %").fraction()));
    }
    return lessons;
  }

  /** Lengths of loom waste, of cloths named a, b, c … */
  static List<Lesson> waste(Manner manner, String... lengths) {
    List<Lesson> lessons = new ArrayList<>();
    for (String length : lengths) {
      lessons.add(lesson(Learnable.LOOM_WASTE, manner, lessons.size(), Length.parse(length).exactTenths()));
    }
    return lessons;
  }

  static Lesson lesson(Learnable which, Manner manner, int number, BigFraction value) {
    return new Lesson(Character.toString('a' + number), Optional.empty(), manner, which, value);
  }

  static Findings findings(List<List<Lesson>> lessons) {
    return new Findings(lessons.stream().flatMap(List::stream).toList());
  }
}
