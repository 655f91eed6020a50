package hankbook.reckon;

import hankbook.measure.Length;
import hankbook.measure.Phrase;
import hankbook.yarn.YarnColour;
import java.util.List;

/** Why the book of a plan cannot be squared. The cases stand in the order in which they are looked for: the first that applies is the answer. */
public sealed interface Unsquared extends SquaringOutcome {
  /** The reason in the weaver's words, and what helps. */
  Phrase phrase();

  /** The same in English. */
  default String message() {
    return phrase().english();
  }

  private static Phrase.As metres(Length length) {
    return Phrase.yarn(length, 1);
  }

  /** Nothing lies on the plan's loom. */
  record NothingDrawn(String plan) implements Unsquared {
    @Override
    public Phrase phrase() {
      return Phrase.of("Nothing is on the loom for {0}; draw its yarn first.", plan);
    }
  }

  /** A skein is said of which the plan has nothing, nor any other of its yarn. */
  record NeverDrawn(String plan, String skein) implements Unsquared {
    @Override
    public Phrase phrase() {
      return Phrase.of("{0} was never drawn for {1}, nor was any other skein of its yarn; leave it out, or look at its code again.", skein, plan);
    }
  }

  /** Of skeins that were drawn it is not said what is left. */
  record NotSaid(List<String> skeins) implements Unsquared {
    public NotSaid {
      skeins = List.copyOf(skeins);
    }

    @Override
    public Phrase phrase() {
      return skeins.size() == 1
          ? Phrase.of("It is not said what is left of {0}, which was drawn.", skeins.getFirst())
          : Phrase.of("It is not said what is left of {0}, which were drawn.", Phrase.list(skeins));
    }
  }

  /** More is found on a skein than any holds. */
  record NoSuchSkein(String skein, Length found) implements Unsquared {
    @Override
    public Phrase phrase() {
      return Phrase.of("No skein holds {0}, which {1} is said to have left.", found, skein);
    }
  }

  /** Less is found on a skein than is promised of it to other plans. */
  record PromisedElsewhere(String skein, Length found, Length promised) implements Unsquared {
    @Override
    public Phrase phrase() {
      return Phrase.of("Of {0} {1} are reserved for other plans, more than the {2} that are left of it; release what lacks first.", skein, metres(promised), metres(found));
    }
  }

  /** A bundle of which no yarn is said, where the plan used nothing of its warp's yarns. */
  record NoWarpInIt(String plan) implements Unsquared {
    @Override
    public Phrase phrase() {
      return Phrase.of("Nothing of the yarns in the warp of {0} was used; say of which yarn the thrums and the samples are.", plan);
    }
  }

  /** A bundle of a yarn of which nothing was used. */
  record NotUsed(YarnColour yarn) implements Unsquared {
    @Override
    public Phrase phrase() {
      return Phrase.of("Nothing of {0} was used, so none of it can be in the thrums or the samples.", yarn);
    }
  }

  /** A bundle that was weighed, of a yarn whose grist is not known. */
  record NoGrist(YarnColour yarn) implements Unsquared {
    @Override
    public Phrase phrase() {
      return Phrase.of("A weight of {0} gives no length, since no grist of it is known; weigh a sample of its yarn first, or give the length.", yarn);
    }
  }

  /** Thrums and samples come to more than what was used. */
  record MoreThanUsed(YarnColour yarn, Length bundles, Length used) implements Unsquared {
    @Override
    public Phrase phrase() {
      return Phrase.of("The thrums and samples of {0} come to {1}, more than the {2} of it that were used; measure them or what is left again.", yarn, metres(bundles), metres(used));
    }
  }
}
