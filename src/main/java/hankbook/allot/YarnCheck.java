package hankbook.allot;

import hankbook.measure.Length;
import hankbook.plan.Need;
import hankbook.yarn.Skein;
import hankbook.yarn.Uncertainty;
import hankbook.yarn.YarnColour;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * One yarn of a plan held against the skeins that are free, its ends of every kind and its weft together.
 *
 * @param cover need against free
 * @param shares which skein gives what
 * @param warnings what the weaver should know
 */
record YarnCheck(Cover cover, List<Share> shares, List<Warning> warnings) {
  static YarnCheck of(YarnColour yarn, List<Need> needs, int threads, List<Skein> skeins, Judgement judgement, List<Uncertainty.Part> ofNeed) {
    List<Skein> measured = measured(skeins);
    Demand demand = demand(needs, threads, judgement.usefulRemnant());
    Allotment allotment = Allotting.best(candidates(measured), demand);
    Uncertainty doubt = Uncertainty.of(measured, judgement.doubts()).with(ofNeed);
    Cover cover = new Cover(yarn, need(needs), free(measured), doubt, allotment.complete(), judgement.percentage(Setting.RISK_LIMIT));
    List<Warning> warnings = new ArrayList<>(ShelfWarnings.of(yarn, skeins));
    warnings.addAll(new CoverWarnings(cover, judgement.usefulRemnant()).all());
    warnings.addAll(new AllotmentWarnings(yarn, demand, allotment, measured).all());
    return new YarnCheck(cover, allotment.shares(), List.copyOf(warnings));
  }

  /** Whether a check of these needs would say short, without choosing the skeins. */
  static boolean isShort(List<Need> needs, List<Skein> skeins, Length usefulRemnant, Effort effort) {
    List<Skein> measured = measured(skeins);
    return free(measured).compareTo(need(needs)) < 0 || !Allotting.covers(candidates(measured), demand(needs, 1, usefulRemnant), effort);
  }

  private static List<Skein> measured(List<Skein> skeins) {
    return skeins.stream().filter(Skein::isMeasured).toList();
  }

  private static Length need(List<Need> needs) {
    return needs.stream().map(Need::length).reduce(Length.ZERO, Length::plus);
  }

  private static Length free(List<Skein> measured) {
    return measured.stream().map(Skein::holds).reduce(Length.ZERO, Length::plus);
  }

  private static Demand demand(List<Need> needs, int threads, Length usefulRemnant) {
    List<EndKind> kinds =
        needs.stream()
            .filter(need -> need.role() == Need.Role.WARP)
            .map(need -> new EndKind(Math.toIntExact(need.threads()), need.perThread(), need.oneLot()))
            .toList();
    List<Need> wefts = needs.stream().filter(need -> need.role() == Need.Role.WEFT).toList();
    return new Demand(kinds, need(wefts), wefts.stream().anyMatch(Need::oneLot), usefulRemnant, threads);
  }

  private static List<Candidate> candidates(List<Skein> skeins) {
    return skeins.stream()
        .map(skein -> new Candidate(skein.code(), skein.lot(), skein.opened(), skein.holds(), skein.received().orElse(LocalDate.MAX)))
        .toList();
  }
}
