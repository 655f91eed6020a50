package hankbook.exchange;

import hankbook.measure.Arithmetic;
import hankbook.measure.Length;
import hankbook.measure.Sett;
import hankbook.measure.Unreadable;
import hankbook.plan.Piece;
import hankbook.plan.Plan;
import hankbook.plan.Variation;
import hankbook.yarn.YarnColour;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** How a variation is written: {@code sett=8/cm; pieces=6; width=50 cm; sampling=1 m; Skerry 16/2, Chalk=Skerry 16/2, Moss}. */
public final class VariationText {
  private static final String WANTED =
      "sett=8/cm, pieces=6 (or the name of a piece in the place of pieces), width=50 cm, sampling=1 m or 'YARN, COLOUR=YARN, COLOUR', several of them with ; between";

  private final Plan plan;
  private Optional<Sett> sett = Optional.empty();
  private final Map<Integer, Integer> counts = new LinkedHashMap<>();
  private Optional<Length> width = Optional.empty();
  private Optional<Length> sampling = Optional.empty();
  private final Map<YarnColour, YarnColour> yarns = new LinkedHashMap<>();

  private VariationText(Plan plan) {
    this.plan = plan;
  }

  /**
   * Reads a variation of a plan.
   *
   * @throws Unreadable if it is written otherwise, says a thing twice, or speaks of a piece that the plan has not
   */
  public static Variation read(String text, Plan plan) {
    VariationText read = new VariationText(plan);
    for (String part : text.split(";", -1)) {
      if (!part.isBlank()) {
        read.part(part);
      }
    }
    Variation variation = new Variation(read.sett, read.counts, read.width, read.sampling, read.yarns);
    if (variation.isNone()) {
      throw new Unreadable(text, WANTED);
    }
    return variation;
  }

  private void part(String text) {
    int equals = text.indexOf('=');
    if (equals < 0) {
      throw new Unreadable(text.strip(), WANTED);
    }
    String what = text.substring(0, equals).strip();
    String value = text.substring(equals + 1).strip();
    switch (what) {
      case "sett" -> sett = once(sett, what, Sett.parse(value));
      case "width" -> width = once(width, what, Length.parse(value));
      case "sampling" -> sampling = once(sampling, what, Length.parse(value));
      default -> {
        if (what.contains(",") && kind(what).isEmpty()) {
          once(Optional.ofNullable(yarns.put(yarn(what), yarn(value))), what, value);
        } else {
          once(Optional.ofNullable(counts.put(kindNamed(what), Arithmetic.count(value))), what, value);
        }
      }
    }
  }

  private static <T, S> Optional<S> once(Optional<T> before, String what, S now) {
    if (before.isPresent()) {
      throw new Unreadable(what + " twice", "each thing once");
    }
    return Optional.of(now);
  }

  private Optional<Integer> kind(String name) {
    List<Piece> pieces = plan.pieces();
    for (int i = 0; i < pieces.size(); i++) {
      if (pieces.get(i).name().equals(name) || (name.equals("pieces") && pieces.size() == 1)) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  private int kindNamed(String name) {
    String kinds = plan.pieces().stream().map(Piece::name).collect(Collectors.joining(", "));
    return kind(name).orElseThrow(() -> new Unreadable(name, plan.pieces().size() > 1 ? WANTED + "; the plan's pieces are " + kinds : WANTED));
  }

  private static YarnColour yarn(String text) {
    int comma = text.lastIndexOf(',');
    if (comma < 0) {
      throw new Unreadable(text, "a yarn and its colour such as Skerry 16/2, Woad");
    }
    return new YarnColour(text.substring(0, comma), text.substring(comma + 1));
  }
}
