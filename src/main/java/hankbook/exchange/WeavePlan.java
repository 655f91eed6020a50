package hankbook.exchange;

import hankbook.measure.Phrase;
import hankbook.measure.Sett;
import hankbook.measure.Unreadable;
import hankbook.plan.Need.Role;
import hankbook.plan.Succession;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A draft as the beginning of a plan: its ends and their order, its picks as one repeat of the order of picks, and the yarns chosen for its
 * colours. What a draft cannot know, the pieces and the allowances, is left to the weaver.
 */
public final class WeavePlan {
  private final Map<WeaveUse, YarnColour> yarns;

  private WeavePlan(Map<WeaveUse, YarnColour> yarns) {
    this.yarns = yarns;
  }

  /**
   * The plan that a draft begins.
   *
   * @param yarns for each colour of the warp and of the weft
   */
  public static PlanDraft of(WeaveDraft draft, String name, Map<WeaveUse, YarnColour> yarns) {
    WeavePlan plan = new WeavePlan(yarns);
    PlanDraft begun = PlanDraft.BLANK.with(PlanField.of(PlanPart.PLAN, "name"), name)
        .with(PlanField.of(PlanPart.WARP, "ends"), Integer.toString(draft.warp().count()))
        .with(PlanField.of(PlanPart.WARP, "sett"), sett(draft.warp()));
    return plan.weft(plan.warp(begun, draft.warp()), draft.weft());
  }

  /** The paths of the fields without which a plan that was begun so is not finished, in the order of a plan file. */
  public static List<String> wanting(PlanDraft plan) {
    List<String> fields = new ArrayList<>();
    if (plan.rows(PlanPart.PIECES).isEmpty() && plan.text(PlanField.of(PlanPart.WARP, "length")).isEmpty()) {
      fields.add(PlanPart.PIECES.path());
    }
    if (plan.text(PlanField.of(PlanPart.WARP, "sett")).isEmpty()) {
      fields.add("warp.sett");
    }
    if (plan.rows(PlanPart.WEFT).isEmpty()) {
      fields.add(PlanPart.WEFT.path());
    }
    for (int row = 1; row <= plan.rows(PlanPart.WEFT).size(); row++) {
      PlanField picks = new PlanField(PlanPart.WEFT, row, "picks");
      if (plan.text(picks).isEmpty()) {
        fields.add(picks.toString());
      }
    }
    return fields;
  }

  private PlanDraft warp(PlanDraft begun, WeaveThreads warp) {
    Map<YarnColour, Integer> counts = counts(Role.WARP, warp);
    Map<YarnColour, String> marks = marks(counts);
    Optional<Succession> order = order(Role.WARP, warp, marks);
    PlanDraft plan = begun.with(PlanField.of(PlanPart.WARP, "succession"), order.map(Succession::toString).orElse(""));
    for (Map.Entry<YarnColour, Integer> count : counts.entrySet()) {
      DraftRow row = row(count.getKey(), marks);
      plan = plan.withRow(PlanPart.ORDER, order.isPresent() ? row : row.with("ends", Integer.toString(count.getValue())));
    }
    return plan;
  }

  private PlanDraft weft(PlanDraft begun, WeaveThreads weft) {
    Map<YarnColour, Integer> counts = counts(Role.WEFT, weft);
    Map<YarnColour, String> marks = marks(counts);
    Optional<Succession> order = order(Role.WEFT, weft, marks);
    PlanDraft plan = begun.with(PlanField.of(PlanPart.PLAN, "weftSuccession"), order.map(Succession::toString).orElse(""));
    for (Map.Entry<YarnColour, Integer> count : counts.entrySet()) {
      DraftRow row = row(count.getKey(), marks).with("picks", sett(weft));
      plan = plan.withRow(PlanPart.WEFT, order.isPresent() ? row : row.with("share", count.getValue() + "/" + weft.count()));
    }
    return plan;
  }

  /** Colours for which one yarn is taken become one. */
  private Map<YarnColour, Integer> counts(Role role, WeaveThreads threads) {
    Map<YarnColour, Integer> counts = new LinkedHashMap<>();
    threads.counts().forEach((colour, count) -> counts.merge(yarn(role, colour), count, Integer::sum));
    return counts;
  }

  private YarnColour yarn(Role role, WeaveColour colour) {
    YarnColour yarn = yarns.get(new WeaveUse(role, colour));
    if (yarn == null) {
      throw new Unreadable("", Phrase.of("a yarn for {0} in the {1}", colour, role == Role.WARP ? "warp" : "weft"));
    }
    return yarn;
  }

  /** One yarn alone needs no written order, and one that would be too long to read is left out. */
  private Optional<Succession> order(Role role, WeaveThreads threads, Map<YarnColour, String> marks) {
    return marks.size() < 2 ? Optional.empty() : WeaveOrder.of(threads, colour -> marks.getOrDefault(yarn(role, colour), ""));
  }

  private static DraftRow row(YarnColour yarn, Map<YarnColour, String> marks) {
    DraftRow row = DraftRow.BLANK.with("yarn", yarn.yarn()).with("colour", yarn.colour());
    String mark = marks.getOrDefault(yarn, yarn.colour());
    return mark.equals(yarn.colour()) ? row : row.with("mark", mark);
  }

  /** A yarn's colour is its mark, as long as no other yarn has a colour of that name. */
  private static Map<YarnColour, String> marks(Map<YarnColour, Integer> yarns) {
    Map<YarnColour, String> marks = new LinkedHashMap<>();
    for (YarnColour yarn : yarns.keySet()) {
      boolean alone = yarns.keySet().stream().filter(other -> other.colour().equals(yarn.colour())).count() == 1;
      marks.put(yarn, alone ? yarn.colour() : yarn.toString());
    }
    return marks;
  }

  private static String sett(WeaveThreads threads) {
    return threads.sett().map(Sett::toString).orElse("");
  }
}
