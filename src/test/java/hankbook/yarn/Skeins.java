package hankbook.yarn;

import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.YarnNumber;
import java.util.Optional;

/** Skeins of an invented yarn of 100 tex, by how they were measured. */
final class Skeins {
  private Skeins() {}

  static Skein weighed(String code, String lot) {
    return of(code, lot, new Measures(Optional.empty(), Optional.empty(), Optional.of(new Weighing(Mass.grams(110), Mass.grams(10)))));
  }

  static Skein labelled(String code, long grams) {
    return of(code, "A", new Measures(Optional.of(Length.metres(grams * 10)), Optional.empty(), Optional.empty()));
  }

  static Skein counted(String code, int turns) {
    return of(code, "A", new Measures(Optional.empty(), Optional.of(new Turns(turns, Length.metres(2))), Optional.empty()));
  }

  static Skein of(String code, String lot, Measures measures) {
    return new Skein(
        code, new YarnColour("Fjara", "Ash"), "", "wool", Optional.of(YarnNumber.parse("tex 100")), PackageForm.CONE, measures.label(), measures.turns(),
        measures.weighing(), false, lot, "", Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
  }
}
