package hankbook.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import hankbook.gear.Sley;
import hankbook.gear.Weave;
import hankbook.measure.Arithmetic;
import hankbook.measure.Length;
import hankbook.measure.Percentage;
import hankbook.measure.Sett;
import hankbook.measure.Unreadable;
import hankbook.plan.Allowances;
import hankbook.plan.Dressing;
import hankbook.plan.Piece;
import hankbook.plan.Plan;
import hankbook.plan.Succession;
import hankbook.plan.Warp;
import hankbook.plan.Weft;
import hankbook.plan.WeftOrder;
import hankbook.yarn.OneLine;
import hankbook.yarn.YarnColour;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads a plan file, format {@code hankbook-plan/1}. */
public final class PlanFile {
  static final String FORMAT = "hankbook-plan/1";
  private static final Set<String> PLAN =
      Set.of("format", "name", "pieces", "warp", "weft", "weftSuccession", "allowances", "winding", "loom", "reed");
  private static final String WANTED_LENGTH = "a length such as 70 cm";

  private PlanFile() {}

  /**
   * Reads the text of a plan file.
   *
   * @param file its name, for messages
   * @throws BadInput naming the file, the field, what was found and what is wanted
   */
  public static Plan read(String file, String text) throws BadInput {
    return JsonFile.read(file, text, "a plan", PlanFile::plan);
  }

  static Plan plan(JsonNode root) {
    return plan(new JsonFields(root, "", PLAN));
  }

  private static Plan plan(JsonFields fields) {
    fields.required("format", FORMAT, text -> JsonFile.format(text, FORMAT));
    String name = fields.required("name", "a name for the plan", OneLine::of);
    List<Piece> pieces = fields.list("pieces", PlanPart.PIECES.known()).stream().map(PlanFile::piece).toList();
    JsonFields warpFields = fields.object("warp", WarpFields.KNOWN);
    Warp warp = WarpFields.warp(warpFields);
    List<Weft> wefts = fields.list("weft", PlanPart.WEFT.known()).stream().map(PlanFile::weft).toList();
    Optional<Succession> weftSuccession = fields.read("weftSuccession", Succession::parse);
    weftSuccession.ifPresent(written -> fields.check("weftSuccession", () -> WeftOrder.checkWritten(written, wefts)));
    Allowances allowances = allowances(fields.object("allowances", PlanPart.ALLOWANCES.known()));
    int threads = fields.object("winding", PlanPart.WINDING.known()).count("threads", 1);
    return fields.built(() -> new Plan(name, pieces, warp, wefts, weftSuccession, allowances, threads, dressing(fields, warpFields)));
  }

  private static Dressing dressing(JsonFields fields, JsonFields warp) {
    return new Dressing(
        fields.read("loom", OneLine::of), fields.read("reed", OneLine::of), warp.read("weave", Weave::parse), warp.read("sley", Sley::parse));
  }

  private static Piece piece(JsonFields fields) {
    String name = fields.read("name", String::strip).orElse("piece");
    Length length = fields.required("length", WANTED_LENGTH, Length::parse);
    Length width = fields.required("width", WANTED_LENGTH, Length::parse);
    return fields.built(() -> new Piece(name, fields.count("count", 1), length, width, length(fields, "hems"), length(fields, "fringe")));
  }

  private static Weft weft(JsonFields fields) {
    YarnColour yarn = yarn(fields);
    Sett picks = fields.required("picks", "picks to a length such as 9/cm", Sett::parse);
    return fields.built(
        () ->
            new Weft(
                yarn,
                mark(fields, yarn),
                picks,
                fields.read("share", Arithmetic::number).orElse(BigFraction.ONE),
                fields.count("strands", 1),
                fields.read("width", Arithmetic::number).orElse(BigFraction.ONE),
                fields.read("length", Length::parse),
                oneLot(fields)));
  }

  private static Allowances allowances(JsonFields fields) {
    return fields.built(
        () ->
            new Allowances(
                percentage(fields, "warpTakeUp"),
                percentage(fields, "weftTakeUp"),
                percentage(fields, "drawIn"),
                percentage(fields, "lengthShrinkage"),
                percentage(fields, "widthShrinkage"),
                length(fields, "sampling"),
                length(fields, "loomWaste"),
                length(fields, "gap"),
                percentage(fields, "winding"),
                fields.count("repairEnds", 0),
                length(fields, "roundUpTo")));
  }

  /** The short name of a yarn in a written order: its colour where no other is given. */
  static String mark(JsonFields fields, YarnColour yarn) {
    return fields.read("mark", String::strip).filter(mark -> !mark.isEmpty()).orElse(yarn.colour());
  }

  static boolean oneLot(JsonFields fields) {
    return fields.read("oneLot", PlanFile::yesOrNo).orElse(false);
  }

  static boolean yesOrNo(String text) {
    return switch (text.strip().toLowerCase(Locale.ROOT)) {
      case "yes", "true" -> true;
      case "no", "false", "" -> false;
      default -> throw new Unreadable(text, "yes or no");
    };
  }

  static YarnColour yarn(JsonFields fields) {
    String yarn = fields.required("yarn", "the yarn's name", String::strip);
    String colour = fields.required("colour", "the colour's name", String::strip);
    return fields.built(() -> new YarnColour(yarn, colour));
  }

  private static Length length(JsonFields fields, String key) {
    return fields.read(key, Length::parse).orElse(Length.ZERO);
  }

  private static Percentage percentage(JsonFields fields, String key) {
    return fields.read(key, Percentage::parse).orElse(Percentage.ZERO);
  }
}
