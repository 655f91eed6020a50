package hankbook.ledger;

import hankbook.measure.Length;
import java.util.UUID;

/**
 * Why an entry was not taken. The cases stand in the order in which they are looked for: the first that applies is the answer, so that
 * the same entry against the same ledger is always refused for the same reason.
 */
public sealed interface Refusal {
  /** The reason in the weaver's words. */
  String message();

  /** An entry with this id is there and says something else. */
  record SameIdOtherContent(Entry there) implements Refusal {
    @Override
    public String message() {
      return "The ledger already holds an entry under this id that says something else: %s, %s, by %s. Nothing was changed."
          .formatted(there.kind().words(), there.date(), there.author());
    }
  }

  /** The entry to reverse is not in the ledger. */
  record NothingToReverse(UUID original) implements Refusal {
    @Override
    public String message() {
      return "There is no entry " + original + " in the ledger to take back.";
    }
  }

  /** The entry to reverse has been reversed before. */
  record AlreadyReversed(Entry original) implements Refusal {
    @Override
    public String message() {
      return "The entry %s, %s, by %s has already been taken back. To bring it back, reverse its reversal."
          .formatted(original.kind().words(), original.date(), original.author());
    }
  }

  /** The reversal does not take back exactly what its original did. */
  record WrongReversal(Entry original) implements Refusal {
    @Override
    public String message() {
      return "A reversal takes back the whole of its entry and nothing else; this one does not match %s, %s, by %s."
          .formatted(original.kind().words(), original.date(), original.author());
    }
  }

  /** This kind of entry does not move yarn that way. */
  record WrongPlaces(EntryKind kind, Transfer transfer) implements Refusal {
    @Override
    public String message() {
      return "The entry \"%s\" cannot move %s from %s to %s."
          .formatted(kind.words(), transfer.skein(), transfer.from().words(), transfer.to().words());
    }
  }

  /** More would be taken from a place than is there. */
  record NotEnough(String skein, Place place, Length has, Length wanted) implements Refusal {
    @Override
    public String message() {
      return "Not enough %s: %s holds %s, and %s would be taken (%s short)."
          .formatted(skein, place.words(), has, wanted, wanted.minus(has));
    }
  }
}
