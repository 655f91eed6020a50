package hankbook.ledger;

import hankbook.measure.Phrase;

/** Where a length of a skein can be. Its text form, {@code SHELF} or {@code RESERVED(Quay towels)}, is stable: it is stored and hashed. */
public sealed interface Place {
  /** Places by sort, leaving out the plan. */
  enum Kind {
    MAKER(false, false),
    ORDERED(false, true),
    SHELF(false, true),
    RESERVED(true, true),
    LOOM(true, true),
    CLOTH(true, true),
    THRUMS(true, true),
    SAMPLE(true, true),
    AWAY(false, false),
    RECOUNT(false, false),
    REWOUND(false, false);

    private final boolean planned;
    private final boolean neverNegative;

    Kind(boolean planned, boolean neverNegative) {
      this.planned = planned;
      this.neverNegative = neverNegative;
    }

    /** Whether there is one such place for each plan. */
    public boolean planned() {
      return planned;
    }
  }

  /** Where yarn comes from; owes what was received. */
  record Maker() implements Place {
    @Override
    public String toString() {
      return text();
    }
  }

  /** Bought but not yet in the house. */
  record Ordered() implements Place {
    @Override
    public String toString() {
      return text();
    }
  }

  /** In the house and promised to nothing. */
  record Shelf() implements Place {
    @Override
    public String toString() {
      return text();
    }
  }

  /** Set aside for a plan. */
  record Reserved(String plan) implements Place {
    public Reserved {
      Words.name("plan", plan);
    }

    @Override
    public String toString() {
      return text();
    }
  }

  /** On the loom for a plan. */
  record Loom(String plan) implements Place {
    public Loom {
      Words.name("plan", plan);
    }

    @Override
    public String toString() {
      return text();
    }
  }

  /** Woven into the cloth of a plan. */
  record Cloth(String plan) implements Place {
    public Cloth {
      Words.name("plan", plan);
    }

    @Override
    public String toString() {
      return text();
    }
  }

  /** Loom waste and trimmings of a plan. */
  record Thrums(String plan) implements Place {
    public Thrums {
      Words.name("plan", plan);
    }

    @Override
    public String toString() {
      return text();
    }
  }

  /** Used up in sampling for a plan. */
  record Sample(String plan) implements Place {
    public Sample {
      Words.name("plan", plan);
    }

    @Override
    public String toString() {
      return text();
    }
  }

  /** Sold, given or lost. */
  record Away() implements Place {
    @Override
    public String toString() {
      return text();
    }
  }

  /** What weighing or measuring again corrected. */
  record Recount() implements Place {
    @Override
    public String toString() {
      return text();
    }
  }

  /** What went onto another skein. */
  record Rewound() implements Place {
    @Override
    public String toString() {
      return text();
    }
  }

  /** The sort of place. */
  default Kind kind() {
    return Places.kind(this);
  }

  /** The plan the place belongs to, or an empty text. */
  default String planName() {
    return Places.plan(this);
  }

  /** Whether no more may be taken from here than is here. */
  default boolean neverNegative() {
    return kind().neverNegative;
  }

  /** The stable form that {@link #parse} reads back. */
  default String text() {
    return kind().planned() ? kind().name() + "(" + planName() + ")" : kind().name();
  }

  /** As the weaver would say it. */
  default String words() {
    return phrase().english();
  }

  /** The same, to be said in any language. */
  default Phrase phrase() {
    return Places.phrase(this);
  }

  /** Reads the stable form. */
  static Place parse(String text) {
    return Places.parse(text);
  }

  /** The place of a sort; the plan is empty exactly where the sort has none. */
  static Place of(Kind kind, String plan) {
    return Places.of(kind, plan);
  }
}
