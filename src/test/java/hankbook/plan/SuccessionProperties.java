package hankbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

class SuccessionProperties {
  @Property(tries = 500, seed = "20261215")
  void whatIsWrittenReadsBackTheSame(@ForAll("orders") Succession order) {
    assertThat(Succession.parse(order.toString())).isEqualTo(order);
  }

  /** Against an order written out thread by thread, as simply as can be. */
  @Property(tries = 500, seed = "20261216")
  void everyCountIsThatOfTheOrderWrittenOut(@ForAll("orders") Succession order, @ForAll @IntRange(max = 3000) int length) {
    List<String> all = threads(order);
    assertThat(order.threads()).isEqualTo(all.size());
    assertThat(order.counts()).isEqualTo(counts(all, all.size()));
    Map<String, Long> over = new HashMap<>(order.countsOver(length));
    over.values().removeIf(count -> count == 0);
    assertThat(over).isEqualTo(counts(all, length));
    assertThat(order.at(length % all.size())).isEqualTo(all.get(length % all.size()));
    assertThat(expanded(order.runs(Integer.MAX_VALUE))).isEqualTo(all);
  }

  @Property(tries = 500, seed = "20261217")
  void theShortFormGivesTheSameGroupsAgain(@ForAll("orders") Succession order) {
    List<Run> runs = order.runs(Integer.MAX_VALUE);
    Succession found = Succession.of(runs);
    assertThat(found.runs(Integer.MAX_VALUE)).isEqualTo(runs);
    assertThat(groups(found)).isLessThanOrEqualTo(runs.size());
    assertThat(Succession.parse(found.toString())).isEqualTo(found);
  }

  @Property(tries = 200, seed = "20261218")
  void theFirstGroupsAreTheBeginningOfAll(@ForAll("orders") Succession order, @ForAll @IntRange(min = 1, max = 20) int limit) {
    List<Run> all = order.runs(Integer.MAX_VALUE);
    assertThat(order.runs(limit)).isEqualTo(all.subList(0, Math.min(limit, all.size())));
  }

  private static int groups(Succession order) {
    int groups = 0;
    for (SuccessionPart part : order.parts()) {
      groups += switch (part) {
        case Run _ -> 1;
        case Repeat repeat -> groups(repeat.group());
        case Mirror mirror -> groups(mirror.group());
      };
    }
    return groups;
  }

  private static List<String> threads(Succession order) {
    List<String> threads = new ArrayList<>();
    for (SuccessionPart part : order.parts()) {
      switch (part) {
        case Run run -> threads.addAll(expanded(List.of(run)));
        case Repeat repeat -> {
          for (int i = 0; i < repeat.times(); i++) {
            threads.addAll(threads(repeat.group()));
          }
        }
        case Mirror mirror -> {
          List<String> there = threads(mirror.group());
          long once = mirror.turn() == Mirror.Turn.DOUBLED ? 0 : mirror.group().last().count();
          threads.addAll(there);
          threads.addAll(there.subList(0, there.size() - (int) once).reversed());
        }
      }
    }
    return threads;
  }

  private static List<String> expanded(List<Run> runs) {
    List<String> threads = new ArrayList<>();
    runs.forEach(run -> threads.addAll(java.util.Collections.nCopies((int) run.count(), run.mark())));
    return threads;
  }

  private static Map<String, Long> counts(List<String> threads, int length) {
    Map<String, Long> counts = new LinkedHashMap<>();
    for (int i = 0; i < length; i++) {
      counts.merge(threads.get(i % threads.size()), 1L, Long::sum);
    }
    return counts;
  }

  @Provide
  Arbitrary<Succession> orders() {
    return succession(3);
  }

  private static Arbitrary<Succession> succession(int deep) {
    return part(deep).list().ofMinSize(1).ofMaxSize(4).map(Succession::new);
  }

  private static Arbitrary<SuccessionPart> part(int deep) {
    Arbitrary<String> marks = Arbitraries.of("Chalk", "Woad", "Woad 2", "2/8 Madder", "x", "there and back", "a, \"b\" (c)", "times");
    Arbitrary<SuccessionPart> runs = Combinators.combine(Arbitraries.longs().between(1, 5), marks).as(Run::new);
    if (deep == 0) {
      return runs;
    }
    Arbitrary<SuccessionPart> repeats = Combinators.combine(Arbitraries.longs().between(1, 4), succession(deep - 1)).as(Repeat::new);
    Arbitrary<SuccessionPart> mirrors = Combinators.combine(succession(deep - 1), Arbitraries.of(Mirror.Turn.values())).as(Mirror::new);
    return Arbitraries.oneOf(runs, runs, runs, repeats, mirrors);
  }
}
