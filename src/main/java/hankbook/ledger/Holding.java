package hankbook.ledger;

import java.util.Comparator;

/** A skein at a place: what a balance is kept for. */
public record Holding(String skein, Place place) implements Comparable<Holding> {
  private static final Comparator<Holding> ORDER = Comparator.comparing(Holding::skein).thenComparing(holding -> holding.place().text());

  public Holding {
    Words.name("skein", skein);
  }

  @Override
  public int compareTo(Holding other) {
    return ORDER.compare(this, other);
  }
}
