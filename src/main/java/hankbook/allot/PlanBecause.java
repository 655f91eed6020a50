package hankbook.allot;

import hankbook.plan.Because;
import hankbook.plan.WarpBecause;
import hankbook.plan.WidthBecause;
import hankbook.yarn.Skein;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Every figure of a plan's answer, by its name in files; those of yarns and skeins in their order. */
public final class PlanBecause {
  /** The names of the figures, in their order. */
  public static final List<String> NAMES = List.of("width", "ends", "warp", "need", "free", "margin", "uncertainty", "risk", "skeins");

  private PlanBecause() {}

  /**
   * All figures of an answer.
   *
   * @param stock the skeins that the plan was held against
   */
  public static Map<String, List<Because>> of(PlanCheck check, List<Skein> stock) {
    WidthBecause width = WidthBecause.of(check.plan());
    List<CoverBecause> covers = check.covers().stream().map(cover -> CoverBecause.of(cover, check.plan(), stock)).toList();
    Map<String, List<Because>> figures = new LinkedHashMap<>();
    figures.put("width", List.of(width.inReed()));
    figures.put("ends", List.of(width.ends()));
    figures.put("warp", List.of(WarpBecause.of(check.plan()).total()));
    figures.put("need", each(covers, CoverBecause::need));
    figures.put("free", each(covers, CoverBecause::free));
    figures.put("margin", each(covers, CoverBecause::margin));
    figures.put("uncertainty", each(covers, CoverBecause::uncertainty));
    figures.put("risk", each(covers, CoverBecause::risk));
    figures.put("skeins", skeins(check, stock));
    return figures;
  }

  private static List<Because> each(List<CoverBecause> covers, Function<CoverBecause, Because> figure) {
    return covers.stream().map(figure).toList();
  }

  private static List<Because> skeins(PlanCheck check, List<Skein> stock) {
    List<Because> left = new ArrayList<>();
    for (Share share : check.shares()) {
      left.add(stock.stream().filter(skein -> skein.code().equals(share.code())).findFirst().map(skein -> SkeinBecause.left(share, skein)).orElseGet(() -> SkeinBecause.given(share)));
    }
    return left;
  }
}
