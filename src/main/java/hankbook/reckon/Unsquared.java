package hankbook.reckon;

import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.yarn.YarnColour;
import java.util.List;

/** Why the book of a plan cannot be squared. The cases stand in the order in which they are looked for: the first that applies is the answer. */
public sealed interface Unsquared extends SquaringOutcome {
  /** The reason in the weaver's words, and what helps. */
  String message();

  private static String metres(Length length) {
    return length.print(LengthUnit.METRE, 1);
  }

  /** Nothing lies on the plan's loom. */
  record NothingDrawn(String plan) implements Unsquared {
    @Override
    public String message() {
      return "Nothing is on the loom for " + plan + "; draw its yarn first.";
    }
  }

  /** A skein is said of which the plan has nothing, nor any other of its yarn. */
  record NeverDrawn(String plan, String skein) implements Unsquared {
    @Override
    public String message() {
      return skein + " was never drawn for " + plan + ", nor was any other skein of its yarn; leave it out, or look at its code again.";
    }
  }

  /** Of skeins that were drawn it is not said what is left. */
  record NotSaid(List<String> skeins) implements Unsquared {
    public NotSaid {
      skeins = List.copyOf(skeins);
    }

    @Override
    public String message() {
      return "It is not said what is left of " + String.join(", ", skeins) + (skeins.size() == 1 ? ", which was drawn." : ", which were drawn.");
    }
  }

  /** More is found on a skein than any holds. */
  record NoSuchSkein(String skein, Length found) implements Unsquared {
    @Override
    public String message() {
      return "No skein holds " + found + ", which " + skein + " is said to have left.";
    }
  }

  /** Less is found on a skein than is promised of it to other plans. */
  record PromisedElsewhere(String skein, Length found, Length promised) implements Unsquared {
    @Override
    public String message() {
      return "Of " + skein + " " + metres(promised) + " are reserved for other plans, more than the " + metres(found) + " that are left of it; release what lacks first.";
    }
  }

  /** A bundle of which no yarn is said, where the plan used nothing of its warp's yarns. */
  record NoWarpInIt(String plan) implements Unsquared {
    @Override
    public String message() {
      return "Nothing of the yarns in the warp of " + plan + " was used; say of which yarn the thrums and the samples are.";
    }
  }

  /** A bundle of a yarn of which nothing was used. */
  record NotUsed(YarnColour yarn) implements Unsquared {
    @Override
    public String message() {
      return "Nothing of " + yarn + " was used, so none of it can be in the thrums or the samples.";
    }
  }

  /** A bundle that was weighed, of a yarn whose grist is not known. */
  record NoGrist(YarnColour yarn) implements Unsquared {
    @Override
    public String message() {
      return "A weight of " + yarn + " gives no length, since no grist of it is known; weigh a sample of its yarn first, or give the length.";
    }
  }

  /** Thrums and samples come to more than what was used. */
  record MoreThanUsed(YarnColour yarn, Length bundles, Length used) implements Unsquared {
    @Override
    public String message() {
      return "The thrums and samples of " + yarn + " come to " + metres(bundles) + ", more than the " + metres(used) + " of it that were used; measure them or what is left again.";
    }
  }
}
