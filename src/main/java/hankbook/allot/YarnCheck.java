package hankbook.allot;

import hankbook.measure.Length;
import hankbook.plan.Need;
import hankbook.yarn.Skein;
import hankbook.yarn.Uncertainty;
import hankbook.yarn.YarnColour;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * One yarn of a plan held against the skeins that are free. Ends of several kinds (single and doubled) are allotted kind by kind, the
 * longest thread first, each from what the kinds before it left.
 *
 * @param cover need against free
 * @param shares which skein gives what
 * @param warnings what the weaver should know
 */
record YarnCheck(Cover cover, List<Share> shares, List<Warning> warnings) {
  static YarnCheck of(YarnColour yarn, List<Need> needs, int threads, List<Skein> skeins, Judgement judgement) {
    List<Skein> measured = measured(skeins);
    List<Share> shares = new ArrayList<>();
    boolean complete = allot(needs, measured, judgement.usefulRemnant(), shares);
    Cover cover = new Cover(yarn, need(needs), free(measured), Uncertainty.of(measured, judgement.doubts()), complete, judgement.percentage(Setting.RISK_LIMIT));
    List<Warning> warnings = new ArrayList<>(ShelfWarnings.of(yarn, skeins));
    warnings.addAll(new CoverWarnings(cover, needs, threads, skeins, judgement.usefulRemnant()).all());
    mixedLots(yarn, shares, measured, warnings);
    return new YarnCheck(cover, List.copyOf(shares), List.copyOf(warnings));
  }

  /** Whether a check of these needs would say short, without choosing the skeins where that is not needed to tell. */
  static boolean isShort(List<Need> needs, List<Skein> skeins, Length usefulRemnant) {
    List<Skein> measured = measured(skeins);
    if (free(measured).compareTo(need(needs)) < 0) {
      return true;
    }
    List<Demand> demands = demands(needs, usefulRemnant);
    return demands.size() == 1 ? !Allotting.covers(candidates(measured, whole(measured)), demands.get(0)) : !allot(needs, measured, usefulRemnant, new ArrayList<>());
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

  private static Map<String, Length> whole(List<Skein> skeins) {
    Map<String, Length> whole = new HashMap<>();
    skeins.forEach(skein -> whole.put(skein.code(), skein.holds()));
    return whole;
  }

  /** A demand for each kind of end, the longest thread first; the weft comes with the last, alone where there is no warp. */
  private static List<Demand> demands(List<Need> needs, Length usefulRemnant) {
    List<Need> warps =
        needs.stream().filter(need -> need.role() == Need.Role.WARP).sorted(Comparator.comparing(Need::perThread).reversed()).toList();
    Length weft = need(needs.stream().filter(need -> need.role() == Need.Role.WEFT).toList());
    if (warps.isEmpty()) {
      return List.of(new Demand(0, Length.ZERO, weft, usefulRemnant));
    }
    List<Demand> demands = new ArrayList<>();
    for (Need warp : warps) {
      Length beside = demands.size() == warps.size() - 1 ? weft : Length.ZERO;
      demands.add(new Demand(Math.toIntExact(warp.threads()), warp.perThread(), beside, usefulRemnant));
    }
    return demands;
  }

  private static boolean allot(List<Need> needs, List<Skein> skeins, Length usefulRemnant, List<Share> shares) {
    Map<String, Length> left = whole(skeins);
    boolean complete = true;
    for (Demand demand : demands(needs, usefulRemnant)) {
      Allotment allotment = Allotting.best(candidates(skeins, left), demand);
      complete &= allotment.complete();
      for (Share share : allotment.shares()) {
        left.merge(share.code(), share.warp().plus(share.weft()), Length::minus);
        shares.add(share);
      }
    }
    return complete;
  }

  private static List<Candidate> candidates(List<Skein> skeins, Map<String, Length> left) {
    return skeins.stream()
        .map(
            skein -> {
              Length free = left.getOrDefault(skein.code(), Length.ZERO);
              boolean opened = skein.opened() || free.compareTo(skein.holds()) < 0;
              return new Candidate(skein.code(), skein.lot(), opened, free, skein.received().orElse(LocalDate.MAX));
            })
        .toList();
  }

  private static void mixedLots(YarnColour yarn, List<Share> shares, List<Skein> skeins, List<Warning> warnings) {
    Map<String, String> lots = new HashMap<>();
    skeins.forEach(skein -> lots.put(skein.code(), skein.lot()));
    Set<String> inWarp = new HashSet<>();
    shares.stream().filter(share -> share.ends() > 0).forEach(share -> inWarp.add(lots.getOrDefault(share.code(), "")));
    if (inWarp.size() > 1) {
      List<String> named = inWarp.stream().map(lot -> lot.isEmpty() ? "unknown" : lot).sorted().toList();
      warnings.add(new Warning(Warning.Code.MIXED_LOTS, yarn, yarn + ": the warp takes more than one dye lot: " + String.join(", ", named) + "."));
    }
  }
}
