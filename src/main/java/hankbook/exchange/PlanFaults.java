package hankbook.exchange;

import hankbook.measure.Unreadable;
import hankbook.plan.Succession;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Everything that keeps a draft from being read as a plan. {@link PlanFile} stops at the first fault; so that a bad text further down is
 * told at once too, each text is also put alone into a plan that is otherwise sound.
 */
public final class PlanFaults {
  private static final PlanDraft SOUND = sound();

  /** Fields that can only be read beside others: alone, their marks would all be unknown. */
  private static final Set<String> WRITTEN = Set.of("succession", "weftSuccession");

  private PlanFaults() {}

  /** The faults, that of the whole plan first; none where the plan can be read. */
  public static List<Fault> of(PlanDraft draft) {
    Map<String, Fault> faults = new LinkedHashMap<>();
    note(draft, faults);
    OrderedEnds.of(draft).ifPresent(ends -> faults.put(ends.fault().field(), ends.fault()));
    for (PlanPart part : PlanPart.values()) {
      for (int row = 1; row <= draft.rows(part).size(); row++) {
        for (String key : draft.rows(part).get(row - 1).texts().keySet()) {
          note(new PlanField(part, row, key), draft, faults);
        }
      }
    }
    return new ArrayList<>(faults.values());
  }

  private static void note(PlanDraft draft, Map<String, Fault> faults) {
    try {
      PlanFile.read("plan", draft.json());
    } catch (BadInput refused) {
      refused.field().ifPresent(fault -> faults.put(fault.field(), fault));
    }
  }

  private static void note(PlanField field, PlanDraft draft, Map<String, Fault> faults) {
    if (WRITTEN.contains(field.key())) {
      noteWritten(field, draft.text(field), faults);
      return;
    }
    PlanField alone = new PlanField(field.part(), 1, field.key());
    try {
      PlanFile.read("plan", SOUND.with(alone, draft.text(field)).json());
    } catch (BadInput refused) {
      refused
          .field()
          .filter(fault -> fault.field().equals(alone.toString()))
          .ifPresent(fault -> faults.putIfAbsent(field.toString(), new Fault(field.toString(), fault.found(), fault.wanted())));
    }
  }

  private static void noteWritten(PlanField field, String text, Map<String, Fault> faults) {
    try {
      Succession.parse(text);
    } catch (Unreadable unreadable) {
      faults.putIfAbsent(field.toString(), new Fault(field.toString(), unreadable.found(), unreadable.wanted()));
    }
  }

  private static PlanDraft sound() {
    DraftRow yarn = DraftRow.BLANK.with("yarn", "yarn").with("colour", "colour");
    return PlanDraft.BLANK
        .with(PlanField.of(PlanPart.PLAN, "name"), "plan")
        .withRow(PlanPart.PIECES, DraftRow.BLANK.with("length", "1 m").with("width", "1 m"))
        .with(PlanField.of(PlanPart.WARP, "sett"), "1/cm")
        .with(PlanField.of(PlanPart.WARP, "endsPerUnit"), "1")
        .with(PlanField.of(PlanPart.WARP, "selvedgeEnds"), "1")
        .with(PlanField.of(PlanPart.SELVEDGE, "yarn"), "yarn")
        .with(PlanField.of(PlanPart.SELVEDGE, "colour"), "colour")
        .withRow(PlanPart.SECTIONS, DraftRow.BLANK.with("units", "1"))
        .withRow(PlanPart.ORDER, yarn.with("share", "1"))
        .withRow(PlanPart.WEFT, yarn.with("picks", "1/cm"));
  }
}
