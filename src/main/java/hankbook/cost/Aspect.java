package hankbook.cost;

import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * A row of several plans laid side by side.
 *
 * @param trait in what they are compared
 * @param yarn of which it is said, where it is of one
 * @param figures one for each plan; empty where a plan has no such thing
 * @param comparable whether one can be said to be the best; not where a cost leaves out what is not known
 */
public record Aspect(Trait trait, Optional<YarnColour> yarn, List<Optional<Figure>> figures, boolean comparable) {
  public Aspect {
    figures = List.copyOf(figures);
  }

  /** Whether the plans differ in it. */
  public boolean differs() {
    Optional<Figure> first = figures.getFirst();
    return figures.stream().anyMatch(figure -> !same(first, figure));
  }

  private static boolean same(Optional<Figure> one, Optional<Figure> other) {
    if (one.isEmpty() || other.isEmpty()) {
      return one.isEmpty() && other.isEmpty();
    }
    return one.get().equals(other.get()) || one.get().against(other.get()).filter(order -> order == 0).isPresent();
  }

  /** Which plans have the best of it, counted from 0; none where all are alike, where nothing is better, or where one cannot be compared. */
  public Set<Integer> best() {
    if (!comparable || trait.better() == Trait.Better.NEITHER || !differs() || figures.stream().anyMatch(Optional::isEmpty)) {
      return Set.of();
    }
    List<Figure> all = figures.stream().flatMap(Optional::stream).toList();
    Set<Integer> best = new TreeSet<>();
    for (int i = 0; i < all.size(); i++) {
      Figure one = all.get(i);
      List<Optional<Integer>> orders = new ArrayList<>(all.stream().map(one::against).toList());
      if (orders.stream().anyMatch(Optional::isEmpty)) {
        return Set.of();
      }
      if (orders.stream().flatMap(Optional::stream).allMatch(order -> trait.better() == Trait.Better.LEAST ? order <= 0 : order >= 0)) {
        best.add(i);
      }
    }
    return best;
  }

  /** How much more a plan has of it than the first; empty for the first, for what has no size, and where one of them has none. */
  public Optional<Figure> beyondFirst(int plan) {
    return plan == 0 ? Optional.empty() : figures.get(plan).flatMap(figure -> figures.getFirst().flatMap(figure::beyond));
  }
}
