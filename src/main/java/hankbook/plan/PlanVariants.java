package hankbook.plan;

import hankbook.measure.Exact;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.measure.Sett;
import hankbook.yarn.YarnColour;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The same plan with one thing changed, as a weaver would change it in the plan's own fields. Where the number of ends changes, groups
 * counted in ends keep their proportion.
 */
public final class PlanVariants {
  private PlanVariants() {}

  /** With the length of its warp given outright; ends and width stay. */
  public static Plan withLength(Plan plan, Length length) {
    return plan.withWarp(plan.warp().withLength(Optional.of(length)));
  }

  /** With the length of its warp given outright, and the lengths woven that its wefts give in proportion, to whole millimetres. */
  public static Plan withClothLength(Plan plan, Length length) {
    BigFraction part = part(length, WarpLength.of(plan).total());
    return withLength(plan, length).withWefts(plan.wefts().stream().map(weft -> weft.withLength(weft.length().map(woven -> scaled(woven, part)))).toList());
  }

  /** With its ends given outright, and no longer by sections; the width follows. A written order of other ends gives way to their proportion. */
  public static Plan withEnds(Plan plan, int ends) {
    return ordered(plan.withWarp(plan.warp().withEnds(ends)), ends);
  }

  /** With its ends and warp length given outright. */
  public static Plan withWarp(Plan plan, int ends, Length length) {
    return withEnds(withLength(plan, length), ends);
  }

  /** With other units, which make its ends. */
  public static Plan withSections(Plan plan, Sections sections) {
    int ends = Math.addExact(sections.ends(), plan.warp().selvedgeEnds());
    return ordered(plan.withWarp(plan.warp().with(sections, plan.warp().order(), plan.warp().succession())), ends);
  }

  /** With the longest repeat of its written order so many times, and its ends given outright to that. */
  public static Plan withRepeats(Plan plan, long times) {
    Warp warp = plan.warp();
    Succession written = warp.succession().orElseThrow().withRepeats(times);
    int selvedges = warp.selvedge().isPresent() ? warp.selvedgeEnds() : 0;
    Warp counted = warp.withEnds(Math.toIntExact(written.threads() + selvedges));
    return plan.withWarp(counted.withOrder(recounted(warp.order(), written, OrderEntry.Ends.class), Optional.of(written)));
  }

  /** With another sett to the same width. Ends given outright are given anew, rounded up as ends that a width asks for are, or to whole units. */
  public static Plan withSett(Plan plan, Sett sett) {
    Warp old = plan.warp();
    Plan changed = plan.withWarp(old.withSett(sett));
    if (old.ends().isEmpty()) {
      return reordered(changed);
    }
    BigFraction width = old.sett().widthOf(old.ends().getAsInt() - old.selvedgeEnds());
    long multiples = Math.ceilDiv(Exact.roundedUp(sett.threadsIn(width)), (long) old.endsStep());
    return withEnds(changed, Math.toIntExact(multiples * old.endsStep() + old.selvedgeEnds()));
  }

  /** With so many of one of its kinds of piece, counted from 0. */
  public static Plan withPieces(Plan plan, int kind, int count) {
    List<Piece> pieces = new ArrayList<>(plan.pieces());
    pieces.set(kind, pieces.get(kind).withCount(count));
    return plan.withPieces(pieces);
  }

  /** With its longest piece of this length and the others in proportion, to whole millimetres, at least one. */
  public static Plan withPieceLength(Plan plan, Length longest) {
    Length before = longestPiece(plan);
    BigFraction part = part(longest, before);
    UnaryOperator<Length> scaled = length -> length.equals(before) ? longest : scaled(length, part);
    return plan.withPieces(plan.pieces().stream().map(piece -> piece.withLength(scaled.apply(piece.length()))).toList());
  }

  /** With no piece wider than this; the ends follow. */
  public static Plan withWidth(Plan plan, Length widest) {
    return reordered(plan.withPieces(plan.pieces().stream().map(piece -> piece.withWidth(Length.min(piece.width(), widest))).toList()));
  }

  /** With other picks in every weft that had these. */
  public static Plan withPicks(Plan plan, Sett from, Sett to) {
    return plan.withWefts(plan.wefts().stream().map(weft -> weft.picks().compareTo(from) == 0 ? weft.withPicks(to) : weft).toList());
  }

  /** With another length of warp given to sampling. */
  public static Plan withSampling(Plan plan, Length sampling) {
    return plan.withAllowances(plan.allowances().withSampling(sampling));
  }

  /** With other allowances; ends that the width asks for follow. */
  public static Plan withAllowances(Plan plan, Allowances allowances) {
    return reordered(plan.withAllowances(allowances));
  }

  /** With one yarn in the place of another, in warp and weft. */
  public static Plan withYarn(Plan plan, YarnColour from, YarnColour to) {
    return withYarns(plan, Map.of(from, to));
  }

