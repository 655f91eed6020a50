package hankbook.allot;

import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Why each skein was taken: what would be without it, with every other skein on the shelf free to take its place. Each question is asked of
 * the same search that made the choice; what it cannot answer within the effort that is left is not said.
 */
final class Reasons {
  private final Choice choice;
  private final Task plain;
  private final Yields plainYields;
  private final Effort effort;
  private final String onlyLot;

  /** Of a choice, and of the task without any limit on the ends from one skein. */
  Reasons(Choice choice, Task plain) {
    this.choice = choice;
    effort = choice.effort();
    this.plain = plain;
    plainYields = new Yields(plain);
    onlyLot = onlyLot();
  }

  /** Of a skein where the metres lack, which asks no question. */
  static String whereShort(Slot slot) {
    return kind(slot.skein()) + "; whatever serves is taken, since metres lack";
  }

  private static String kind(Candidate skein) {
    return (skein.lot().isEmpty() ? "lot unknown" : skein.lotOrOwn()) + (skein.opened() ? ", opened before" : ", unopened");
  }

  String of(Slot slot) {
    Candidate skein = slot.skein();
    List<String> reasons = new ArrayList<>();
    reasons.add(kind(skein));
    if (skein.lotOrOwn().equals(onlyLot)) {
      reasons.add("the only lot that gives all " + plain.ends() + " ends");
    }
    if (slot.setAside() > 0) {
      reasons.add("keeps the longest remnant, " + metres(slot.setAside()));
    }
    without(skein).ifPresent(reasons::add);
    return String.join("; ", reasons);
  }

  /** The lot of all the ends, where no other lot holds as many; empty where there is none. */
  private String onlyLot() {
    List<String> lots = choice.shelf().lots().stream().filter(this::givesAllEnds).map(DyeLots.DyeLot::name).toList();
    boolean serves = choice.shelf().lots().size() > 1 && lots.size() == 1 && choice.slots().stream().filter(slot -> plain.servesWarp(slot.role())).allMatch(slot -> slot.skein().lotOrOwn().equals(lots.get(0)));
    return serves && plain.ends() > 0 ? lots.get(0) : "";
  }

  private boolean givesAllEnds(DyeLots.DyeLot lot) {
    long warp = plain.everything() & ~plain.weftBit();
    List<Slot> slots = Stream.concat(lot.opened().stream(), lot.unopened().stream()).map(skein -> new Slot(skein, warp, 0)).toList();
    return new Packing(plain, plainYields, slots, effort).covers(plain.weft());
  }

  private Optional<String> without(Candidate skein) {
    if (!effort.proven() || !effort.spend(choice.shelf().size())) {
      return Optional.empty();
    }
    DyeLots others = choice.shelf().without(skein);
    long more = new Shortage(plain, plainYields, others, effort).uncovered() - choice.aim().uncovered();
    if (more > 0) {
      return said("without it " + metres(more) + " more would lack");
    }
    if (new Shortage(choice.task(), choice.yields(), others, effort).uncovered() > choice.aim().uncovered()) {
      return said("without it the ends could not be wound as many together");
    }
    Choice rest = new Choice(choice.task(), choice.yields(), others, effort, choice.aim(), List.of());
    return rest.found(choice.aim(), Set.of()).isPresent() ? Optional.of("others would serve as well, and the earliest received go first") : worse(rest);
  }

  /** By which of the criteria the best choice without a skein is worse. */
  private Optional<String> worse(Choice rest) {
    Aim touched = rest.aim().remnantAtLeast(0);
    Aim unopened = touched.touchedAtMost(Aim.ANY);
    Aim lots = unopened.unopenedAtMost(Aim.ANY);
    if (rest.found(touched, Set.of()).isPresent()) {
      return said("without it no remnant as long as " + metres(rest.aim().remnant()) + " would be kept");
    }
    if (rest.found(unopened, Set.of()).isPresent()) {
      return least(rest, unopened::touchedAtMost, touched.touched()).flatMap(count -> said("without it " + count + " skeins would be needed instead of " + touched.touched()));
    }
    if (rest.found(lots, Set.of()).isPresent()) {
      return least(rest, lots::unopenedAtMost, touched.unopened()).flatMap(count -> said("without it " + broken(count - touched.unopened()) + " would be broken into"));
    }
    return least(rest, lots::lotsAtMost, touched.lots()).flatMap(count -> said("without it " + count + " lots would be needed instead of " + touched.lots() + apart()));
  }

  private static String broken(int more) {
    return more == 1 ? "one more unopened skein" : more + " more unopened skeins";
  }

  private String apart() {
    return plain.ends() > 0 && plain.weft() > 0 ? ", warp and weft counted apart" : "";
  }

  private Optional<Integer> least(Choice rest, IntFunction<Aim> aims, int tooFew) {
    return IntStream.rangeClosed(tooFew + 1, tooFew + 1 + 2 * rest.shelf().size())
        .takeWhile(count -> !effort.spent())
        .boxed()
        .filter(count -> rest.found(aims.apply(count), Set.of()).isPresent())
        .findFirst();
  }

  /** Only what was settled is said. */
  private Optional<String> said(String reason) {
    return effort.proven() ? Optional.of(reason) : Optional.empty();
  }

  private static String metres(long tenths) {
    return new Length(tenths).print(LengthUnit.METRE, 1);
  }
}
