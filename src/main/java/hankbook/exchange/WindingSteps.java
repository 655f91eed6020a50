package hankbook.exchange;

import hankbook.allot.WindingSheet;
import hankbook.measure.LengthUnit;
import hankbook.plan.Pass;
import hankbook.plan.Step;
import hankbook.plan.WoundEnd;
import hankbook.plan.WoundRun;
import hankbook.yarn.YarnColour;
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
public record WindingSteps(List<Step> steps, int first) {
  private static final int LONGEST_BLOCK = 100;

  /**
   * One line.
   *
   * @param inside whether it is part of what comes again and again, as the line above that is not said
   * @param passes which, such as {@code passes 1-16}
   * @param content what is wound in them; empty in a line that says how often those below come
   * @param yarns that are wound in them, as they lie
   */
  public record Line(boolean inside, String passes, String content, List<YarnColour> yarns) {
    public Line {
      yarns = List.copyOf(yarns);
    }

    private String text() {
      return (inside ? "    " : "  ") + passes + (content.isEmpty() ? ":" : ": " + content);
    }
  }

  /** The sheet's own warp. */
  public static WindingSteps ofWarp(WindingSheet sheet) {
    return new WindingSteps(sheet.warp(), 1);
  }

  /** The repair ends, which are wound after the warp. */
  public static WindingSteps ofSpare(WindingSheet sheet) {
    return new WindingSteps(sheet.spare(), 1 + passes(sheet.warp()));
  }

  List<String> texts() {
    return lines().stream().map(Line::text).toList();
  }

  /** The lines in the order of winding. */
  public List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    int pass = first;
    for (int i = 0; i < steps.size(); ) {
      Block block = block(i);
      List<Step> once = steps.subList(i, i + block.steps());
      int after = pass + block.times() * passes(once);
      if (block.times() > 1) {
        lines.add(new Line(false, block.times() + " times, passes " + pass + "-" + (after - 1), "", List.of()));
      }
      for (Step step : once) {
        lines.add(line(block.times() > 1, step, pass));
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

  private Line line(boolean inside, Step step, int pass) {
    int last = pass + step.passes().size() - 1;
    String passes = last == pass ? "pass " + pass : "passes " + pass + "-" + last;
    List<YarnColour> yarns = step.passes().get(0).held().stream().map(run -> run.kind().yarn()).distinct().toList();
    return new Line(inside, passes, content(step.passes()), yarns);
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
