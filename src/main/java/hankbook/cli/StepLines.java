package hankbook.cli;

import hankbook.measure.LengthUnit;
import hankbook.plan.Pass;
import hankbook.plan.Step;
import hankbook.plan.WoundEnd;
import hankbook.plan.WoundRun;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The passes of a warp as lines; what comes again and again is written once.
 *
 * @param steps in their order
 * @param first the number of the first pass
 */
record StepLines(List<Step> steps, int first) {
  private static final int LONGEST_BLOCK = 100;

  List<String> lines() {
    List<String> lines = new ArrayList<>();
    int pass = first;
    for (int i = 0; i < steps.size(); ) {
      Block block = block(i);
      List<Step> once = steps.subList(i, i + block.steps());
      int after = pass + block.times() * passes(once);
      String indent = block.times() == 1 ? "  " : "    ";
      if (block.times() > 1) {
        lines.add("  " + block.times() + " times, passes " + pass + "-" + (after - 1) + ":");
      }
      for (Step step : once) {
        lines.add(indent + line(step, pass));
        pass += step.passes().size();
      }
      pass = after;
      i += block.steps() * block.times();
    }
    return lines;
  }

  private static int passes(List<Step> steps) {
    return steps.stream().mapToInt(step -> step.passes().size()).sum();
  }

  /** Steps that come so many times. */
  private record Block(int steps, int times) {
    /** The lines it saves. */
    int saves() {
      return steps * (times - 1) - 1;
    }
  }

  /** The block from here that saves most lines. */
  private Block block(int from) {
    Block best = new Block(1, 1);
    for (int length = 1; length <= Math.min(LONGEST_BLOCK, (steps.size() - from) / 2); length++) {
      int times = 1;
      while (from + (times + 1) * length <= steps.size() && steps.subList(from, from + length).equals(steps.subList(from + times * length, from + (times + 1) * length))) {
        times++;
      }
      Block block = new Block(length, times);
      best = block.saves() > Math.max(0, best.saves()) ? block : best;
    }
    return best;
  }

  private String line(Step step, int pass) {
    int last = pass + step.passes().size() - 1;
    return (last == pass ? "pass " + pass : "passes " + pass + "-" + last) + ": " + content(step.passes());
  }

  private String content(List<Pass> passes) {
    Pass pass = passes.get(0);
    if (pass.held().size() > 1) {
      String together = pass.held().stream().map(run -> run.ends() + " " + named(run.kind())).collect(Collectors.joining(" + "));
      return together + (passes.size() == 1 ? "" : ", each time");
    }
    WoundRun run = pass.held().get(0);
    int ends = passes.stream().mapToInt(Pass::ends).sum();
    return (ends == 1 ? "1 end of " : ends + " ends of ") + named(run.kind()) + together(passes);
  }

  /** The yarn, and where single and doubled ends of it are wound, how long an end is. */
  private String named(WoundEnd end) {
    Stream<WoundEnd> ends = steps.stream().flatMap(step -> step.passes().get(0).held().stream()).map(WoundRun::kind);
    boolean several = ends.anyMatch(other -> other.yarn().equals(end.yarn()) && !other.perEnd().equals(end.perEnd()));
    return end.yarn() + (several ? " of " + end.perEnd().print(LengthUnit.METRE, 2) : "");
  }

  private static String together(List<Pass> passes) {
    int most = passes.get(0).ends();
    int last = passes.getLast().ends();
    if (passes.size() == 1) {
      return most == 1 ? "" : ", together";
    }
    if (most == last) {
      return most == 1 ? ", one at a time" : ", " + most + " together";
    }
    long full = passes.stream().filter(pass -> pass.ends() == most).count();
    return full == passes.size() - 1
        ? ", " + most + " together, in the last pass " + last
        : ", " + most + " together in " + full + " passes, then " + last;
  }
}
