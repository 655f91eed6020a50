package hankbook.print;

import hankbook.ledger.Place;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.measure.MoneyText;
import hankbook.plan.Allowances;
import hankbook.plan.Making;
import hankbook.plan.Piece;
import hankbook.plan.Plan;
import hankbook.plan.WarpLength;
import hankbook.plan.Yardage;
import hankbook.reckon.Realised;
import hankbook.reckon.Way;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The record of a cloth as a sheet to print and keep. */
public final class RecordSheet {
  private static final List<Sheet.Column> WAYS = List.of(
      new Sheet.Column("", false, 3), new Sheet.Column("Planned", true, 2), new Sheet.Column("Really", true, 2), new Sheet.Column("Worked out from", false, 7));

  private final ClothRecord cloth;
  private final Plan plan;

  private RecordSheet(ClothRecord cloth) {
    this.cloth = cloth;
    this.plan = cloth.made().plan();
  }

  /** The sheet. */
  public static Sheet of(ClothRecord cloth) {
    return new RecordSheet(cloth).sheet();
  }

  private Sheet sheet() {
    String reason = cloth.made().actuals().reason();
    return new Sheet(
        cloth.name(),
        "Cut off on " + cloth.cutOff() + "; the book was squared by " + cloth.author() + ".",
        List.of(
            new Sheet.Facts("The cloth", cloth()),
            new Sheet.Table("As it really was", WAYS, ways()),
            RecordYarns.yarns(cloth),
            RecordYarns.waterfall(cloth.reckoning()),
            RecordYarns.skeins(cloth),
            new Sheet.Facts("Work", work()),
            new Sheet.Facts("What its yarn cost", costs()),
            new Sheet.Words("What could not be explained", reason),
            new Sheet.Words("Note", cloth.made().actuals().note())),
        "Hankbook: record of " + cloth.name() + ", printed on " + cloth.printed() + ".");
  }

  private List<Sheet.Fact> cloth() {
    Yardage yardage = Yardage.of(plan);
    var warp = cloth.made().actuals().warp();
    var woven = cloth.made().actuals().cloth();
    List<Sheet.Fact> facts = new ArrayList<>();
    plan.pieces().forEach(piece -> facts.add(new Sheet.Fact("pieces planned", piece(piece))));
    woven.pieces().ifPresent(made -> facts.add(new Sheet.Fact("pieces made", Integer.toString(made))));
    facts.add(new Sheet.Fact("ends", warp.ends().isPresent() ? warp.ends().getAsInt() + ", " + yardage.width().ends() + " planned" : yardage.width().ends() + " planned"));
    facts.add(new Sheet.Fact("sett", plan.warp().sett().toString()));
    facts.add(new Sheet.Fact("warp wound", measured(warp.length(), yardage.warp())));
    plan.dressing().loom().ifPresent(loom -> facts.add(new Sheet.Fact("loom", loom)));
    plan.dressing().reed().ifPresent(reed -> facts.add(new Sheet.Fact("reed", reed)));
    plan.dressing().weave().ifPresent(weave -> facts.add(new Sheet.Fact("weave", weave.toString())));
    warp.broken().ifPresent(broken -> facts.add(new Sheet.Fact("ends that broke", Integer.toString(broken))));
    facts.add(new Sheet.Fact("picks", woven.picks().isPresent() ? woven.picks().getAsLong() + ", " + Making.of(plan).picks() + " planned" : Making.of(plan).picks() + " planned"));
    size("on the loom", woven.lengthOnLoom(), woven.widthOnLoom()).ifPresent(facts::add);
    size("off the loom", woven.lengthOffLoom(), woven.widthOffLoom()).ifPresent(facts::add);
    size("finished", woven.lengthFinished(), woven.widthFinished()).ifPresent(facts::add);
    return facts;
  }

  private static String piece(Piece piece) {
    return piece.count() + " x " + piece.name() + ", " + centimetres(piece.length()) + " x " + centimetres(piece.width());
  }

  private static String measured(Optional<Length> measured, WarpLength planned) {
    String said = metres(planned.total());
    return measured.map(length -> metres(length) + ", " + said + " planned").orElse(said + " planned");
  }

  private static Optional<Sheet.Fact> size(String name, Optional<Length> length, Optional<Length> width) {
    if (length.isEmpty() && width.isEmpty()) {
      return Optional.empty();
    }
    List<String> words = new ArrayList<>();
    length.ifPresent(measured -> words.add(metres(measured) + " long"));
    width.ifPresent(measured -> words.add(centimetres(measured) + " wide"));
    return Optional.of(new Sheet.Fact(name, String.join(", ", words)));
  }

  private List<Sheet.Row> ways() {
    Realised really = cloth.reckoning().really();
    Allowances allowances = plan.allowances();
    List<Sheet.Row> rows = new ArrayList<>();
    really.ways().forEach((way, found) -> rows.add(Sheet.Row.of(way.words(), Way.percent(way.planned(allowances)), Way.percent(found.value()), found.from().english())));
    really.sampling().ifPresent(found -> rows.add(Sheet.Row.of("sampling", centimetres(allowances.sampling()), centimetres(found.value()), found.from().english())));
    really.loomWaste().ifPresent(found -> rows.add(Sheet.Row.of("loom waste", centimetres(allowances.loomWaste()), centimetres(found.value()), found.from().english())));
    return rows;
  }

  private List<Sheet.Fact> work() {
    List<Sheet.Fact> facts = new ArrayList<>();
    cloth.made().actuals().times().forEach((kind, time) -> facts.add(new Sheet.Fact(kind.key(), time.toHours() + " h " + time.toMinutesPart() + " min")));
    return facts;
  }

  private List<Sheet.Fact> costs() {
    if (cloth.spent().isEmpty()) {
      return List.of();
    }
    List<Sheet.Fact> facts = new ArrayList<>();
    cloth.spent().get().places().forEach((place, worth) -> facts.add(new Sheet.Fact(where(place), MoneyText.print(worth.cost()))));
    facts.add(new Sheet.Fact("all of it", MoneyText.print(cloth.spent().get().total())));
    List<String> unknown = cloth.spent().get().unknown();
    if (!unknown.isEmpty()) {
      facts.add(new Sheet.Fact("not counted", "the cost is not known of " + unknown.stream().sorted().collect(Collectors.joining(", "))));
    }
    return facts;
  }

  private static String where(Place.Kind place) {
    return switch (place) {
      case CLOTH -> "in the cloth";
      case THRUMS -> "in thrums";
      case SAMPLE -> "in samples";
      case LOOM -> "still on the loom";
      default -> place.name().toLowerCase(Locale.ROOT);
    };
  }

  static String metres(Length length) {
    return length.print(LengthUnit.METRE, 2);
  }

  private static String centimetres(Length length) {
    return length.print(LengthUnit.CENTIMETRE, 1);
  }
}
