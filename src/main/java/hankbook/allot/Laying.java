package hankbook.allot;

import hankbook.plan.WoundEnd;
import hankbook.plan.Pass;
import hankbook.plan.WoundRun;
import hankbook.plan.Step;
import hankbook.plan.WarpRuns;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The passes of a warp and the skeins that feed them: with the most threads together, up to those wished, that the skeins allow. */
record Laying(List<Step> warp, List<Step> spare, List<Feed> feeds) {
  /** How the runs of a kind are cut into passes. */
  private record Cut(int threads, boolean evenly) {
    Step of(WoundRun run) {
      return Step.ofRun(run, threads, evenly);
    }
  }

  /** Each run by itself; each kind with the most threads that its own skeins allow. */
  static Laying byRun(WarpRuns runs, SkeinEnds given, int threads) {
    List<WoundRun> all = Stream.concat(runs.warp().stream(), runs.spare().stream()).toList();
    Map<WoundEnd, Cut> cuts = new HashMap<>();
    for (WoundEnd kind : kinds(all)) {
      List<WoundRun> ofKind = all.stream().filter(run -> run.kind().equals(kind)).toList();
      cuts.put(kind, widest(ofKind, given.of(kind), threads));
    }
    List<Step> warp = runs.warp().stream().map(run -> Objects.requireNonNull(cuts.get(run.kind())).of(run)).toList();
    List<Step> spare = runs.spare().stream().map(run -> Objects.requireNonNull(cuts.get(run.kind())).of(run)).toList();
    return feeding(warp, spare, given).orElseThrow(() -> new IllegalStateException("no skeins for " + cuts + ", wanted those of each kind by itself"));
  }

  private static Set<WoundEnd> kinds(List<WoundRun> runs) {
    Set<WoundEnd> kinds = new LinkedHashSet<>();
    runs.forEach(run -> kinds.add(run.kind()));
    return kinds;
  }

  /** The same number of threads in all passes but the last of a run is tried before spreading what is left. */
  private static Cut widest(List<WoundRun> runs, Map<String, Integer> given, int threads) {
    for (int held = threads; held > 1; held--) {
      for (Cut cut : List.of(new Cut(held, false), new Cut(held, true))) {
        if (feeding(runs.stream().map(cut::of).toList(), List.of(), runs.get(0).kind(), given).isPresent()) {
          return cut;
        }
      }
    }
    return new Cut(1, false);
  }

  /** The ends as they come; all kinds with the same number of threads together. */
  static Laying across(WarpRuns runs, SkeinEnds given, int threads) {
    for (int held = threads; ; held--) {
      Cut cut = new Cut(held, false);
      Optional<Laying> laying = feeding(Step.across(runs.warp(), held), runs.spare().stream().map(cut::of).toList(), given).filter(Laying::feedsEachThreadApart);
      if (laying.isPresent()) {
        return laying.get();
      }
    }
  }

  private static Optional<Laying> feeding(List<Step> warp, List<Step> spare, SkeinEnds given) {
    List<WoundRun> held = Stream.concat(warp.stream(), spare.stream()).flatMap(step -> step.passes().stream()).flatMap(pass -> pass.held().stream()).toList();
    List<Feed> feeds = new ArrayList<>();
    for (WoundEnd kind : kinds(held)) {
      Optional<Feed> feed = feeding(warp, spare, kind, given.of(kind));
      if (feed.isEmpty()) {
        return Optional.empty();
      }
      feeds.add(feed.get());
    }
    return Optional.of(new Laying(warp, spare, feeds));
  }

  private static Optional<Feed> feeding(List<Step> warp, List<Step> spare, WoundEnd kind, Map<String, Integer> given) {
    List<Pass> passes = Stream.concat(warp.stream(), spare.stream()).flatMap(step -> step.passes().stream()).toList();
    List<Integer> held = new ArrayList<>();
    List<Integer> numbers = new ArrayList<>();
    for (int i = 0; i < passes.size(); i++) {
      int ends = passes.get(i).ends(kind);
      if (ends > 0) {
        held.add(ends);
        numbers.add(i + 1);
      }
    }
    int[] ends = held.stream().mapToInt(Integer::intValue).toArray();
    int wanted = held.stream().mapToInt(Integer::intValue).sum();
    int unfed = wanted - given.values().stream().mapToInt(Integer::intValue).sum();
    int most = held.stream().mapToInt(Integer::intValue).max().orElse(0);
    Optional<List<Stint>> stints = unfed > 0 ? Optional.of(List.of()) : Feeding.of(ends, numbers.stream().mapToInt(Integer::intValue).toArray(), given);
    return stints.map(found -> new Feed(kind, wanted, ends.length, most, found, unfed));
  }

  /** Ends of two kinds, single and doubled, may come from one skein, but not in one pass. */
  private boolean feedsEachThreadApart() {
    List<Pass> passes = Stream.concat(warp.stream(), spare.stream()).flatMap(step -> step.passes().stream()).toList();
    for (int i = 0; i < passes.size(); i++) {
      Set<String> held = new HashSet<>();
      for (Feed feed : feeds) {
        if (passes.get(i).ends(feed.kind()) > 0 && !inPlace(feed, i + 1).stream().allMatch(held::add)) {
          return false;
        }
      }
    }
    return true;
  }

  private static Set<String> inPlace(Feed feed, int pass) {
    return feed.stints().stream().filter(stint -> stint.firstPass() <= pass && pass <= stint.lastPass()).map(Stint::skein).collect(Collectors.toSet());
  }
}
