package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.CellFault;
import hankbook.exchange.RowReading;
import hankbook.exchange.StockFile;
import hankbook.measure.Length;
import hankbook.yarn.Doubts;
import hankbook.yarn.GristSample;
import hankbook.yarn.Measurement;
import hankbook.yarn.Skein;
import hankbook.yarn.Uncertainty;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the texts of the receive form come to, as far as they can be read.
 *
 * @param counts what length the skein will count with and by which way, or what is missing to know one
 * @param surely how surely that is known; empty where it is not known at all
 * @param disagrees what else that was typed says otherwise, or empty
 */
record Counting(String counts, String surely, String disagrees) {
  /** Texts that mean something only together. */
  private static final List<List<String>> TOGETHER =
      List.of(List.of("gross", "tare", "regain"), List.of("turns", "reel"), List.of("length"), List.of("grist"), List.of("form"));

  /**
   * What they come to.
   *
   * @param texts what was typed, by column
   * @param sample of the yarn's own grist
   */
  static Counting of(Map<String, String> texts, Optional<GristSample> sample, Doubts doubts) {
    Optional<Skein> skein = skein(texts).map(read -> read.withSample(sample));
    return skein.map(read -> of(read, texts, doubts)).orElseGet(() -> new Counting(unmeasured(texts), "", ""));
  }

  private static Counting of(Skein skein, Map<String, String> texts, Doubts doubts) {
    Length sure = Uncertainty.of(List.of(skein), doubts).combined();
    return switch (skein.measurement()) {
      case Measurement.ByWeight weighed -> new Counting(
          Say.text("Counts with {0}, weighed: {1} of yarn at {2}.", Wording.metres(skein.holds()), weighed.net(), weighed.grist()),
          surely(sure, weighed.sample().isPresent() ? Say.text("by the yarn's own grist") : Say.text("by its yarn number; a weighed sample makes it surer")), disagrees(skein));
      case Measurement.ByTurns _ -> new Counting(Say.text("Counts with {0}, by its turns.", Wording.metres(skein.holds())), surely(sure, Say.text("as turns are")), disagrees(skein));
      case Measurement.ByLabel _ -> new Counting(
          Say.text("Counts with {0}, by its label.", Wording.metres(skein.holds())), surely(sure, Say.text("as labels are; weight or turns make it surer")), "");
      case Measurement.Unmeasured _ -> new Counting(unmeasured(texts), "", "");
    };
  }

  private static String surely(Length sure, String why) {
    return Say.text("{0}, {1}.", Wording.within(sure), why);
  }

  private static String disagrees(Skein skein) {
    List<String> others = new ArrayList<>();
    if (skein.weightDisagrees()) {
      others.add(Say.text("the label says {0}", Wording.metres(skein.label().orElseThrow())));
    }
    if (skein.turnsDisagree()) {
      boolean weighed = skein.measurement() instanceof Measurement.ByWeight;
      others.add(
          weighed
              ? Say.text("the turns make {0}", Wording.metres(skein.turns().orElseThrow().length()))
              : Say.text("the label says {0}", Wording.metres(skein.label().orElseThrow())));
    }
    return others.isEmpty() ? "" : Say.text("Over a tenth apart: {0}.", String.join(", ", others));
  }

  private static String unmeasured(Map<String, String> texts) {
    if (isBlank(texts, "gross")) {
      return Say.text("Counts as unmeasured until a length, its turns, or its weight and a grist, is given.");
    }
    return isBlank(texts, "grist") ? Say.text("The weight alone gives no length: give the grist too.") : Say.text("The weight needs that of what it is wound on too.");
  }

  /** The skein without what cannot be read, whatever it is called. */
  private static Optional<Skein> skein(Map<String, String> texts) {
    Map<String, String> values = new HashMap<>(Map.of("code", "-", "yarn", "-", "colour", "-", "fibre", texts.getOrDefault("fibre", "")));
    TOGETHER.stream().flatMap(List::stream).forEach(column -> values.put(column, texts.getOrDefault(column, "")));
    RowReading whole = StockFile.row(values);
    whole.faults().forEach(fault -> leaveOut(fault, values));
    return whole.skein().or(() -> StockFile.row(values).skein());
  }

  private static void leaveOut(CellFault fault, Map<String, String> values) {
    String column = fault.column().equals("fibre") ? "gross" : fault.column();
    TOGETHER.stream().filter(together -> together.contains(column)).flatMap(List::stream).forEach(values::remove);
  }

  private static boolean isBlank(Map<String, String> texts, String column) {
    return texts.getOrDefault(column, "").isBlank();
  }
}
