package hankbook.cli;

import hankbook.allot.Cover;
import hankbook.allot.PlanCheck;
import hankbook.allot.Share;
import hankbook.allot.Warning;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.plan.WarpPart;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A check as a page to read. */
final class CheckReport {
  private CheckReport() {}

  static String of(PlanCheck check) {
    List<String> lines = new ArrayList<>();
    lines.add(check.plan().name());
    lines.add("");
    lines.add(
        "Warp: " + check.yardage().width().ends() + " ends, " + check.yardage().width().inReed().print(LengthUnit.CENTIMETRE, 1)
            + " in the reed, each " + check.yardage().warp().total().print(LengthUnit.METRE, 2));
    for (Map.Entry<WarpPart, Length> part : check.yardage().warp().parts().entrySet()) {
      if (!part.getValue().isZero()) {
        lines.add(String.format(Locale.ROOT, "  %-12s %10s", words(part.getKey()), metres(part.getValue())));
      }
    }
    lines.addAll(OrderReport.of(check.plan()));
    lines.add("");
    lines.add(String.format(Locale.ROOT, "%-28s %11s %11s %11s %9s  %s", "Yarn", "need", "free", "margin", "±", "verdict, risk of running short"));
    check.covers().forEach(cover -> lines.add(row(cover)));
    if (!check.shares().isEmpty()) {
      lines.add("");
      lines.add("Skeins to take:");
      check.shares().forEach(share -> lines.add(row(share)));
    }
    if (!check.warnings().isEmpty()) {
      lines.add("");
      lines.addAll(check.warnings().stream().map(Warning::text).toList());
    }
    if (check.isShort()) {
      lines.add("What would make it fit: see fit.");
    }
    return String.join(System.lineSeparator(), lines);
  }

  private static String row(Cover cover) {
    return String.format(
        Locale.ROOT,
        "%-28s %11s %11s %11s %9s  %s, %s",
        cover.yarn(),
        metres(cover.need()),
        metres(cover.free()),
        metres(cover.margin()),
        metres(cover.uncertainty()),
        cover.verdict(),
        cover.chance().words());
  }

  /** What makes each yarn's metres unsure, the largest first. */
  static String why(PlanCheck check) {
    List<String> lines = new ArrayList<>();
    for (Cover cover : check.covers()) {
      lines.add("");
      lines.add(cover.yarn() + ": ± " + metres(cover.uncertainty()) + ", as the root of the squares of");
      cover.doubt().parts().forEach(part -> lines.add(String.format(Locale.ROOT, "  %11s  %s", metres(part.error()), part.words())));
      lines.add("  Risk of running short: " + cover.chance().words() + String.format(Locale.ROOT, " (%.1f %%).", cover.chance().chance() * 100));
    }
    return String.join(System.lineSeparator(), lines);
  }

  private static String row(Share share) {
    String ends = share.ends() > 0 ? share.ends() + " ends, " + metres(share.warp()) : "";
    String weft = share.weft().isPositive() ? metres(share.weft()) + " of weft" : "";
    String both = ends.isEmpty() || weft.isEmpty() ? ends + weft : ends + " and " + weft;
    return String.format(Locale.ROOT, "  %-10s %s (%s)", share.code(), both, share.reason());
  }

  private static String words(WarpPart part) {
    return part.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static String metres(Length length) {
    return length.print(LengthUnit.METRE, 2);
  }
}
