package hankbook.ledger;

import hankbook.measure.Length;
import hankbook.measure.Phrase;
import java.util.UUID;

/**
 * Why an entry was not taken. The cases stand in the order in which they are looked for: the first that applies is the answer, so that
 * the same entry against the same ledger is always refused for the same reason.
 */
public sealed interface Refusal {
  /** The reason in the weaver's words. */
  Phrase phrase();

  /** The same in English. */
  default String message() {
    return phrase().english();
  }

  /** An entry with this id is there and says something else. */
  record SameIdOtherContent(Entry there) implements Refusal {
    @Override
    public Phrase phrase() {
      return Phrase.of("The ledger already holds an entry under this id that says something else: {0}, {1}, by {2}. Nothing was changed.",
          new Phrase.Word(there.kind().words()), there.date(), there.author());
    }
  }

  /** The entry to reverse is not in the ledger. */
  record NothingToReverse(UUID original) implements Refusal {
    @Override
    public Phrase phrase() {
      return Phrase.of("There is no entry {0} in the ledger to take back.", original);
    }
  }

  /** The entry to reverse has been reversed before. */
  record AlreadyReversed(Entry original) implements Refusal {
    @Override
    public Phrase phrase() {
      return Phrase.of("The entry {0}, {1}, by {2} has already been taken back. To bring it back, reverse its reversal.",
          new Phrase.Word(original.kind().words()), original.date(), original.author());
    }
  }

  /** The reversal does not take back exactly what its original did. */
  record WrongReversal(Entry original) implements Refusal {
    @Override
    public Phrase phrase() {
      return Phrase.of("A reversal takes back the whole of its entry and nothing else; this one does not match {0}, {1}, by {2}.",
          new Phrase.Word(original.kind().words()), original.date(), original.author());
    }
  }

  /** This kind of entry does not move yarn that way. */
  record WrongPlaces(EntryKind kind, Transfer transfer) implements Refusal {
    @Override
    public Phrase phrase() {
      return Phrase.of("The entry \"{0}\" cannot move {1} from {2} to {3}.", new Phrase.Word(kind.words()), transfer.skein(), transfer.from().phrase(), transfer.to().phrase());
    }
  }

  /** More would be taken from a place than is there. */
  record NotEnough(String skein, Place place, Length has, Length wanted) implements Refusal {
    @Override
    public Phrase phrase() {
      return Phrase.of("Not enough {0}: {1} holds {2}, and {3} would be taken ({4} short).", skein, place.phrase(), has, wanted, wanted.minus(has));
    }
  }
}
