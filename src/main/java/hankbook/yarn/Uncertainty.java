package hankbook.yarn;

import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.Percentage;
import hankbook.measure.Phrase;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How surely the metres of some skeins are known, after JCGM 100:2008: independent parts add as squares, and the grist error that the skeins of one
 * lot share, or all skeins whose grist one sample gave, adds linearly first.
 *
 * <p>Where a yarn's grist was weighed and the ledger has other metres of its skeins still, that difference counts as uncertainty until they are
 * recounted.
 *
 * <p>A label's uncertainty is the tolerable negative error of Council Directive 76/211/EEC, Annex I 2.4, taken as a rectangular
 * half-width; a balance rounds twice, each time with a rectangular half-width of half its division.
 *
 * @param combined standard uncertainty of all of them
 * @param parts where it comes from, the largest first; their squares sum to the square of the combined, to the rounding
 */
public record Uncertainty(Length combined, List<Part> parts) {
  public Uncertainty {
    parts = List.copyOf(parts);
  }

  /**
   * One cause.
   *
   * @param cause as a noun phrase
   * @param skeins how many it is in; 0 where it is in no skein but in what is needed of them
   * @param error its standard uncertainty, of all of them together
   */
  public record Part(Phrase cause, int skeins, Length error) {
    /** A cause that is in no skein. */
    public static Part of(Phrase cause, Length error) {
      return new Part(cause, 0, error);
    }

    /** The cause and how many skeins it is in. */
    public String words() {
      return phrase().english();
    }

    /** The same, to be said in any language. */
    public Phrase phrase() {
      return skeins == 0 ? cause : Phrase.count(skeins, "{1}, {0} skein", "{1}, {0} skeins", cause);
    }
  }

  /** What one cause does to the skeins it is in, in tenths of a millimetre. */
  private static final class Cause {
    private final boolean shared;
    private double sum;
    private int skeins;

    Cause(boolean shared) {
      this.shared = shared;
    }

    void add(double error) {
      sum += shared ? error : error * error;
      skeins++;
    }

    double square() {
      return shared ? sum * sum : sum;
    }

    Part part(Phrase name) {
      return new Part(name, skeins, length(square()));
    }
  }

  /** An uncertainty of which no more is known. */
  public static Uncertainty outright(Length combined) {
    return new Uncertainty(combined, List.of());
  }

  /** With causes that are independent of those there are. */
  public Uncertainty with(List<Part> others) {
    if (others.isEmpty()) {
      return this;
    }
    List<Part> all = new ArrayList<>(parts);
    all.addAll(others);
    all.sort(Comparator.comparing(Part::error).reversed());
    double square = tenths(combined) * tenths(combined) + others.stream().mapToDouble(part -> tenths(part.error()) * tenths(part.error())).sum();
    return new Uncertainty(length(square), all);
  }

  /** How surely the metres of these skeins are known. */
  public static Uncertainty of(List<Skein> skeins, Doubts doubts) {
    Map<Phrase, Cause> causes = new LinkedHashMap<>();
    skeins.stream().filter(skein -> !skein.holds().isZero()).forEach(skein -> add(skein, doubts, causes, 1));
    List<Part> parts = new ArrayList<>();
    causes.forEach((name, cause) -> parts.add(cause.part(name)));
    parts.removeIf(part -> part.error().isZero());
    parts.sort(Comparator.comparing(Part::error).reversed());
    return new Uncertainty(length(causes.values().stream().mapToDouble(Cause::square).sum()), parts);
  }

  /**
   * How surely it is known what was taken off skeins, which were measured before and after. The grist that both measurements go by errs both the same way,
   * so of that only what was taken off counts.
   *
   * @param before as they were, each with how it was measured then
   * @param after the same skeins, each with how it was measured then
   */
  public static Length ofDifference(List<Skein> before, List<Skein> after, Doubts doubts) {
    Map<Phrase, Cause> causes = new LinkedHashMap<>();
    before.forEach(skein -> add(skein, doubts, causes, 1));
    after.stream().filter(skein -> !skein.holds().isZero()).forEach(skein -> add(skein, doubts, causes, -1));
    return length(causes.values().stream().mapToDouble(Cause::square).sum());
  }

  private static Length length(double square) {
    return new Length(Math.round(Math.sqrt(square)));
  }

  /** What was taken from a skein since it was measured left the error of that measurement in what remains. */
  private static void add(Skein skein, Doubts doubts, Map<Phrase, Cause> causes, int sign) {
    switch (skein.measurement()) {
      case Measurement.ByLabel label -> label.nominal().ifPresentOrElse(
          mass -> alone(Phrase.of("labels"), causes, tenths(label.printed()) * ofLabel(mass)),
          () -> alone(Phrase.of("labels without a mass"), causes, tenths(label.printed()) * relative(doubts.bareLength())));
      case Measurement.ByTurns counted -> alone(Phrase.of("turns"), causes, tenths(counted.turns().length()) * relative(doubts.turns()));
      case Measurement.ByWeight weight -> {
        alone(Phrase.of("balance"), causes, Math.sqrt(2) * doubts.balanceDivision().milligrams() / Math.sqrt(12) * 10_000 / weight.grist().tex().doubleValue());
        double grist = relative(weight.sample().map(GristSample::uncertainty).orElseGet(doubts::unmeasuredGrist));
        shared(gristOf(skein, weight), causes, sign * tenths(weight.length().orElseThrow()) * grist);
        shared(Phrase.of("metres not yet recounted by the grist that was weighed"), causes, sign * tenths(skein.toRecount()));
      }
      case Measurement.Unmeasured _ -> alone(Phrase.of("lengths found"), causes, tenths(skein.holds()) * relative(doubts.bareLength()));
    }
  }

  private static void shared(Phrase name, Map<Phrase, Cause> causes, double error) {
    causes.computeIfAbsent(name, none -> new Cause(true)).add(error);
  }

  private static void alone(Phrase name, Map<Phrase, Cause> causes, double error) {
    causes.computeIfAbsent(name, none -> new Cause(false)).add(error);
  }

  /** One sample gives the grist of a yarn in all its lots; a yarn number fits each lot in its own way. */
  private static Phrase gristOf(Skein skein, Measurement.ByWeight weight) {
    if (weight.sample().isPresent()) {
      return Phrase.of("grist of {0} as weighed", skein.yarn().yarn());
    }
    return skein.lot().isEmpty() ? Phrase.of("grist of {0}, skein {1}", skein.yarn(), skein.code()) : Phrase.of("grist of {0}, lot {1}", skein.yarn(), skein.lot());
  }

  private static double tenths(Length length) {
    return length.tenthsOfMillimetre();
  }

  private static double relative(Percentage percentage) {
    return percentage.fraction().doubleValue();
  }

  /** The label's relative standard uncertainty for a nominal mass; the directive's table, its ends carried on. */
  private static double ofLabel(Mass nominal) {
    double grams = nominal.milligrams() / 1000.0;
    return tolerableErrorGrams(grams) / grams / Math.sqrt(3);
  }

  private static double tolerableErrorGrams(double grams) {
    if (grams <= 50) {
      return 0.09 * grams;
    } else if (grams <= 100) {
      return 4.5;
    } else if (grams <= 200) {
      return 0.045 * grams;
    } else if (grams <= 300) {
      return 9;
    } else if (grams <= 500) {
      return 0.03 * grams;
    }
    return grams <= 1000 ? 15 : 0.015 * grams;
  }
}
