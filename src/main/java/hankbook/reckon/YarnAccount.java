package hankbook.reckon;

import hankbook.measure.Length;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Where one yarn went: planned, used, and the difference by cause.
 *
 * @param yarn the yarn and its colour
 * @param planned what the plan needs of it; zero for a yarn that it does not name
 * @param purposes what that is for, all of them; they sum to what is planned
 * @param used what the plan really took
 * @param uncertainty the standard uncertainty of that
 * @param causes every one, with what it adds or, under zero, spares; they sum to used less planned
 */
public record YarnAccount(
    YarnColour yarn, Length planned, Map<Purpose, Length> purposes, Length used, Length uncertainty, Map<Cause, Length> causes) {
  public YarnAccount {
    Map<Purpose, Length> forWhat = new EnumMap<>(Purpose.class);
    forWhat.putAll(purposes);
    purposes = Collections.unmodifiableMap(forWhat);
    Map<Cause, Length> inOrder = new EnumMap<>(Cause.class);
    inOrder.putAll(causes);
    causes = Collections.unmodifiableMap(inOrder);
    if (!sum(purposes).equals(planned) || !sum(causes).equals(used.minus(planned))) {
      throw new IllegalArgumentException(yarn + ": " + purposes + " of " + planned + " planned, " + causes + " to " + used + " used");
    }
  }

  /**
   * One step on the way from what was planned to what was used.
   *
   * @param cause of it
   * @param before what was reckoned with until then
   * @param after what is reckoned with when it is counted
   */
  public record Step(Cause cause, Length before, Length after) {
    /** What it adds; under zero where it spares. */
    public Length part() {
      return after.minus(before);
    }
  }

  /** The steps that change anything, from what was planned to what was used. */
  public List<Step> steps() {
    List<Step> steps = new ArrayList<>();
    Length reached = planned;
    for (Cause cause : Cause.values()) {
      Length next = reached.plus(part(cause));
      if (!next.equals(reached)) {
        steps.add(new Step(cause, reached, next));
      }
      reached = next;
    }
    return List.copyOf(steps);
  }

  /** What one cause adds; under zero where it spares. */
  public Length part(Cause cause) {
    return Objects.requireNonNull(causes.get(cause));
  }

  /** Used over planned; under zero where less was used. */
  public Length more() {
    return used.minus(planned);
  }

  private static Length sum(Map<?, Length> parts) {
    return parts.values().stream().reduce(Length.ZERO, Length::plus);
  }
}
