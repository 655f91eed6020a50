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
  /** The shortest remnant that is worth weaving from; common practice. */
  private static final Length USEFUL_REMNANT = Length.metres(5);

  static YarnCheck of(YarnColour yarn, List<Need> needs, int threads, List<Skein> skeins) {
    List<Skein> measured = skeins.stream().filter(skein -> skein.measurement().length().isPresent()).toList();
    Length need = needs.stream().map(Need::length).reduce(Length.ZERO, Length::plus);
    Length free = measured.stream().map(Skein::holds).reduce(Length.ZERO, Length::plus);
    List<Share> shares = new ArrayList<>();
    boolean complete = allot(needs, measured, shares);
    Cover cover = new Cover(yarn, need, free, Uncertainty.of(measured), complete);
    List<Warning> warnings = new ArrayList<>(ShelfWarnings.of(yarn, skeins));
    warnings.addAll(new CoverWarnings(cover, needs, threads, skeins).all());
    mixedLots(yarn, shares, measured, warnings);
    return new YarnCheck(cover, List.copyOf(shares), List.copyOf(warnings));
  }

  private static boolean allot(List<Need> needs, List<Skein> skeins, List<Share> shares) {
    Map<String, Length> left = new HashMap<>();
    skeins.forEach(skein -> left.put(skein.code(), skein.holds()));
    List<Need> warps =
        needs.stream().filter(need -> need.role() == Need.Role.WARP).sorted(Comparator.comparing(Need::perThread).reversed()).toList();
    Length weft = needs.stream().filter(need -> need.role() == Need.Role.WEFT).map(Need::length).reduce(Length.ZERO, Length::plus);
    boolean complete = true;
    for (int i = 0; i < Math.max(1, warps.size()); i++) {
      boolean last = i >= warps.size() - 1;
      int ends = warps.isEmpty() ? 0 : Math.toIntExact(warps.get(i).threads());
      Length perEnd = warps.isEmpty() ? Length.ZERO : warps.get(i).perThread();
      Demand demand = new Demand(ends, perEnd, last ? weft : Length.ZERO, USEFUL_REMNANT);
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
