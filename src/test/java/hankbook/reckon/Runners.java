package hankbook.reckon;

import hankbook.measure.Length;
import hankbook.measure.Percentage;
import hankbook.measure.Sett;
import hankbook.plan.Allowances;
import hankbook.plan.OrderEntry;
import hankbook.plan.Piece;
import hankbook.plan.Plan;
import hankbook.plan.Warp;
import hankbook.plan.Weft;
import hankbook.plan.WorkKind;
import hankbook.yarn.YarnColour;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Two runners of numbers that are easy to work out by hand. Finished 90 cm and 10 cm of hems each; 20 % lost in length: 2 × 100 / 0.8 = 250 cm off the loom;
 * 10 % taken up: 275 cm of warp, 22 cm of sampling (20 cm of cloth) and 53 cm of loom waste: 350 cm. 45 cm wide, 10 % lost: 50 cm in the reed, 500 ends at
 * 10/cm and 2 for mending: 502 × 3.5 = 1757 m of Woad. 8 picks/cm in 270 cm: 2160 picks of 0.5 m: 1080 m of Chalk.
 */
final class Runners {
  static final YarnColour WOAD = new YarnColour("Skerry 16/2", "Woad");
  static final YarnColour CHALK = new YarnColour("Fulmar 8/1", "Chalk");

  private final Plan plan;
  private final List<YarnUsed> used = new ArrayList<>();
  private final Map<WorkKind, Duration> times = new EnumMap<>(WorkKind.class);
  private final Map<String, Length> lengths = new HashMap<>();
  private OptionalInt ends = OptionalInt.empty();
  private OptionalInt broken = OptionalInt.empty();
  private OptionalLong picks = OptionalLong.empty();
  private OptionalInt pieces = OptionalInt.empty();

  Runners(Plan plan) {
    this.plan = plan;
  }

  Runners() {
    this(plan());
  }

  static Plan plan() {
    Piece runner = new Piece("runner", 2, Length.parse("90 cm"), Length.parse("45 cm"), Length.parse("10 cm"), Length.ZERO);
    OrderEntry all = new OrderEntry(WOAD, new OrderEntry.Share(BigFraction.ONE), 1);
    Warp warp = new Warp(Sett.perCentimetre(10), OptionalInt.empty(), Optional.empty(), 1, 0, List.of(all));
    Weft weft = new Weft(CHALK, Sett.perCentimetre(8), BigFraction.ONE, 1, BigFraction.ONE, Optional.empty());
    Percentage tenth = Percentage.parse("10 %");
    Allowances allowances =
        new Allowances(
            tenth, Percentage.ZERO, Percentage.ZERO, Percentage.parse("20 %"), tenth, Length.parse("22 cm"), Length.parse("53 cm"), Length.ZERO, Percentage.ZERO, 2,
            Length.ZERO);
    return new Plan("Runners", List.of(runner), warp, List.of(weft), allowances, 1);
  }

  /** One of: warp, loom waste, sampling, in reed; on loom, off loom, finished; width on loom, width off loom, width finished. */
  Runners length(String what, String length) {
    lengths.put(what, Length.parse(length));
    return this;
  }

  Runners ends(int counted) {
    ends = OptionalInt.of(counted);
    return this;
  }

  Runners broken(int counted) {
    broken = OptionalInt.of(counted);
    return this;
  }

  Runners picks(long counted) {
    picks = OptionalLong.of(counted);
    return this;
  }

  Runners pieces(int counted) {
    pieces = OptionalInt.of(counted);
    return this;
  }

  Runners time(WorkKind kind, Duration time) {
    times.put(kind, time);
    return this;
  }

  Runners used(YarnColour yarn, String length, String uncertainty) {
    return used(yarn, length, "0 m", uncertainty);
  }

  Runners used(YarnColour yarn, String length, String thrums, String uncertainty) {
    used.add(new YarnUsed(yarn, "", Optional.empty(), Length.parse(length), Length.parse(thrums), Length.ZERO, Length.parse(uncertainty)));
    return this;
  }

  Made made() {
    WarpAsWound warp = new WarpAsWound(length("warp"), ends, broken, length("loom waste"), length("sampling"), length("in reed"));
    ClothAsWoven cloth =
        new ClothAsWoven(
            length("on loom"), length("off loom"), length("finished"), length("width on loom"), length("width off loom"), length("width finished"), picks, pieces);
    return new Made(plan, new Actuals(Optional.empty(), List.of(), List.of(), List.of(), warp, cloth, times, "", ""), used);
  }

  private Optional<Length> length(String what) {
    return Optional.ofNullable(lengths.get(what));
  }
}
