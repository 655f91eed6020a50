package hankbook.cost;

import hankbook.ledger.Place;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Learns, while a ledger is replayed, which skeins came at a cost that nobody wrote down. Changes in place. */
final class UnknownCosts {
  private final Set<String> known;
  private final Set<String> woundOn = new HashSet<>();
  private final Set<String> unknown = new HashSet<>();

  /** Nothing is learnt yet; of some skeins the cost is known. */
  UnknownCosts(Set<String> known) {
    this.known = Set.copyOf(known);
  }

  /** A skein without a cost that came from a maker or was found, or one that has yarn of such a skein wound onto it. */
  void learn(List<Moved> moves) {
    boolean woundOff = false;
    for (Moved move : moves) {
      String skein = move.from().skein();
      switch (move.from().place()) {
        case Place.Maker _ -> came(skein);
        case Place.Recount _ when !woundOn.contains(skein) -> came(skein);
        case Place.Rewound _ -> woundOn.add(skein);
        default -> {}
      }
      woundOff |= move.to().place() instanceof Place.Rewound && unknown.contains(skein);
    }
    if (woundOff) {
      moves.stream().filter(move -> move.from().place() instanceof Place.Rewound).forEach(move -> unknown.add(move.from().skein()));
    }
  }

  Set<String> skeins() {
    return unknown;
  }

  private void came(String skein) {
    if (!known.contains(skein)) {
      unknown.add(skein);
    }
  }
}
