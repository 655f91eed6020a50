package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.ActualsPart;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.measure.Unreadable;
import hankbook.plan.Making;
import hankbook.plan.Piece;
import hankbook.plan.Plan;
import hankbook.plan.WarpPart;
import hankbook.plan.Yardage;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** What is measured of a warp and its cloth: what it is called, how it is measured, and what the plan said of it. */
enum FoundField {
  WARP_LENGTH(ActualsPart.WARP, "length", "Length wound", "One end as it was wound: rounds of the board or mill times its circuit."),
  ENDS(ActualsPart.WARP, "ends", "Ends", "Counted in the reed, selvedges with them, mended ends once."),
  BROKEN(ActualsPart.WARP, "broken", "Ends broken", "Those that were mended with an end of spare yarn."),
  LOOM_WASTE(ActualsPart.WARP, "loomWaste", "Loom waste", "Warp that could not be woven, knots in front and thrums behind together."),
  SAMPLING(ActualsPart.WARP, "sampling", "Sampling", "Warp that went into samples and trials."),
  IN_REED(ActualsPart.WARP, "widthInReed", "Width in the reed", "From the first end to the last, in the reed."),
  LENGTH_ON_LOOM(ActualsPart.CLOTH, "lengthOnLoom", "Length on the loom", "All that was woven for the pieces, hems with it, measured under tension as it was wound on."),
  LENGTH_OFF_LOOM(ActualsPart.CLOTH, "lengthOffLoom", "Length off the loom", "The same cut off and rested a night, before washing."),
  LENGTH_FINISHED(ActualsPart.CLOTH, "lengthFinished", "Length finished", "The same after washing, drying and pressing."),
  WIDTH_ON_LOOM(ActualsPart.CLOTH, "widthOnLoom", "Width on the loom", "At the fell, the mean of some places."),
  WIDTH_OFF_LOOM(ActualsPart.CLOTH, "widthOffLoom", "Width off the loom", "Rested, before washing, the mean of some places."),
  WIDTH_FINISHED(ActualsPart.CLOTH, "widthFinished", "Width finished", "After washing and pressing, the mean of some places."),
  PICKS(ActualsPart.CLOTH, "picks", "Picks", "All picks of every weft, sampling with them: counted, or picks to the centimetre times the length."),
  PIECES(ActualsPart.CLOTH, "pieces", "Pieces made", "Those that can be used.");

  private final ActualsPart part;
  private final String key;
  private final String caption;
  private final String help;

  FoundField(ActualsPart part, String key, String caption, String help) {
    this.part = part;
    this.key = key;
    this.caption = caption;
    this.help = help;
  }

  /** The fields of a part, in the order in which they are asked for. */
  static List<FoundField> of(ActualsPart part) {
    return Arrays.stream(values()).filter(field -> field.part == part).toList();
  }

  ActualsPart part() {
    return part;
  }

  String key() {
    return key;
  }

  String caption() {
    return Say.known(caption);
  }

  /** How it is measured. */
  String help() {
    return Say.known(help);
  }

  /** What the plan said, as a prompt; empty where it said nothing. */
  String prompt(Plan plan) {
    try {
      String said = planned(plan);
      return said.isEmpty() ? "" : Say.text("planned {0}", said);
    } catch (Unreadable | ArithmeticException unfinished) {
      return "";
    }
  }

  private String planned(Plan plan) {
    return switch (this) {
      case WARP_LENGTH -> metres(Yardage.of(plan).warp().total());
      case ENDS -> Integer.toString(Yardage.of(plan).width().ends());
      case BROKEN -> Integer.toString(plan.allowances().repairEnds());
      case LOOM_WASTE -> centimetres(plan.allowances().loomWaste());
      case SAMPLING -> centimetres(plan.allowances().sampling());
      case IN_REED -> centimetres(Yardage.of(plan).width().inReed());
      case LENGTH_OFF_LOOM -> metres(parts(plan, WarpPart.CLOTH, WarpPart.HEMS, WarpPart.SHRINKAGE));
      case LENGTH_FINISHED -> metres(parts(plan, WarpPart.CLOTH, WarpPart.HEMS));
      case WIDTH_ON_LOOM -> centimetres(Length.ofTenths(Yardage.of(plan).width().inReedTenths().multiply(plan.allowances().drawIn().remaining()), RoundingMode.HALF_UP));
      case WIDTH_FINISHED -> centimetres(Yardage.of(plan).width().finished(plan.allowances()));
      case PICKS -> Long.toString(Making.of(plan).picks());
      case PIECES -> Long.toString(plan.pieces().stream().mapToLong(Piece::count).sum());
      case LENGTH_ON_LOOM, WIDTH_OFF_LOOM -> "";
    };
  }

  private static String metres(Length length) {
    return length.print(LengthUnit.METRE, 2);
  }

  private static String centimetres(Length length) {
    return length.print(LengthUnit.CENTIMETRE, 1);
  }

  private static Length parts(Plan plan, WarpPart... parts) {
    var all = Yardage.of(plan).warp().parts();
    return Stream.of(parts).map(part -> Objects.requireNonNull(all.get(part))).reduce(Length.ZERO, Length::plus);
  }
}
