package hankbook.studio;

import hankbook.ledger.ChainedEntry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.measure.Length;
import hankbook.store.Remeasurement;
import hankbook.store.Session;
import hankbook.yarn.Measurement;
import hankbook.yarn.Measures;
import hankbook.yarn.Regain;
import hankbook.yarn.Skein;
import hankbook.yarn.Turns;
import hankbook.yarn.Weighing;
import java.util.Optional;
import java.util.UUID;

/**
 * Puts the book right after a skein was weighed or measured again. The skein is all that is wound on it still, with what is reserved for plans,
 * without what is on a loom. Where it is said how it was measured, that is how surely its metres are known from then on.
 */
public final class Recount {
  private final Studio studio;

  public Recount(Studio studio) {
    this.studio = studio;
  }

  /**
   * Corrects what the house holds of a skein to what was found.
   *
   * @param found zero or more
   * @param note how it was found; may be empty
   * @return the correction; nothing where the book was right
   * @throws NotDone if there is no such skein, or less of it was found than is reserved
   */
  public Optional<ChainedEntry> skein(UUID id, String code, Length found, String note) throws NotDone {
    if (found.isNegative()) {
      throw NotDone.because("A skein cannot hold less than nothing; found is {0}.", found);
    }
    SkeinYarn skein = new SkeinYarn(studio, id, EntryKind.RECOUNT, code, Note.of(note));
    return studio.write(session -> correct(session, skein, found, Measures.NONE));
  }

  /**
   * Corrects it to what a weighing makes of it, by the yarn's own grist or its yarn number.
   *
   * @throws NotDone also if no grist of it is known, or the moisture was measured and its fibre's standard regain is not known
   */
  public Optional<ChainedEntry> weighed(UUID id, String code, Weighing weighing, String note) throws NotDone {
    return measured(id, code, new Measures(Optional.empty(), Optional.empty(), Optional.of(weighing)), note);
  }

  /**
   * Corrects it to what was counted on a reel.
   *
   * @throws NotDone if there is no such skein, or less of it was found than is reserved
   */
  public Optional<ChainedEntry> counted(UUID id, String code, Turns turns, String note) throws NotDone {
    return measured(id, code, new Measures(Optional.empty(), Optional.of(turns), Optional.empty()), note);
  }

  /** What a recount that was entered just now lies far from, so that a slip in a weight is seen; empty where it lies far from nothing. */
  public Optional<FarOff> farOff(ChainedEntry recount) {
    String code = recount.entry().transfers().getFirst().skein();
    return studio.read(session -> Shelf.skein(session, code)).flatMap(after -> FarOff.of(recount, after));
  }

  private Optional<ChainedEntry> measured(UUID id, String code, Measures measures, String note) throws NotDone {
    SkeinYarn skein = new SkeinYarn(studio, id, EntryKind.RECOUNT, code, Note.of(note));
    return studio.write(session -> {
      Optional<Skein> known = session.skeins().find(code);
      if (known.isEmpty()) {
        throw NotDone.because("There is no skein {0} in the ledger.", code);
      }
      return correct(session, skein, found(session, known.get(), measures), measures);
    });
  }

  /** Corrects a skein that comes in this session to how it was measured then. */
  void onArrival(Session session, Skein skein, Measures measures) throws NotDone {
    SkeinYarn arrived = new SkeinYarn(studio, UUID.randomUUID(), EntryKind.RECOUNT, skein.code(), "measured when it came");
    correct(session, arrived, found(session, skein, measures), measures);
  }

  /** All that is on a skein by what was read off it. */
  static Length found(Session session, Skein skein, Measures measures) throws NotDone {
    boolean moistureUnknown = measures.weighing().flatMap(Weighing::regain).isPresent() && Regain.standard(skein.fibre()).isEmpty();
    if (moistureUnknown) {
      throw NotDone.because("The standard regain of {0} is not known, its fibre being '{1}'; leave the regain out.", skein.code(), skein.fibre());
    }
    Measurement measurement = measures.measurement(skein.grist(), session.gristSamples().of(skein.yarn().yarn()), skein.fibre());
    Optional<Length> length = measurement.length();
    if (length.isEmpty()) {
      throw NotDone.because("The weight of {0} alone gives no length, since no grist of it is known; weigh a sample of its yarn first, or give the length.", skein.code());
    }
    return length.get();
  }

  private Optional<ChainedEntry> correct(Session session, SkeinYarn skein, Length found, Measures measures) throws NotDone {
    boolean done = session.entries().entry(skein.id()).isPresent();
    Optional<ShelfSkein> held = Shelf.skein(session, skein.code());
    Length reserved = held.map(ShelfSkein::allReserved).orElse(Length.ZERO);
    if (ExpectedYarn.isOnOrder(session, skein.code())) {
      throw NotDone.because("{0} is still on order; say that it arrived before it is measured.", skein.code());
    }
    if (found.compareTo(reserved) < 0) {
      throw NotDone.because(
          "Of {0} {1} are reserved for plans, more than the {2} that were found; release what lacks first, then measure again.", skein.code(), reserved, found);
    }
    Length more = found.minus(reserved).minus(held.map(ShelfSkein::free).orElse(Length.ZERO));
    Optional<ChainedEntry> correction = more.isZero() && held.isPresent() ? Optional.empty() : move(session, skein, more);
    if (!done) {
      remember(session, new Remeasurement(skein.code(), correction.map(entry -> entry.entry().id()), found, measures));
    }
    return correction;
  }

  private static Optional<ChainedEntry> move(Session session, SkeinYarn skein, Length more) throws NotDone {
    Place shelf = new Place.Shelf();
    Place recount = new Place.Recount();
    return more.isNegative() ? skein.move(session, shelf, recount, more.negated()) : skein.move(session, recount, shelf, more);
  }

  /** The same once more is nothing new. */
  private void remember(Session session, Remeasurement measured) {
    boolean nothingNew = measured.entry().isEmpty()
        && session.remeasurements().of(measured.skein()).reversed().stream()
            .findFirst()
            .filter(last -> last.found().equals(measured.found()) && last.measures().equals(measured.measures()))
            .isPresent();
    if (!nothingNew) {
      session.remeasurements().add(measured, studio.author(), studio.now());
    }
  }
}
