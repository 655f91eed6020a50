package hankbook.plan;

import java.util.Locale;

/** What a figure of a plan is called, and how it is reckoned where it is. Sources of the formulas: docs/maths.md. */
public enum Term {
  FINISHED_WIDTH("finished width", ""),
  WIDEST("finished width of the widest piece", "The widest piece rules: all are woven on the same warp."),
  KEPT_OF_WIDTH("left of the width by wet finishing", "All of it, less the shrinkage in width."),
  KEPT_BY_DRAW_IN("left of the reed's width at the fell", "All of it, less the draw-in."),
  KEPT_OF_LENGTH("left of the length by wet finishing", "All of it, less the shrinkage in length."),
  WHOLE("all of it", ""),
  WIDTH_SHRINKAGE("shrinkage in width", ""),
  LENGTH_SHRINKAGE("shrinkage in length", ""),
  DRAW_IN("draw-in", ""),
  WIDTH_IN_REED("width in the reed", "The finished width, divided by what wet finishing and draw-in leave of it."),
  WIDTH_OF_ENDS("width in the reed", "The ends beside the selvedges, divided by the sett."),
  SETT("sett", ""),
  ENDS_BESIDE_SELVEDGES("ends beside the selvedges", "All ends, less those of the selvedges."),
  ENDS_ACROSS("ends across the width", "The width in the reed, times the sett."),
  WHOLE_ENDS("whole ends across the width", "Rounded up to a whole end."),
  ENDS_IN_UNITS("ends in whole units", "Rounded up to a whole number of units."),
  ENDS_MULTIPLE("ends in a unit", ""),
  ENDS_OF_SECTION("ends of a section", "Its repeats, times its units, times the ends of a unit."),
  REPEATS("repeats", ""),
  UNITS("units", ""),
  ENDS_PER_UNIT("ends per unit", ""),
  SELVEDGE_ENDS("selvedge ends", ""),
  ENDS("ends", "Those across the width, and the selvedges."),
  PIECES("pieces", ""),
  PIECE_LENGTH("finished length of each", ""),
  PIECE_HEMS("hems of each", ""),
  PIECE_FRINGE("fringe of each", ""),
  OF_PIECES("of these pieces", "So many of them, times the length of each."),
  CLOTH("finished cloth", "The finished lengths of all pieces together."),
  HEMS("hems", "The hems of all pieces together."),
  FRINGE("fringe", "The fringes of all pieces together."),
  GAPS("gaps", "One between each two pieces."),
  GAPS_COUNT("gaps between pieces", "One less than there are pieces."),
  GAP("each gap", ""),
  ONE("one", ""),
  SAMPLING("sampling", ""),
  LOOM_WASTE("loom waste", ""),
  CLOTH_AND_HEMS("finished cloth with its hems", "The two together."),
  OFF_LOOM("cloth off the loom", "Finished cloth and hems, divided by what wet finishing leaves of the length."),
  OFF_LOOM_RECORDED("cloth off the loom, to a tenth of a millimetre", "Rounded to the nearest."),
  SHRINKAGE("shrinkage", "Cloth off the loom, less the finished cloth and its hems."),
  YARN_PER_CLOTH("warp to a length of cloth", "All of the cloth, and the take-up that comes to it."),
  YARN_LEFT_BY_TAKE_UP("cloth to a length of yarn", "All of the yarn, less the take-up."),
  WARP_TAKE_UP("warp take-up", ""),
  WEFT_TAKE_UP("weft take-up", ""),
  WOVEN_UP("warp woven up in the cloth", "Cloth off the loom, times the warp that a length of cloth takes."),
  WOVEN_UP_RECORDED("warp woven up in the cloth, to a tenth of a millimetre", "Rounded to the nearest."),
  TAKE_UP("take-up", "Warp woven up in the cloth, less the cloth off the loom."),
  UNROUNDED("warp length before rounding", "All parts of it together, exactly."),
  ROUNDING_STEP("step", ""),
  WARP_ROUNDED("warp length, rounded", "Rounded up to a whole number of the plan's steps."),
  WARP_TO_TENTH("warp length, to a tenth of a millimetre", "Rounded to the nearest."),
  ROUNDING("rounding", "The warp length as it is rounded, less its parts."),
  LEFT_BY_GIVEN("left over of the length given", "The warp length that was given, less all that is to come from it."),
  GIVEN_LENGTH("warp length as given", ""),
  LEFT_FOR_CLOTH("warp left to weave", "The warp length that was given, less sampling and loom waste."),
  LEFT_TO_WEAVE("warp to weave", "What is left to weave, but not less than nothing."),
  NOTHING("nothing", ""),
  OFF_LOOM_OF_GIVEN("cloth off the loom", "The warp to weave, divided by what a length of cloth takes of it."),
  CLOTH_OF_GIVEN_EXACT("finished cloth", "Cloth off the loom, times what wet finishing leaves of the length."),
  CLOTH_OF_GIVEN("finished cloth, to a tenth of a millimetre", "Rounded to the nearest."),
  SHRINKAGE_OF_GIVEN("shrinkage", "Cloth off the loom, less the finished cloth."),
  TAKE_UP_OF_GIVEN("take-up", "The warp to weave, less the finished cloth and the shrinkage."),
  WARP_LENGTH("warp length", "Its parts together."),
  GROUP_ENDS("ends of the group", "Those in the order, and repair ends."),
  ENDS_IN_ORDER("ends in the order", ""),
  REPAIR_ENDS("repair ends", ""),
  STRANDS("strands", ""),
  WINDING_GROWTH("with winding loss", "All of it, and the winding loss."),
  WINDING("winding loss", ""),
  GROUP_NEED("warp of the group", "Its ends, times the strands in one, times the length of each, with the winding loss."),
  NEED_RECORDED("yarn", "Rounded up to a tenth of a millimetre."),
  WARP_NEED("need in the warp", "All ends of this yarn together."),
  WEFT_GROWTH("with weft take-up", "All of the width, and the take-up."),
  PICKS_PER_LENGTH("picks per length", ""),
  WOVEN("woven length that takes picks", "Cloth off the loom, and what of the sampling is woven."),
  WOVEN_GIVEN("woven length as given", ""),
  SAMPLED("woven as sampling", "Sampling is a length of warp, divided by what a length of cloth takes."),
  PICKS_EXACT("picks in the woven length", "Picks per length, times the woven length."),
  PICKS("picks", "Rounded up to a whole pick."),
  PICKS_SHARED("picks of this yarn", "Its part of them, in whole picks: by its share, or as the written order counts."),
  SHARE("share of the picks", ""),
  PART_OF_REED("part of the reed's width", ""),
  WEFT_OF("weft of the yarn", "Its picks, times the strands in one, times the width in the reed, with the take-up."),
  WEFT_NEED("need in the weft", "All picks of this yarn together."),
  NEED("need", "What goes into the warp, and into the weft."),
  FREE("free", "What skeins on the shelf hold that are promised to no other plan."),
  FREE_OF_SKEIN("free of the skein", ""),
  FREE_SINCE_MEASURED("free of the skein", "What it held when it was measured, and what came to it or went from it since."),
  MEASURED_BY_LABEL("length on the label", ""),
  MEASURED_BY_TURNS("length by turns", "Turns counted, times the circumference of the reel."),
  TURNS("turns", ""),
  REEL("circumference of the reel", ""),
  BY_WEIGHT_EXACT("yarn by its grist", "What the yarn weighs without its package, divided by the grist."),
  MEASURED_BY_WEIGHT("length by weight", "Rounded to the nearest tenth of a millimetre."),
  NET("yarn alone on the balance", "What the package weighs, less its tare."),
  NET_AT_STANDARD("yarn alone, at its standard moisture", ""),
  GROSS("on the balance", ""),
  TARE("tare", ""),
  GRIST("grist", ""),
  SINCE("taken, promised or come since", ""),
  MARGIN("margin", "Free, less need. Negative where it is short."),
  UNCERTAINTY("uncertainty", "Errors of different sorts partly cancel out: the square of the whole is the sum of the squares."),
  ERROR("standard uncertainty", ""),
  MARGIN_BY_UNCERTAINTY("margin, counted in uncertainties", "The margin, divided by its uncertainty."),
  RISK("risk of running short", "How likely an error of this size is that leaves less than is needed: the normal curve at the margin, counted in uncertainties."),
  ENDS_FROM_SKEIN("ends from the skein", "As chosen; a skein gives no more whole ends than its length holds."),
  MOST_ENDS("whole ends it could give", "What is free of it, divided by the yarn in one end, rounded down."),
  ENDS_HELD("ends that its length holds", "What is free of it, divided by the yarn in one end."),
  YARN_IN_END("yarn in one end", ""),
  WARP_FROM_SKEIN("warp from the skein", "Its ends, times the yarn in one."),
  WEFT_FROM_SKEIN("weft from the skein", ""),
  FROM_SKEIN("yarn from the skein", "What it gives to the warp, and to the weft."),
  LEFT_ON_SKEIN("left on the skein", "What is free of it, less what it gives."),
  PASSES("passes", "Once along the warping path each, with all threads that are held."),
  PASSES_OF_STRETCHES("passes for stretches alike", "So many stretches, times the passes for each."),
  PASSES_OF_STEP("passes for a stretch", "Rounded up to a whole pass."),
  PASSES_EXACT("passes, exactly", "Its ends, divided by the threads held together."),
  SPARE_PASSES("passes for repair ends", "Wound last, by themselves: so many stretches, times the passes for each."),
  STRETCHES("stretches", ""),
  STRETCH_ENDS("ends of the stretch", ""),
  THREADS("threads held together", ""),
  COST("cost", "The sum of its parts, to the smallest coin."),
  COST_GIVEN("cost", ""),
  COST_OF_YARN("cost of yarn", "The part of what was paid for the skein or put-up that falls on this length, to the smallest coin."),
  YARN_COSTED("yarn of it", ""),
  PAID("paid for", ""),
  PAID_LENGTH("length that was paid for", ""),
  COST_OF_PIECES("cost of all of them", ""),
  COST_EACH_EXACT("cost of each, exactly", "What all of them cost, divided by how many they are."),
  COST_EACH("cost of each", "Rounded down to the smallest coin; some cost one coin more, so that all add up."),
  WORK_EXACT("work, exactly", "So many, times the time for each, times what an hour costs."),
  WORK_COST("cost of work", "All work is rounded once, as a whole, and shared out to its kinds; so a coin may differ."),
  WORK_COUNT("how many", ""),
  WORK_TIME("time for each", ""),
  HOURLY("an hour", ""),
  OVERHEAD("overheads", "Rounded to the nearest coin."),
  OVERHEAD_EXACT("part of yarn and work", "Yarn and work together, times the part that was set."),
  YARN_AND_WORK("yarn and work", "The two together."),
  OVERHEAD_PART("part", "");

  private final String words;
  private final String formula;

  Term(String words, String formula) {
    this.words = words;
    this.formula = formula;
  }

  /** A noun phrase. */
  public String words() {
    return words;
  }

  /** How it is reckoned, in a sentence; empty where it is given. */
  public String formula() {
    return formula;
  }

  /** Its name in files. */
  public String key() {
    String[] parts = name().toLowerCase(Locale.ROOT).split("_", -1);
    StringBuilder key = new StringBuilder(parts[0]);
    for (int i = 1; i < parts.length; i++) {
      key.append(Character.toUpperCase(parts[i].charAt(0))).append(parts[i].substring(1));
    }
    return key.toString();
  }
}
