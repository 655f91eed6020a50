package hankbook.studio;

import hankbook.ledger.ChainedEntry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.measure.Phrase;
import hankbook.store.Remeasurement;
import hankbook.store.Session;
import hankbook.yarn.Doubts;
import hankbook.yarn.Kept;
import hankbook.yarn.Measurement;
import hankbook.yarn.Measures;
import hankbook.yarn.Skein;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** One winding of yarn off a skein onto another, as an entry that was not entered yet. */
record Rewinding(Studio studio, Session session, UUID id, String note) {
  private static final Measures LENGTH_ALONE = new WoundOff.All().measures();

  /**
   * A winding as it would be done.
   *
   * @param off what the yarn comes off
   * @param onto what it is wound onto, as it is described afterwards
   * @param measured how that is measured by it, where that is to be remembered
   */
  record Winding(ShelfSkein off, Skein onto, Length length, Optional<Remeasurement> measured) {
    List<Transfer> transfers() {
      Place shelf = new Place.Shelf();
      Place rewound = new Place.Rewound();
      return List.of(new Transfer(off.skein().code(), shelf, rewound, length), new Transfer(onto.code(), rewound, shelf, length));
    }
  }

  Winding ontoNew(String from, WoundOff much, NewPackage onto) throws NotDone {
    ShelfSkein off = RewindRules.off(session, from);
    Optional<Skein> there = RewindRules.empty(session, off, onto);
    Length length = length(off, much, onto.of(off.skein(), false));
    Length remains = off.free().plus(off.allReserved()).minus(length);
    boolean asItWas = much instanceof WoundOff.All && remains.isZero();
    Skein wound = onto.of(off.skein(), asItWas);
    boolean label = asItWas && off.skein().measurement() instanceof Measurement.ByLabel && there.orElse(wound).label().equals(wound.label());
    Remeasurement measured = measured(wound.code(), asItWas ? counted(off.skein(), length) : length, asItWas ? later(off.skein()) : much.measures());
    return new Winding(off, wound, length, label ? Optional.empty() : Optional.of(measured));
  }

  Winding joined(String from, WoundOff much, String onto, boolean mixLots) throws NotDone {
    ShelfSkein off = RewindRules.off(session, from);
    ShelfSkein on = RewindRules.on(session, off, onto);
    String lot = RewindRules.lot(off.skein(), on.skein(), mixLots);
    if (much instanceof WoundOff.Weighed) {
      throw NotDone.because("A weight says what is on {0} in all, not what was wound onto it; give the length, then weigh all of it with recount.", onto);
    }
    Length length = length(off, much, on.skein());
    SkeinFacts facts = new SkeinFacts(Optional.of(lot), Optional.empty(), Optional.empty(), Optional.empty());
    Skein described = facts.of(session.skeins().find(onto).orElseThrow());
    return new Winding(off, described, length, remembered(off, on, length, off.free().plus(off.allReserved()).minus(length).isZero()));
  }

  Optional<ChainedEntry> enter(Winding winding) {
    if (session.skeins().find(winding.onto().code()).isEmpty()) {
      session.skeins().add(winding.onto(), studio.now());
    } else {
      session.skeins().describe(winding.onto(), studio.author(), studio.now());
    }
    Optional<ChainedEntry> entry = studio.post(session, id, EntryKind.REWIND, note, winding.transfers());
    winding.measured().ifPresent(measured -> session.remeasurements().addBeside(measured, studio.author(), studio.now()));
    return entry;
  }

  /** A skein that was joined has several errors and one measurement: the least sure one that it may have, so that joining never makes metres surer. */
  private Optional<Remeasurement> remembered(ShelfSkein off, ShelfSkein on, Length length, boolean all) {
    Doubts doubts = Settings.judgement(session).doubts();
    String code = on.skein().code();
    Length total = on.free().plus(on.allReserved()).plus(length);
    Length brought = all && !later(off.skein()).equals(LENGTH_ALONE) ? off.uncertainty(doubts) : Length.ZERO;
    Length had = on.uncertainty(doubts);
    Length said = new Length(doubts.bareLength().fraction().multiply(total.exactTenths()).longValue());
    if (brought.compareTo(had) > 0 && brought.compareTo(said) > 0) {
      return Optional.of(measured(code, counted(off.skein(), length), later(off.skein())));
    }
    return said.compareTo(had) >= 0 ? Optional.of(measured(code, total, LENGTH_ALONE)) : Optional.empty();
  }

  private Length length(ShelfSkein off, WoundOff much, Skein onto) throws NotDone {
    Length length = switch (much) {
      case WoundOff.All _ -> off.free();
      case WoundOff.Metres(Length metres) -> metres;
      case WoundOff.Counted(var turns) -> turns.length();
      case WoundOff.Weighed _ -> Recount.found(session, onto, much.measures());
    };
    if (!length.isPositive() && !(much instanceof WoundOff.All)) {
      throw NotDone.because("The length must be over zero; it is {0}.", length);
    }
    if (off.free().isZero() || length.compareTo(off.free()) > 0) {
      throw NotDone.because(tooMuch(off, length));
    }
    return length;
  }

  private static Phrase tooMuch(ShelfSkein off, Length length) {
    String code = off.skein().code();
    Phrase.As free = Phrase.yarn(off.free(), 1);
    Phrase.As reserved = Phrase.yarn(off.allReserved(), 1);
    if (off.free().isZero()) {
      return off.allReserved().isZero()
          ? Phrase.of("Nothing of {0} is free. Nothing was changed.", code)
          : Phrase.of("Nothing of {0} is free; {1} are reserved for plans and stay on it. Nothing was changed.", code, reserved);
    }
    Phrase.As wanted = Phrase.yarn(length, 1);
    return off.allReserved().isZero()
        ? Phrase.of("Of {0} only {1} are free, not the {2} to be wound off. Nothing was changed.", code, free, wanted)
        : Phrase.of("Of {0} only {1} are free, not the {2} to be wound off; {3} are reserved for plans and stay on it. Nothing was changed.", code, free, wanted, reserved);
  }

  private Remeasurement measured(String code, Length found, Measures measures) {
    return new Remeasurement(code, Optional.of(id), found, measures, true);
  }

  /** What was read off the skein when it was last measured, but for a label, which says nothing where there is more. */
  private static Measures later(Skein skein) {
    return switch (skein.measurement()) {
      case Measurement.ByWeight weight -> new Measures(Optional.empty(), Optional.empty(), Optional.of(weight.weighing()));
      case Measurement.ByTurns counted -> new Measures(Optional.empty(), Optional.of(counted.turns()), Optional.empty());
      case Measurement.ByLabel _, Measurement.Unmeasured _ -> LENGTH_ALONE;
    };
  }

  /** What the ledger took the measurement for, so that a grist weighed since disagrees with it as much as it did. */
  private static Length counted(Skein skein, Length otherwise) {
    return skein.kept().flatMap(Kept::counted).or(() -> skein.measurement().length()).orElse(otherwise);
  }
}
