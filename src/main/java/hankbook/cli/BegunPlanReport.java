package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import hankbook.exchange.TextTable;
import hankbook.exchange.WeavePlan;
import hankbook.exchange.WeaveUse;
import hankbook.plan.Need.Role;
import hankbook.studio.DraftColour;
import hankbook.studio.DraftPreview;
import hankbook.yarn.NearestYarn;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** A plan that a draft began, as a page to read. */
final class BegunPlanReport {
  private BegunPlanReport() {}

  /** That some colours were left without a yarn. */
  static BadInput unmatched(String file, DraftPreview preview, List<WeaveUse> unmatched, boolean nearest) {
    String wanted = nearest ? "--match for what no yarn of the shelf comes near" : "--match for each colour, or --nearest for the rest";
    return new BadInput(unmatched.stream()
        .map(use -> file + ", " + side(use) + ": found no yarn for " + preview.colour(use).mark() + " (" + use.colour() + "), wanted " + wanted)
        .toList());
  }

  static String of(PlanDraft plan, Optional<Path> written, DraftPreview preview, Map<WeaveUse, YarnColour> yarns, List<Skein> shelf) {
    String name = plan.text(PlanField.of(PlanPart.PLAN, "name"));
    List<String> lines = new ArrayList<>();
    lines.add(written.map(file -> "Wrote the plan " + name + " into " + file + ".").orElse("Kept the plan " + name + "."));
    lines.addAll(yarns(preview, yarns, shelf));
    List<String> wanting = WeavePlan.wanting(plan);
    if (!wanting.isEmpty()) {
      lines.add("");
      lines.add("Still to be entered before it can be checked: " + String.join(", ", wanting) + ".");
    }
    return String.join(System.lineSeparator(), lines);
  }

  private static List<String> yarns(DraftPreview preview, Map<WeaveUse, YarnColour> yarns, List<Skein> shelf) {
    TextTable table = new TextTable("", "colour", ">threads", "yarn", ">off", "");
    for (WeaveUse use : preview.uses()) {
      DraftColour colour = preview.colour(use);
      YarnColour yarn = yarns.getOrDefault(use, new YarnColour("-", "-"));
      Optional<NearestYarn> near = colour.nearest().stream().filter(one -> one.yarn().equals(yarn)).findFirst();
      String threads = use.role() == Role.WARP ? WeaveDraftReport.count(colour.ends(), "end", "ends") : WeaveDraftReport.count(colour.picks(), "pick", "picks");
      boolean held = shelf.stream().anyMatch(skein -> skein.yarn().equals(yarn));
      table.row(colour.mark(), use.colour().toString(), threads, yarn.toString(), near.map(one -> one.difference().toString()).orElse(""), held ? "" : "not on the shelf");
    }
    return table.lines();
  }

  private static String side(WeaveUse use) {
    return use.role().name().toLowerCase(Locale.ROOT);
  }
}
