package hankbook.cli;

import hankbook.allot.Judgement;
import hankbook.allot.Setting;
import hankbook.exchange.TextTable;
import hankbook.measure.Exact;
import hankbook.measure.Grist;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.measure.Percentage;
import hankbook.studio.YarnGrist;
import hankbook.yarn.Kept;
import hankbook.yarn.Skein;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** How surely things are known, as pages to read. */
final class CertaintyReport {
  private CertaintyReport() {}

  static String settings(Judgement judgement) {
    TextTable table = new TextTable("key", ">value", ">default", "what it is");
    for (Setting setting : Setting.values()) {
      String now = judgement.text(setting);
      table.row(setting.key(), now, now.equals(setting.standard()) ? "" : setting.standard(), setting.words());
    }
    return String.join(System.lineSeparator(), table.lines());
  }

  static String setting(Setting setting, Judgement judgement) {
    return setting.key() + " is " + judgement.text(setting) + ", the " + setting.words() + "; the default is " + setting.standard() + ".";
  }

  static String grists(List<YarnGrist> grists) {
    if (grists.isEmpty()) {
      return "No yarn to show.";
    }
    TextTable table = new TextTable("yarn", "yarn number", ">tex", ">±", "known by");
    for (YarnGrist grist : grists) {
      table.row(
          grist.yarn(), numbers(grist), tex(grist), grist.sample().map(sample -> percent(sample.uncertainty())).orElse(""),
          grist.sample().map(sample -> sample.length() + " that weighed " + sample.mass()).orElseGet(() -> grist.numbers().isEmpty() ? "" : "its yarn number"));
    }
    return String.join(System.lineSeparator(), table.lines());
  }

  static String grist(YarnGrist grist) {
    List<String> lines = new ArrayList<>();
    if (grist.sample().isEmpty()) {
      lines.add(grist.yarn() + (grist.numbers().isEmpty() ? " has no grist: neither a yarn number nor a sample that was weighed." : " is " + numbers(grist) + " by its yarn number, " + tex(grist) + " tex; no sample of it rules."));
      return String.join(System.lineSeparator(), lines);
    }
    var sample = grist.sample().get();
    lines.add(grist.yarn() + " is " + sample.grist() + " ± " + percent(sample.uncertainty()) + ", by " + sample.length() + " that weighed " + sample.mass() + ".");
    grist.numbers().forEach(number -> lines.add(against(sample.grist(), number.toString(), number.grist())));
    if (!grist.toRecount().isEmpty()) {
      lines.add("The ledger's metres stay as they are until you recount. By this grist, what was weighed came to:");
      grist.toRecount().forEach(skein -> lines.add(toRecount(skein)));
      String first = grist.toRecount().getFirst().code();
      lines.add("Weigh again what is left of each, then, for one: recount " + first + " --gross '92 g' --tare '38 g'.");
    }
    return String.join(System.lineSeparator(), lines);
  }

  /** A yarn heavier for its length has fewer metres to the gram. */
  private static String against(Grist own, String number, Grist named) {
    BigFraction ratio = own.tex().divide(named.tex()).subtract(BigFraction.ONE);
    if (ratio.abs().compareTo(BigFraction.of(1, 1000)) < 0) {
      return "Its yarn number, " + number + ", says so too.";
    }
    String much = Exact.plain(ratio.abs().multiply(100), 1) + " %";
    String text = "Its yarn number, " + number + ", says " + named + "; it is " + much + (ratio.signum() < 0 ? " finer." : " heavier.");
    return ratio.abs().compareTo(BigFraction.of(1, 4)) > 0 ? text + " That is much: see that length, mass and yarn number are right." : text;
  }

  private static String toRecount(Skein skein) {
    Length counted = skein.kept().flatMap(Kept::counted).orElse(Length.ZERO);
    Length weighed = skein.measurement().length().orElse(Length.ZERO);
    return "  " + skein.code() + " (" + skein.yarn().colour() + "): " + weighed.print(LengthUnit.METRE, 1) + ", and the ledger took " + counted.print(LengthUnit.METRE, 1);
  }

  private static String numbers(YarnGrist grist) {
    return grist.numbers().stream().map(Object::toString).collect(Collectors.joining(", "));
  }

  private static String tex(YarnGrist grist) {
    return grist.sample().map(sample -> sample.grist()).or(() -> grist.numbers().stream().findFirst().map(number -> number.grist())).map(own -> Exact.plain(own.tex(), 1)).orElse("");
  }

  private static String percent(Percentage percentage) {
    return Exact.plain(percentage.fraction().multiply(100), 2) + " %";
  }
}
