package hankbook.allot;

import hankbook.plan.Amount;
import hankbook.plan.Because;
import hankbook.plan.Combined;
import hankbook.plan.Pass;
import hankbook.plan.Step;
import hankbook.plan.Term;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Why a warp takes so many passes along the warping path. */
public final class PassesBecause {
  private PassesBecause() {}

  /** Stretches that are wound alike. */
  private record Alike(int ends, int held) {
    static Alike of(Step step) {
      return new Alike(step.ends(), step.passes().stream().mapToInt(Pass::ends).max().orElseThrow());
    }

    Because passes() {
      Because exact = Because.made(
          Term.PASSES_EXACT, Amount.Count::new, Combined.QUOTIENT, Because.given(Term.STRETCH_ENDS, Amount.Count.of(ends)), Because.given(Term.THREADS, Amount.Count.of(held)));
      return Because.made(Term.PASSES_OF_STEP, Amount.Count::new, Combined.WHOLE, exact);
    }
  }

  /** All passes of a sheet, those of the repair ends too. */
  public static Because of(WindingSheet sheet) {
    List<Because> parts = new ArrayList<>(alike(sheet.warp(), Term.PASSES_OF_STRETCHES));
    parts.addAll(alike(sheet.spare(), Term.SPARE_PASSES));
    return Because.sum(Term.PASSES, "", Amount.Count::new, parts);
  }

  private static List<Because> alike(List<Step> steps, Term term) {
    Map<Alike, Integer> times = new LinkedHashMap<>();
    steps.forEach(step -> times.merge(Alike.of(step), 1, Integer::sum));
    List<Because> parts = new ArrayList<>();
    times.forEach((alike, often) -> parts.add(Because.made(
        term, "", Amount.Count::new, Combined.PRODUCT, List.of(Because.given(Term.STRETCHES, Amount.Count.of(often)), alike.passes()))));
    return parts;
  }
}
