package hankbook.allot;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.measure.Length;
import hankbook.measure.Sett;
import hankbook.plan.Allowances;
import hankbook.plan.Bout;
import hankbook.plan.OrderEntry;
import hankbook.plan.Pass;
import hankbook.plan.Plan;
import hankbook.plan.Step;
import hankbook.plan.Warp;
import hankbook.yarn.PackageForm;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

class WindingSheetProperties {
  private static final int MOST_SKEINS = 4;

  @Property(tries = 200, seed = "20261211")
  void everyEndIsWoundOnceInTheOrderOfTheWarpAndNoSkeinFeedsTwoThreadsInOnePass(
      @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 1, max = 9) Integer> runs,
      @ForAll @Size(min = 1, max = MOST_SKEINS) List<@IntRange(min = 4, max = 30) Integer> holds,
      @ForAll @IntRange(min = 1, max = 4) int threads,
      @ForAll boolean across) {
    List<Skein> skeins = skeins(holds);
    PlanCheck check = Plainly.check(plan(runs, threads), skeins);
    WindingSheet sheet = WindingSheet.of(check, skeins, new WindingWish(threads, across, 8, 20));
    List<Pass> passes = sheet.warp().stream().map(Step::passes).flatMap(List::stream).toList();
    int ends = runs.stream().mapToInt(Integer::intValue).sum();
    assertThat(passes.stream().mapToInt(Pass::ends).sum()).isEqualTo(ends);
    assertThat(passes).allMatch(pass -> pass.ends() <= threads);
    assertThat(sheet.bouts().stream().mapToInt(Bout::ends).sum()).isEqualTo(ends);
    for (Feed feed : sheet.feeds()) {
      assertThat(feed.ends()).isEqualTo(passes.stream().mapToInt(pass -> pass.ends(feed.kind())).sum());
      assertFed(feed, passes);
    }
    if (!check.isShort()) {
      assertThat(given(sheet)).isEqualTo(allotted(check));
    }
  }

  /** In each pass as many different positions and skeins as it holds ends of the kind. */
  private static void assertFed(Feed feed, List<Pass> passes) {
    Set<String> perPass = new HashSet<>();
    int ends = 0;
    for (int i = 0; i < feed.stints().size(); i++) {
      Stint stint = feed.stints().get(i);
      ends += stint.ends();
      for (Stint other : feed.stints().subList(0, i)) {
        boolean apart = stint.lastPass() < other.firstPass() || other.lastPass() < stint.firstPass();
        boolean share = stint.position() == other.position() || stint.skein().equals(other.skein());
        assertThat(apart || !share).isTrue();
      }
      perPass.add(stint.skein());
    }
    assertThat(ends).isEqualTo(feed.unfed() > 0 ? 0 : feed.ends());
    assertThat(perPass.size()).isGreaterThanOrEqualTo(feed.unfed() > 0 ? 0 : passes.stream().mapToInt(pass -> pass.ends(feed.kind())).max().orElse(0));
  }

  private static Map<String, Integer> given(WindingSheet sheet) {
    Map<String, Integer> given = new HashMap<>();
    sheet.feeds().forEach(feed -> feed.stints().forEach(stint -> given.merge(stint.skein(), stint.ends(), Integer::sum)));
    return given;
  }

  private static Map<String, Integer> allotted(PlanCheck check) {
    Map<String, Integer> allotted = new HashMap<>();
    check.shares().forEach(share -> allotted.merge(share.code(), share.ends(), Integer::sum));
    return allotted;
  }

  private static Plan plan(List<Integer> runs, int threads) {
    List<OrderEntry> order = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      order.add(new OrderEntry(yarn(i % 2), new OrderEntry.Ends(runs.get(i)), 1));
    }
    int ends = runs.stream().mapToInt(Integer::intValue).sum();
    Warp warp = new Warp(Sett.perInch(20), OptionalInt.of(ends), Optional.of(Length.metres(5)), 1, 0, order);
    return new Plan("Winding", List.of(), warp, List.of(), Allowances.NONE, threads);
  }

  private static List<Skein> skeins(List<Integer> holds) {
    List<Skein> skeins = new ArrayList<>();
    for (int i = 0; i < holds.size(); i++) {
      for (int colour = 0; colour < 2; colour++) {
        skeins.add(new Skein(
            "S" + colour + i, yarn(colour), "", "", Optional.empty(), PackageForm.CONE, Optional.of(Length.metres(5L * holds.get(i))), Optional.empty(), false, "L1", "",
            Optional.empty(), Optional.empty(), Optional.empty()));
      }
    }
    return skeins;
  }

  private static YarnColour yarn(int colour) {
    return new YarnColour("Skerry", colour == 0 ? "Chalk" : "Woad");
  }
}
