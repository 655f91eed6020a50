package hankbook.exchange;

import hankbook.measure.Arithmetic;
import hankbook.measure.Length;
import hankbook.measure.Sett;
import hankbook.measure.Unreadable;
import hankbook.plan.OrderEntry;
import hankbook.plan.Section;
import hankbook.plan.Sections;
import hankbook.plan.Selvedge;
import hankbook.plan.Succession;
import hankbook.plan.Warp;
import hankbook.plan.WarpOrder;
import hankbook.yarn.YarnColour;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads the warp of a plan file. */
final class WarpFields {
  static final Set<String> KNOWN = known();

  private WarpFields() {}

  private static Set<String> known() {
    Set<String> known = new HashSet<>(PlanPart.WARP.known());
    known.addAll(List.of(PlanPart.ORDER.key(), PlanPart.SECTIONS.key(), PlanPart.SELVEDGE.key()));
    return Set.copyOf(known);
  }

  static Warp warp(JsonFields fields) {
    Sett sett = fields.required("sett", "threads to a length such as 10/cm", Sett::parse);
    Optional<Succession> succession = fields.read("succession", Succession::parse);
    List<OrderEntry> order =
        fields.list("order", PlanPart.ORDER.known()).stream().map(entry -> orderEntry(entry, succession.isPresent())).toList();
    if (!order.isEmpty()) {
      succession.ifPresent(written -> fields.check("succession", () -> WarpOrder.checkWritten(written, order)));
    }
    Optional<Selvedge> selvedge = fields.has("selvedge") ? Optional.of(selvedge(fields.object("selvedge", PlanPart.SELVEDGE.known()))) : Optional.empty();
    return fields.built(
        () -> {
          int selvedgeEnds = fields.count("selvedgeEnds", 0);
          Optional<Sections> sections = sections(fields);
          OptionalInt ends = ends(fields, sections, selvedgeEnds);
          Optional<Length> length = fields.read("length", Length::parse);
          return new Warp(sett, ends, length, fields.count("endsMultiple", 1), selvedgeEnds, order, succession, selvedge, sections);
        });
  }

  private static Selvedge selvedge(JsonFields fields) {
    YarnColour yarn = PlanFile.yarn(fields);
    return fields.built(() -> new Selvedge(yarn, fields.count("strands", 1)));
  }

  private static OptionalInt ends(JsonFields fields, Optional<Sections> sections, int selvedgeEnds) {
    Optional<Integer> outright = fields.read("ends", Arithmetic::count);
    if (sections.isEmpty()) {
      return outright.map(OptionalInt::of).orElseGet(OptionalInt::empty);
    }
    if (outright.isPresent()) {
      throw new Unreadable("both ends and sections", "one of the two");
    }
    return OptionalInt.of(Math.addExact(sections.get().ends(), selvedgeEnds));
  }

  private static Optional<Sections> sections(JsonFields fields) {
    List<Section> sections = fields.list("sections", PlanPart.SECTIONS.known()).stream().map(WarpFields::section).toList();
    int left = fields.count("extendLeft", 0);
    int right = fields.count("extendRight", 0);
    if (sections.isEmpty() && left == 0 && right == 0) {
      return Optional.empty();
    }
    int perUnit = fields.required("endsPerUnit", "how many ends a unit has", Arithmetic::count);
    return Optional.of(new Sections(sections, perUnit, left, right));
  }

  private static Section section(JsonFields fields) {
    return fields.built(() -> new Section(fields.read("name", String::strip).orElse(""), fields.count("repeats", 1), fields.count("units", 0)));
  }

  private static OrderEntry orderEntry(JsonFields fields, boolean written) {
    YarnColour yarn = PlanFile.yarn(fields);
    Optional<Integer> ends = fields.read("ends", Arithmetic::count);
    Optional<BigFraction> share = fields.read("share", Arithmetic::number);
    return fields.built(
        () ->
            new OrderEntry(
                yarn,
                PlanFile.mark(fields, yarn),
                amount(ends, share, written),
                fields.count("strands", 1),
                PlanFile.oneLot(fields),
                fields.count("repairEnds", 0)));
  }

  private static OrderEntry.Amount amount(Optional<Integer> ends, Optional<BigFraction> share, boolean written) {
    if ((ends.isPresent() && share.isPresent()) || (ends.isEmpty() && share.isEmpty() && !written)) {
      throw new Unreadable(ends.isPresent() ? "both ends and share" : "", "either ends or share");
    }
    return ends.<OrderEntry.Amount>map(OrderEntry.Ends::new)
        .or(() -> share.map(OrderEntry.Share::new))
        .orElseGet(OrderEntry.Written::new);
  }
}
