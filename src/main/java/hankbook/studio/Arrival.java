package hankbook.studio;

import hankbook.measure.Length;
import hankbook.measure.YarnNumber;
import hankbook.store.Remeasurement;
import hankbook.yarn.Measures;
import hankbook.yarn.Skein;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A skein that is written down already, and what a row says of it when it comes.
 *
 * @param known as it stands in the ledger
 * @param comes as the row says
 */
record Arrival(Skein known, Skein comes) {
  private static final Measures NOTHING = new Measures(Optional.empty(), Optional.empty(), Optional.empty());

  /** What cannot differ in one and the same skein. */
  private record Sameness(String field, String comes, String known) {
    boolean fails() {
      return !comes.equals(known);
    }

    /** In the words of a fault of a file. */
    String fault(String code) {
      return field + ": found '" + comes + "', wanted '" + known + "', which " + code + " has in the ledger";
    }
  }

  /** The first field by which it would be another yarn, what the row says there and what the ledger does; nothing where it is the same yarn. */
  Optional<String> anotherYarn() {
    List<Sameness> fields = List.of(
        new Sameness("yarn", comes.yarn().yarn(), known.yarn().yarn()),
        new Sameness("colour", comes.yarn().colour(), known.yarn().colour()),
        new Sameness("grist", grist(comes.grist().or(known::grist)), grist(known.grist().or(comes::grist))),
        new Sameness("form", comes.form().toString(), known.form().toString()));
    return fields.stream().filter(Sameness::fails).findFirst().map(field -> field.fault(known.code()));
  }

  private static String grist(Optional<YarnNumber> grist) {
    return grist.map(YarnNumber::toString).orElse("");
  }

  /** As it is described from now on: what the row says, and what it leaves out as it was. */
  Skein described(LocalDate today) {
    return described(Optional.of(today));
  }

  /** Whether it came so before, and the row says nothing else than is known since. */
  boolean isKnown(List<Remeasurement> again) {
    Optional<Length> length = comes.measurement().length();
    boolean measured = measuredAnew().isEmpty() || again.stream().map(Remeasurement::found).anyMatch(found -> Optional.of(found).equals(length));
    return anotherYarn().isEmpty() && measured && described(known.received()).equals(known);
  }

  private Skein described(Optional<LocalDate> day) {
    return new Skein(
        known.code(), known.yarn(), either(comes.hex(), known.hex()), either(comes.fibre(), known.fibre()), comes.grist().or(known::grist), known.form(), known.label(),
        known.turns(), known.weighing(), known.opened(), either(comes.lot(), known.lot()), either(comes.location(), known.location()), comes.cost().or(known::cost),
        comes.received().or(() -> day), known.kept(), known.sample());
  }

  private static String either(String said, String before) {
    return said.isEmpty() ? before : said;
  }

  /** How it was measured when it came, where that is not as it was written down. */
  Optional<Measures> measuredAnew() {
    Measures measures = new Measures(comes.label(), comes.turns(), comes.weighing());
    boolean asKnown = measures.equals(new Measures(known.label(), known.turns(), known.weighing())) && comes.grist().or(known::grist).equals(known.grist());
    return measures.equals(NOTHING) || asKnown ? Optional.empty() : Optional.of(measures);
  }
}
