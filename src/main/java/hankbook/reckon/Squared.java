package hankbook.reckon;

import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * How the loom of a plan comes out empty.
 *
 * @param plan its name
 * @param skeins what became of each, in the order of their codes
 */
public record Squared(String plan, List<SkeinUse> skeins) implements SquaringOutcome {
  public Squared {
    skeins = List.copyOf(skeins);
  }

  /** What is to be posted, one entry of each kind in the order in which they must be posted; a kind that would move nothing is left out. */
  public Map<EntryKind, List<Transfer>> movements() {
    Place shelf = new Place.Shelf();
    Place reserved = new Place.Reserved(plan);
    Place loom = new Place.Loom(plan);
    Map<EntryKind, List<Transfer>> movements = new LinkedHashMap<>();
    put(movements, EntryKind.RELEASE, reserved, shelf, use -> use.skein().reserved());
    put(movements, EntryKind.DRAW, shelf, loom, SkeinUse::drawnMore);
    put(movements, EntryKind.RETURN, loom, shelf, SkeinUse::returned);
    put(movements, EntryKind.RECOUNT, new Place.Recount(), shelf, SkeinUse::recounted);
    put(movements, EntryKind.SAMPLE, loom, new Place.Sample(plan), SkeinUse::sampled);
    put(movements, EntryKind.WASTE, loom, new Place.Thrums(plan), SkeinUse::thrums);
    put(movements, EntryKind.WOVEN, loom, new Place.Cloth(plan), SkeinUse::woven);
    return Collections.unmodifiableMap(movements);
  }

  private void put(Map<EntryKind, List<Transfer>> movements, EntryKind kind, Place from, Place to, Function<SkeinUse, Length> length) {
    List<Transfer> transfers = new ArrayList<>();
    for (SkeinUse use : skeins) {
      if (length.apply(use).isPositive()) {
        transfers.add(new Transfer(use.skein().code(), from, to, length.apply(use)));
      }
    }
    if (!transfers.isEmpty()) {
      movements.put(kind, List.copyOf(transfers));
    }
  }
}
