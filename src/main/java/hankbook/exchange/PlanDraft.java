package hankbook.exchange;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A plan while it is being entered: everything a plan file can say, as the texts that were typed, whether or not they can be read.
 * {@link PlanFile} alone says what they mean.
 *
 * @param rows the rows of every part; a part that is no list has exactly one
 */
public record PlanDraft(Map<PlanPart, List<DraftRow>> rows) {
  /** Nothing typed yet. */
  public static final PlanDraft BLANK = new PlanDraft(Map.of());

  public PlanDraft {
    Map<PlanPart, List<DraftRow>> all = new EnumMap<>(PlanPart.class);
    for (PlanPart part : PlanPart.values()) {
      List<DraftRow> given = List.copyOf(rows.getOrDefault(part, part.isList() ? List.of() : List.of(DraftRow.BLANK)));
      if (!part.isList() && given.size() != 1) {
        throw new IllegalArgumentException(part + " has " + given.size() + " rows, wanted exactly one");
      }
      given.forEach(row -> checkKeys(part, row.texts().keySet()));
      all.put(part, given);
    }
    rows = Collections.unmodifiableMap(all);
  }

  private static void checkKeys(PlanPart part, Set<String> keys) {
    if (!part.keys().containsAll(keys)) {
      throw new IllegalArgumentException("keys in " + part + " are " + keys + ", wanted only " + part.keys());
    }
  }

  /** Reads the text of a plan file leniently: what is no plan field is passed over, what is no plan at all gives a blank draft. */
  public static PlanDraft of(String json) {
    return DraftJson.read(json);
  }

  /** The text of a plan file, with every typed text in it as it stands. */
  public String json() {
    return DraftJson.write(this);
  }

  /** The rows of a part. */
  public List<DraftRow> rows(PlanPart part) {
    return rows.getOrDefault(part, List.of());
  }

  /** The text in a field; empty where nothing was typed. */
  public String text(PlanField field) {
    return rows(field.part()).get(field.row() - 1).text(field.key());
  }

  /** The same draft with another text in one field. */
  public PlanDraft with(PlanField field, String text) {
    List<DraftRow> changed = new ArrayList<>(rows(field.part()));
    changed.set(field.row() - 1, changed.get(field.row() - 1).with(field.key(), text));
    return with(field.part(), changed);
  }

  /** The same draft with a row more at the end of a list. */
  public PlanDraft withRow(PlanPart part, DraftRow row) {
    List<DraftRow> longer = new ArrayList<>(rows(part));
    longer.add(row);
    return with(part, longer);
  }

  /** The same draft with a row more before one of a list, counted from 1. */
  public PlanDraft withRow(PlanPart part, int before, DraftRow row) {
    List<DraftRow> longer = new ArrayList<>(rows(part));
    longer.add(Math.min(before - 1, longer.size()), row);
    return with(part, longer);
  }

  /** The same draft with one row of a list in the place of another, and those between moved up or down by one; both counted from 1. */
  public PlanDraft withRowMoved(PlanPart part, int from, int to) {
    return withoutRow(part, from).withRow(part, to, rows(part).get(from - 1));
  }

  /** The same draft without one row of a list, counted from 1. */
  public PlanDraft withoutRow(PlanPart part, int row) {
    List<DraftRow> shorter = new ArrayList<>(rows(part));
    shorter.remove(row - 1);
    return with(part, shorter);
  }

  /**
   * The same draft with one change taken back, whatever else was typed since. A list that the change gave another number of rows is put
   * back whole.
   *
   * @param before the draft that was changed
   * @param after what it was changed to
   */
  public PlanDraft takingBack(PlanDraft before, PlanDraft after) {
    PlanDraft back = this;
    for (PlanPart part : PlanPart.values()) {
      if (before.rows(part).size() != after.rows(part).size()) {
        back = back.with(part, before.rows(part));
        continue;
      }
      for (int row = 1; row <= Math.min(rows(part).size(), before.rows(part).size()); row++) {
        for (String key : part.keys()) {
          PlanField field = new PlanField(part, row, key);
          back = before.text(field).equals(after.text(field)) ? back : back.with(field, before.text(field));
        }
      }
    }
    return back;
  }

  private PlanDraft with(PlanPart part, List<DraftRow> changed) {
    Map<PlanPart, List<DraftRow>> all = new EnumMap<>(rows);
    all.put(part, changed);
    return new PlanDraft(all);
  }
}