  /** With yarns in the place of others, in warp and weft, all at once. */
  static Plan withYarns(Plan plan, Map<YarnColour, YarnColour> others) {
    Warp warp = plan.warp();
    boolean written = warp.succession().isPresent();
    List<OrderEntry> order =
        warp.order().stream().map(entry -> others.containsKey(entry.yarn()) ? entry.with(other(entry.yarn(), others), mark(entry, others, written)) : entry).toList();
    boolean picked = plan.weftSuccession().isPresent();
    List<Weft> wefts = plan.wefts().stream().map(weft -> others.containsKey(weft.yarn()) ? weft.with(other(weft.yarn(), others), mark(weft, others, picked)) : weft).toList();
    Optional<Selvedge> selvedge = warp.selvedge().map(edge -> new Selvedge(other(edge.yarn(), others), edge.strands()));
    return plan.withWarp(warp.withOrder(order, warp.succession()).withSelvedge(selvedge)).withWefts(wefts);
  }

  private static YarnColour other(YarnColour yarn, Map<YarnColour, YarnColour> others) {
    return others.getOrDefault(yarn, yarn);
  }

  /** A written order goes on calling the yarn what it did; else a yarn that was called by its colour is called by the new one. */
  private static String mark(Marked marked, Map<YarnColour, YarnColour> others, boolean written) {
    return !written && marked.mark().equals(marked.yarn().colour()) ? other(marked.yarn(), others).colour() : marked.mark();
  }

  /** The warp alone. */
  public static Plan withoutWeft(Plan plan) {
    return plan.withWefts(List.of());
  }

  /** The finished length of the longest piece. */
  public static Length longestPiece(Plan plan) {
    return most(plan, Piece::length);
  }

  /** The finished width of the widest piece. */
  public static Length widestPiece(Plan plan) {
    return most(plan, Piece::width);
  }

  private static Length most(Plan plan, Function<Piece, Length> of) {
    return plan.pieces().stream().map(of).max(Comparator.naturalOrder()).orElse(Length.ZERO);
  }

  private static BigFraction part(Length part, Length whole) {
    return BigFraction.of(part.tenthsOfMillimetre(), whole.tenthsOfMillimetre());
  }

  private static Length scaled(Length length, BigFraction part) {
    return Length.of(Math.max(1, Exact.whole(length.in(LengthUnit.MILLIMETRE).multiply(part), RoundingMode.FLOOR)), LengthUnit.MILLIMETRE);
  }

  private static Plan reordered(Plan plan) {
    return ordered(plan, Width.of(plan).ends());
  }

  /** In an order that makes so many ends. A written one that makes them stays: it says more than proportions do. */
  private static Plan ordered(Plan plan, int ends) {
    Warp warp = plan.warp();
    int wanted = warp.ordered(ends);
    if (warp.succession().isEmpty()) {
      return plan.withWarp(warp.withOrder(proportional(warp.order(), wanted), Optional.empty()));
    }
    Succession written = warp.succession().get();
    List<OrderEntry> counted = recounted(warp.order(), written, OrderEntry.Amount.class);
    return written.threads() == wanted ? plan : plan.withWarp(warp.withOrder(proportional(counted, wanted), Optional.empty()));
  }

  /** The groups with the counts that a written order makes, those whose amount is of a kind. */
  private static List<OrderEntry> recounted(List<OrderEntry> order, Succession written, Class<? extends OrderEntry.Amount> kind) {
    Map<String, Long> counts = written.counts();
    return order.stream()
        .map(entry -> kind.isInstance(entry.amount()) ? entry.with(new OrderEntry.Ends(Math.toIntExact(counts.getOrDefault(entry.mark(), 0L)))) : entry)
        .toList();
  }

  private static List<OrderEntry> proportional(List<OrderEntry> order, int ends) {
    long counted = order.stream().mapToLong(PlanVariants::counted).sum();
    boolean shared = order.stream().anyMatch(entry -> entry.amount() instanceof OrderEntry.Share);
    if (counted == 0 || counted == ends || (shared && counted < ends)) {
      return order;
    }
    List<Long> parts = Apportionment.of(ends, order.stream().map(entry -> BigFraction.of(counted(entry), counted)).toList(), "the warp's order");
    List<OrderEntry> proportional = new ArrayList<>();
    for (int i = 0; i < order.size(); i++) {
      OrderEntry entry = order.get(i);
      proportional.add(entry.amount() instanceof OrderEntry.Ends ? entry.with(new OrderEntry.Ends(Math.toIntExact(parts.get(i)))) : entry);
    }
    return proportional;
  }

  private static long counted(OrderEntry entry) {
    return entry.amount() instanceof OrderEntry.Ends ends ? ends.ends() : 0;
  }
}
