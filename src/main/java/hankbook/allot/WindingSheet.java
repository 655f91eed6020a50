package hankbook.allot;

import hankbook.measure.Length;
import hankbook.plan.Bout;
import hankbook.plan.WoundEnd;
import hankbook.plan.Pass;
import hankbook.plan.Step;
import hankbook.plan.WarpRuns;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What to have beside the warping board or mill: the passes in the order of the warp, which skein feeds which thread and where it gives out,
 * and where to take off a bout.
 *
 * @param check the plan and the skeins that serve it
 * @param wish how the weaver likes to wind
 * @param warp the passes of the warp, in its order
 * @param spare the passes of the repair ends, wound last and by themselves
 * @param feeds how each kind of end comes from its skeins, in the order of the warp
 * @param bouts of the warp
 */
public record WindingSheet(PlanCheck check, WindingWish wish, List<Step> warp, List<Step> spare, List<Feed> feeds, List<Bout> bouts) {
  public WindingSheet {
    warp = List.copyOf(warp);
    spare = List.copyOf(spare);
    feeds = List.copyOf(feeds);
    bouts = List.copyOf(bouts);
  }

  /**
   * The sheet for a plan that was held against skeins. Where a yarn cannot be wound so many threads together from the skeins it is allotted, it
   * is wound with the most that can.
   *
   * @param stock the skeins it was held against
   * @throws hankbook.measure.Unreadable if a pass there and back does not fit into a bout
   */
  public static WindingSheet of(PlanCheck check, List<Skein> stock, WindingWish wish) {
    WarpRuns runs = WarpRuns.of(check.plan(), check.yardage());
    SkeinEnds given = SkeinEnds.of(check.shares(), stock);
    Laying laying = wish.across() ? Laying.across(runs, given, wish.threads()) : Laying.byRun(runs, given, wish.threads());
    return new WindingSheet(check, wish, laying.warp(), laying.spare(), laying.feeds(), Bout.of(passes(laying.warp()), wish.bout()));
  }

  private static List<Pass> passes(List<Step> steps) {
    return steps.stream().flatMap(step -> step.passes().stream()).toList();
  }

  /** How often the weaver goes along the warping path, for the spare ends too. */
  public int passes() {
    return passes(warp).size() + passes(spare).size();
  }

  /** All ends that are wound, the spare ones too. */
  public int ends() {
    return feeds.stream().mapToInt(Feed::ends).sum();
  }

  /** All the yarn that is wound. */
  public Length length() {
    return feeds.stream().map(Feed::length).reduce(Length.ZERO, Length::plus);
  }

  /** The yarn that is wound, by yarn. */
  public Map<YarnColour, Length> lengths() {
    return feeds.stream().collect(Collectors.toMap(feed -> feed.kind().yarn(), Feed::length, Length::plus, LinkedHashMap::new));
  }

  /** The whole groups of the counting thread in a bout, and the ends over. */
  public Counted counted(Bout bout) {
    return new Counted(bout.ends() / wish.group(), bout.ends() % wish.group());
  }

  /** Whole groups and the ends over. */
  public record Counted(int groups, int over) {}

  /** Whether fewer threads are held together where these ends lie than was wished, though there are ends enough: the skeins do not allow more. */
  public boolean fewerThanWished(Feed feed) {
    List<Step> laying = Stream.concat(warp.stream(), spare.stream()).filter(step -> step.passes().get(0).ends(feed.kind()) > 0).toList();
    int sideBySide = wish.across() ? warp.stream().mapToInt(Step::ends).sum() : laying.stream().mapToInt(Step::ends).max().orElse(0);
    int held = passes(laying).stream().mapToInt(Pass::ends).max().orElse(0);
    return held < Math.min(wish.threads(), sideBySide);
  }
}
