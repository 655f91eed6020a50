package hankbook.studio;

import hankbook.allot.Setting;
import hankbook.exchange.BadInput;
import hankbook.ledger.Balances;
import hankbook.ledger.ChainedEntry;
import hankbook.ledger.Entry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.reckon.Actuals;
import hankbook.reckon.Leftover;
import hankbook.reckon.Made;
import hankbook.reckon.Reckoning;
import hankbook.reckon.Squared;
import hankbook.reckon.Unsquared;
import hankbook.store.PlanVersion;
import hankbook.store.Remeasurement;
import hankbook.store.Session;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;

/** The work of finishing one plan within a transaction. */
record FinishWork(Studio studio, Session session, String name) {
  /**
   * What finishing comes to.
   *
   * @param former what finished it before, as though that had never been
   */
  Finishing finishing(Actuals actuals, Optional<FormerFinish> former) throws BadInput, NotDone {
    if (Plans.text(session, name).isEmpty()) {
      throw CheckPlan.noSuchPlan(name);
    }
    TakenFor taken = TakenFor.of(session, name);
    Set<UUID> aside = former.map(before -> Set.copyOf(before.version().entries())).orElse(Set.of());
    LocalDate date = date(actuals.date().or(() -> former.flatMap(FormerFinish::date)).orElse(studio.today()), taken, aside);
    Optional<PlanVersion> version = former.isPresent() ? former.get().planVersion() : taken.version(session);
    Balances balances = former.isPresent() ? former.get().before() : session.balances().all();
    FinishGround ground = FinishGround.of(session, name, version, balances);
    Squared squared = switch (ground.squaring(actuals).outcome()) {
      case Squared done -> done;
      case Unsquared why -> throw NotDone.because("{0} Nothing was posted.", why.phrase());
    };
    YarnsUsed used = new YarnsUsed(session, name, after(balances, squared), actuals, aside);
    Made made = Answer.reckoned(name, () -> new Made(ground.plan(), actuals, used.inOrderOf(ground.plan())));
    Reckoning reckoning = Answer.reckoned(name, () -> Reckoning.of(made));
    return new Finishing(name, ground.version(), date, squared, made, Unexplained.of(reckoning, Settings.judgement(session).percentage(Setting.UNEXPLAINED)));
  }

  private LocalDate date(LocalDate date, TakenFor taken, Set<UUID> aside) throws NotDone {
    if (date.isAfter(studio.today())) {
      throw NotDone.because("A cloth cannot have been cut off on {0}, which is yet to come; give today or a day that is past.", date);
    }
    Optional<LocalDate> lastTaken = taken.lastTaken(aside);
    if (lastTaken.filter(date::isBefore).isPresent()) {
      throw NotDone.because("{0} cannot have been cut off on {1}, before its yarn was taken on {2}; give that day or a later one.", name, date, lastTaken.get());
    }
    return date;
  }

  private Balances after(Balances balances, Squared squared) {
    Balances after = balances;
    for (Map.Entry<EntryKind, List<Transfer>> movement : squared.movements().entrySet()) {
      after = after.after(Entry.of(UUID.randomUUID(), movement.getKey(), studio.today(), studio.author(), "", movement.getValue()));
    }
    return after;
  }

  /** Posts what squares the book, and notes how what is left was measured. */
  List<ChainedEntry> post(UUID id, Finishing finishing, Actuals actuals) {
    List<ChainedEntry> posted = new ArrayList<>();
    finishing.squared().movements().forEach((kind, transfers) -> {
      String note = kind == EntryKind.RECOUNT ? "found after the cloth of " + name + " was cut off" : "";
      studio.post(session, beside(id, kind.name()), kind, finishing.date(), note, transfers).ifPresent(posted::add);
    });
    actuals.leftovers().forEach(leftover -> remember(leftover, posted));
    return posted;
  }

  private void remember(Leftover leftover, List<ChainedEntry> posted) {
    Optional<UUID> beside = posted.stream().map(ChainedEntry::entry).filter(entry -> moves(entry, leftover.skein())).map(Entry::id).findFirst();
    if (beside.isPresent()) {
      Remeasurement measured = new Remeasurement(leftover.skein(), beside, wound(leftover.skein()), LeftOn.measures(leftover.left()));
      session.remeasurements().addBeside(measured, studio.author(), studio.now());
    }
  }

  /** All that is wound on a skein by the book: what is on the shelf, free or promised. */
  private Length wound(String skein) {
    return session.balances().ofSkein(skein).lengths().entrySet().stream()
        .filter(balance -> balance.getKey().place() instanceof Place.Shelf || balance.getKey().place() instanceof Place.Reserved)
        .map(Map.Entry::getValue)
        .reduce(Length.ZERO, Length::plus);
  }

  private static boolean moves(Entry entry, String skein) {
    return entry.transfers().stream().anyMatch(transfer -> transfer.skein().equals(skein));
  }

  /**
   * Takes back what finished the plan before, the last entry first; what someone took back by hand since is left so.
   *
   * @param dated the day that the taking back of an entry bears
   */
  List<ChainedEntry> takeBack(UUID id, FormerFinish former, Function<Entry, LocalDate> dated, String why) throws NotDone {
    former.refuseIfGone();
    List<ChainedEntry> entered = new ArrayList<>();
    for (Entry entry : former.standing()) {
      Entry reversal = Entry.reversing(entry, beside(id, "back " + entry.id()), dated.apply(entry), studio.author(), why);
      session.entries().post(reversal, studio.now()).ifPresent(entered::add);
    }
    return entered;
  }

  private static UUID beside(UUID id, String what) {
    return UUID.nameUUIDFromBytes(("finish " + id + " " + what).getBytes(StandardCharsets.UTF_8));
  }
}
