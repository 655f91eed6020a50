package hankbook.ledger;

import static hankbook.ledger.Place.Kind.AWAY;
import static hankbook.ledger.Place.Kind.CLOTH;
import static hankbook.ledger.Place.Kind.LOOM;
import static hankbook.ledger.Place.Kind.MAKER;
import static hankbook.ledger.Place.Kind.ORDERED;
import static hankbook.ledger.Place.Kind.RESERVED;
import static hankbook.ledger.Place.Kind.REWOUND;
import static hankbook.ledger.Place.Kind.SHELF;
import static hankbook.ledger.Place.Kind.THRUMS;

import java.util.Locale;
import java.util.Set;

/** What was done, and so between which places yarn may have gone. */
public enum EntryKind {
  EXPECT,
  RECEIVE,
  RESERVE,
  RELEASE,
  DRAW,
  RETURN,
  WOVEN,
  WASTE,
  SAMPLE,
  RECOUNT,
  PART_WITH,
  REWIND,
  REVERSAL;

  /** A way from one sort of place to another. */
  public record Route(Place.Kind from, Place.Kind to) {}

  /** The ways this kind of entry may move yarn; none for a reversal, which goes back whichever way its original went. */
  public Set<Route> routes() {
    return switch (this) {
      case EXPECT -> Set.of(new Route(MAKER, ORDERED));
      case RECEIVE -> Set.of(new Route(MAKER, SHELF), new Route(MAKER, ORDERED), new Route(ORDERED, SHELF));
      case RESERVE -> Set.of(new Route(SHELF, RESERVED));
      case RELEASE -> Set.of(new Route(RESERVED, SHELF));
      case DRAW -> Set.of(new Route(RESERVED, LOOM), new Route(SHELF, LOOM));
      case RETURN -> Set.of(new Route(LOOM, SHELF));
      case WOVEN -> Set.of(new Route(LOOM, CLOTH));
      case WASTE -> Set.of(new Route(LOOM, THRUMS));
      case SAMPLE -> Set.of(
          new Route(SHELF, Place.Kind.SAMPLE), new Route(RESERVED, Place.Kind.SAMPLE), new Route(LOOM, Place.Kind.SAMPLE));
      case RECOUNT -> Set.of(new Route(SHELF, Place.Kind.RECOUNT), new Route(Place.Kind.RECOUNT, SHELF));
      case PART_WITH -> Set.of(new Route(SHELF, AWAY));
      case REWIND -> Set.of(new Route(SHELF, REWOUND), new Route(REWOUND, SHELF));
      case REVERSAL -> Set.of();
    };
  }

  /** Whether a transfer may stand in such an entry: one plan's yarn never slips to another plan on the way. */
  public boolean allows(Transfer transfer) {
    if (this == REVERSAL) {
      return true;
    }
    Place from = transfer.from();
    Place to = transfer.to();
    boolean bothPlanned = from.kind().planned() && to.kind().planned();
    return routes().contains(new Route(from.kind(), to.kind())) && (!bothPlanned || from.planName().equals(to.planName()));
  }

  /** The kind in plain words. */
  public String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
