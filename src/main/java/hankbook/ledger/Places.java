package hankbook.ledger;

import hankbook.measure.Phrase;

/** What can be told of a place by looking at which it is. */
final class Places {
  private Places() {}

  static Place.Kind kind(Place place) {
    return switch (place) {
      case Place.Maker _ -> Place.Kind.MAKER;
      case Place.Ordered _ -> Place.Kind.ORDERED;
      case Place.Shelf _ -> Place.Kind.SHELF;
      case Place.Reserved _ -> Place.Kind.RESERVED;
      case Place.Loom _ -> Place.Kind.LOOM;
      case Place.Cloth _ -> Place.Kind.CLOTH;
      case Place.Thrums _ -> Place.Kind.THRUMS;
      case Place.Sample _ -> Place.Kind.SAMPLE;
      case Place.Away _ -> Place.Kind.AWAY;
      case Place.Recount _ -> Place.Kind.RECOUNT;
      case Place.Rewound _ -> Place.Kind.REWOUND;
    };
  }

  static String plan(Place place) {
    return switch (place) {
      case Place.Reserved(String plan) -> plan;
      case Place.Loom(String plan) -> plan;
      case Place.Cloth(String plan) -> plan;
      case Place.Thrums(String plan) -> plan;
      case Place.Sample(String plan) -> plan;
      case Place.Maker _, Place.Ordered _, Place.Shelf _, Place.Away _, Place.Recount _, Place.Rewound _ -> "";
    };
  }

  static Phrase phrase(Place place) {
    return switch (place) {
      case Place.Maker _ -> Phrase.of("the maker");
      case Place.Ordered _ -> Phrase.of("what is on order");
      case Place.Shelf _ -> Phrase.of("the shelf");
      case Place.Reserved(String plan) -> Phrase.of("what is set aside for {0}", plan);
      case Place.Loom(String plan) -> Phrase.of("the loom for {0}", plan);
      case Place.Cloth(String plan) -> Phrase.of("the cloth of {0}", plan);
      case Place.Thrums(String plan) -> Phrase.of("the thrums of {0}", plan);
      case Place.Sample(String plan) -> Phrase.of("the samples for {0}", plan);
      case Place.Away _ -> Phrase.of("what left the house");
      case Place.Recount _ -> Phrase.of("the recounts");
      case Place.Rewound _ -> Phrase.of("what was wound onto another skein");
    };
  }

  static Place of(Place.Kind kind, String plan) {
    if (!kind.planned() && !plan.isEmpty()) {
      throw Words.wrong("plan", plan, "none, as " + kind + " belongs to no plan");
    }
    return switch (kind) {
      case MAKER -> new Place.Maker();
      case ORDERED -> new Place.Ordered();
      case SHELF -> new Place.Shelf();
      case RESERVED -> new Place.Reserved(plan);
      case LOOM -> new Place.Loom(plan);
      case CLOTH -> new Place.Cloth(plan);
      case THRUMS -> new Place.Thrums(plan);
      case SAMPLE -> new Place.Sample(plan);
      case AWAY -> new Place.Away();
      case RECOUNT -> new Place.Recount();
      case REWOUND -> new Place.Rewound();
    };
  }

  /** A plan may itself hold brackets: only the first and the last are the place's own. */
  static Place parse(String text) {
    int open = text.indexOf('(');
    if (open >= 0 && !text.endsWith(")")) {
      throw Words.wrong("place", text, "a closing bracket at its end");
    }
    String name = open < 0 ? text : text.substring(0, open);
    for (Place.Kind kind : Place.Kind.values()) {
      if (kind.name().equals(name) && kind.planned() == open >= 0) {
        return of(kind, open < 0 ? "" : text.substring(open + 1, text.length() - 1));
      }
    }
    throw Words.wrong("place", text, "a place such as SHELF or RESERVED(Quay towels)");
  }
}
