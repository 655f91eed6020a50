package hankbook.studio;

import hankbook.allot.Cover;
import hankbook.allot.PlanCheck;
import hankbook.allot.Share;
import hankbook.allot.Verdict;
import hankbook.exchange.BadInput;
import hankbook.ledger.ChainedEntry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.store.Session;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;

/** Promises the yarn that a plan's check chose to that plan, so that no other plan takes it. */
public final class Reserve {
  private final Studio studio;

  public Reserve(Studio studio) {
    this.studio = studio;
  }

  /**
   * Brings what is reserved for a plan to what its check says now: what lacks is reserved, what is no longer wanted is released.
   *
   * @param evenIfShort whether to reserve what there is of a plan that is short
   * @return what was entered; nothing where all was reserved already
   * @throws BadInput if there is no such plan, or it cannot be reckoned
   * @throws NotDone if a yarn is short
   */
  public List<ChainedEntry> plan(UUID id, String name, boolean evenIfShort) throws BadInput, NotDone {
    return studio.write(session -> {
      boolean done = session.entries().entry(id).isPresent();
      return done ? List.of() : reserve(session, id, CheckPlan.named(name, session).check(), evenIfShort);
    });
  }

  private List<ChainedEntry> reserve(Session session, UUID id, PlanCheck check, boolean evenIfShort) throws NotDone {
    if (check.isShort() && !evenIfShort) {
      throw NotDone.shortOfYarn(shortage(check));
    }
    String plan = check.plan().name();
    List<Transfer> lacking = new ArrayList<>();
    List<Transfer> unwanted = new ArrayList<>();
    SortedMap<String, Length> wanted = wanted(check);
    for (ShelfSkein held : Shelf.everySkein(session)) {
      Length wants = wanted.getOrDefault(held.skein().code(), Length.ZERO);
      Length lacks = wants.minus(held.freeFor(plan).minus(held.free()));
      Length spare = Length.min(lacks.negated(), held.reserved().getOrDefault(plan, Length.ZERO));
      if (lacks.isPositive()) {
        lacking.add(new Transfer(held.skein().code(), new Place.Shelf(), new Place.Reserved(plan), lacks));
      } else if (spare.isPositive()) {
        unwanted.add(new Transfer(held.skein().code(), new Place.Reserved(plan), new Place.Shelf(), spare));
      }
    }
    List<ChainedEntry> entered = new ArrayList<>();
    studio.post(session, releaseBeside(id), EntryKind.RELEASE, "no longer wanted by the plan", unwanted).ifPresent(entered::add);
    studio.post(session, id, EntryKind.RESERVE, "", lacking).ifPresent(entered::add);
    return entered;
  }

  private static SortedMap<String, Length> wanted(PlanCheck check) {
    SortedMap<String, Length> wanted = new TreeMap<>();
    for (Share share : check.shares()) {
      wanted.merge(share.code(), share.warp().plus(share.weft()), Length::plus);
    }
    return wanted;
  }

  private static UUID releaseBeside(UUID id) {
    return UUID.nameUUIDFromBytes(("released beside " + id).getBytes(StandardCharsets.UTF_8));
  }

  private static String shortage(PlanCheck check) {
    String yarns = check.covers().stream().filter(cover -> cover.verdict() == Verdict.SHORT).map(Reserve::shortage).collect(Collectors.joining("; "));
    return "Nothing was reserved for " + check.plan().name() + ", since it is short: " + yarns + ".";
  }

  private static String shortage(Cover cover) {
    if (cover.margin().isNegative()) {
      return cover.yarn() + " by " + cover.margin().negated().print(LengthUnit.METRE, 1);
    }
    return cover.yarn() + " has the metres but not in whole ends";
  }
}
