package hankbook.exchange;

import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.plan.OrderEntry;
import hankbook.plan.Piece;
import hankbook.plan.Plan;
import hankbook.plan.Succession;
import hankbook.plan.Weft;
import hankbook.yarn.YarnColour;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Puts a changed plan into the fields of a draft: only the texts that no longer mean what the plan says are written anew, so that what
 * the weaver typed stays as she typed it. A length keeps the unit it was typed in where that says it exactly.
 */
public final class RemedyDraft {
  private static final Pattern UNIT = Pattern.compile("([a-z]+)\\s*$");
  private static final int EXACT_PLACES = 4;

  private final Plan asked;
  private final Plan changed;
  private PlanDraft draft;

  private RemedyDraft(PlanDraft draft, Plan asked, Plan changed) {
    this.draft = draft;
    this.asked = asked;
    this.changed = changed;
  }

  /**
   * The draft of a plan with what a remedy changes in it.
   *
   * @param draft reads as the plan that was asked for
   * @param asked that plan
   * @param changed the plan of the remedy: the same with other counts, lengths, widths, picks, sett, ends, sampling or yarns
   */
  public static PlanDraft apply(PlanDraft draft, Plan asked, Plan changed) {
    RemedyDraft remedy = new RemedyDraft(draft, asked, changed);
    remedy.pieces();
    remedy.warp();
    remedy.order();
    remedy.wefts();
    remedy.length(PlanField.of(PlanPart.ALLOWANCES, "sampling"), Optional.of(asked.allowances().sampling()), Optional.of(changed.allowances().sampling()));
    return remedy.draft;
  }

  private void pieces() {
    for (int i = 0; i < changed.pieces().size(); i++) {
      Piece before = asked.pieces().get(i);
      Piece after = changed.pieces().get(i);
      text(new PlanField(PlanPart.PIECES, i + 1, "count"), before.count(), after.count());
      length(new PlanField(PlanPart.PIECES, i + 1, "length"), Optional.of(before.length()), Optional.of(after.length()));
      length(new PlanField(PlanPart.PIECES, i + 1, "width"), Optional.of(before.width()), Optional.of(after.width()));
    }
  }

  private void warp() {
    text(PlanField.of(PlanPart.WARP, "sett"), asked.warp().sett(), changed.warp().sett());
    length(PlanField.of(PlanPart.WARP, "length"), asked.warp().length(), changed.warp().length());
    OptionalInt ends = changed.warp().ends();
    if (!ends.equals(asked.warp().ends())) {
      withoutSections();
      draft = draft.with(PlanField.of(PlanPart.WARP, "ends"), ends.isPresent() ? Integer.toString(ends.getAsInt()) : "");
    }
    if (!changed.warp().succession().equals(asked.warp().succession())) {
      draft = draft.with(PlanField.of(PlanPart.WARP, "succession"), changed.warp().succession().map(Succession::toString).orElse(""));
    }
    changed.warp().selvedge().ifPresent(edge -> {
      YarnColour before = asked.warp().selvedge().orElseThrow().yarn();
      text(PlanField.of(PlanPart.SELVEDGE, "yarn"), before.yarn(), edge.yarn().yarn());
      text(PlanField.of(PlanPart.SELVEDGE, "colour"), before.colour(), edge.yarn().colour());
    });
  }

  /** Ends that sections made cannot stand beside the sections any longer. */
  private void withoutSections() {
    while (!draft.rows(PlanPart.SECTIONS).isEmpty()) {
      draft = draft.withoutRow(PlanPart.SECTIONS, 1);
    }
    for (String key : List.of("endsPerUnit", "extendLeft", "extendRight")) {
      draft = draft.with(PlanField.of(PlanPart.WARP, key), "");
    }
  }

  /** A mark is written only where it is not the colour's name, or where one was written. */
  private void mark(PlanField field, String before, String after, String colour) {
    boolean typed = !draft.text(field).isEmpty();
    if (typed ? !before.equals(after) : !after.equals(colour)) {
      draft = draft.with(field, after);
    }
  }

  private void order() {
    List<OrderEntry> before = asked.warp().order();
    for (int i = 0; i < before.size(); i++) {
      OrderEntry after = changed.warp().order().get(i);
      text(new PlanField(PlanPart.ORDER, i + 1, "yarn"), before.get(i).yarn().yarn(), after.yarn().yarn());
      text(new PlanField(PlanPart.ORDER, i + 1, "colour"), before.get(i).yarn().colour(), after.yarn().colour());
      mark(new PlanField(PlanPart.ORDER, i + 1, "mark"), before.get(i).mark(), after.mark(), after.yarn().colour());
      if (after.amount() instanceof OrderEntry.Ends(int ends) && !after.amount().equals(before.get(i).amount())) {
        draft = draft.with(new PlanField(PlanPart.ORDER, i + 1, "ends"), Integer.toString(ends));
      }
    }
  }

  private void wefts() {
    for (int i = 0; i < changed.wefts().size(); i++) {
      Weft before = asked.wefts().get(i);
      Weft after = changed.wefts().get(i);
      text(new PlanField(PlanPart.WEFT, i + 1, "yarn"), before.yarn().yarn(), after.yarn().yarn());
      text(new PlanField(PlanPart.WEFT, i + 1, "colour"), before.yarn().colour(), after.yarn().colour());
      mark(new PlanField(PlanPart.WEFT, i + 1, "mark"), before.mark(), after.mark(), after.yarn().colour());
      text(new PlanField(PlanPart.WEFT, i + 1, "picks"), before.picks(), after.picks());
      length(new PlanField(PlanPart.WEFT, i + 1, "length"), before.length(), after.length());
    }
  }

  private void text(PlanField field, Object before, Object after) {
    if (!Objects.equals(before, after)) {
      draft = draft.with(field, after.toString());
    }
  }

  private void length(PlanField field, Optional<Length> before, Optional<Length> after) {
    if (!before.equals(after)) {
      draft = draft.with(field, after.map(length -> written(length, draft.text(field))).orElse(""));
    }
  }

  /** In the unit that an earlier text ended in, where that says the length exactly. */
  private static String written(Length length, String like) {
    Matcher unit = UNIT.matcher(like);
    if (unit.find()) {
      for (LengthUnit known : LengthUnit.values()) {
        String text = length.print(known, EXACT_PLACES);
        if (known.symbol().equals(unit.group(1)) && Length.parse(text).equals(length)) {
          return text;
        }
      }
    }
    return length.toString();
  }
}
