package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.measure.Length;
import hankbook.yarn.Doubts;
import hankbook.yarn.GristSample;
import hankbook.yarn.Skein;
import hankbook.yarn.Uncertainty;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What several skeins that come together will count with, in words. */
final class LotPreview {
  private static final int LINES = 6;

  private LotPreview() {}

  /** All of them together. */
  static Counting counting(List<Skein> skeins, Optional<GristSample> sample, Doubts doubts) {
    List<Skein> known = skeins.stream().map(skein -> skein.withSample(sample)).toList();
    Length all = known.stream().map(Skein::holds).reduce(Length.ZERO, Length::plus);
    Length sure = Uncertainty.of(known, doubts).combined();
    String counts = Say.count(skeins.size(), "{0} skein counts with {1}.", "{0} skeins count with {1} in all.", Wording.yarn(all));
    Optional<Skein> disagrees = known.stream().filter(skein -> skein.weightDisagrees() || skein.turnsDisagree()).findFirst();
    return new Counting(
        counts, sure.isZero() ? "" : Say.text("{0}, all together.", Wording.within(sure)),
        disagrees.map(skein -> Say.text("What was read off {0} is over a tenth apart.", skein.code())).orElse(""));
  }

  /** Each with its code, the first few and the last. */
  static String lines(List<Skein> skeins, Optional<GristSample> sample, Doubts doubts) {
    List<String> lines = new ArrayList<>(skeins.stream().map(skein -> line(skein.withSample(sample), doubts)).toList());
    if (lines.size() > LINES) {
      lines = Stream.of(lines.subList(0, LINES - 2), List.of("…"), List.of(lines.getLast())).flatMap(List::stream).toList();
    }
    return String.join("\n", lines);
  }

  private static String line(Skein skein, Doubts doubts) {
    String holds = skein.isMeasured() ? Wording.yarn(skein.holds(), Uncertainty.of(List.of(skein), doubts).combined()) : Say.text("not measured yet");
    return skein.code() + ": " + holds;
  }
}
