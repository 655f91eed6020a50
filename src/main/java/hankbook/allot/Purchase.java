package hankbook.allot;

import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What to buy of a yarn that is short.
 *
 * @param yarn the yarn and its colour
 * @param putUps how many whole put-ups, as large as the one last received; empty where the shelf shows none to judge by, or none is
 *     long enough for an end
 */
public record Purchase(YarnColour yarn, OptionalInt putUps) {
  private static final int MOST = 1_000;
  private static final Comparator<Skein> NEWEST = Comparator.comparing(skein -> skein.received().orElse(LocalDate.MIN));

  static List<Purchase> of(PlanCheck check, List<Skein> stock) {
    return check.covers().stream()
        .filter(cover -> cover.verdict() == Verdict.SHORT)
        .map(cover -> new Purchase(cover.yarn(), putUps(check, cover.yarn(), stock)))
        .toList();
  }

  private static OptionalInt putUps(PlanCheck check, YarnColour yarn, List<Skein> stock) {
    Optional<Skein> like = putUp(stock.stream().filter(skein -> skein.yarn().equals(yarn)).toList());
    if (like.isEmpty()) {
      like = putUp(stock.stream().filter(skein -> skein.yarn().yarn().equals(yarn.yarn())).toList());
    }
    if (like.isEmpty() || !covers(check, yarn, stock, like.get(), MOST)) {
      return OptionalInt.empty();
    }
    int lacks = 0;
    int enough = MOST;
    while (enough - lacks > 1) {
      int middle = (lacks + enough) / 2;
      if (covers(check, yarn, stock, like.get(), middle)) {
        enough = middle;
      } else {
        lacks = middle;
      }
    }
    return OptionalInt.of(enough);
  }

  private static Optional<Skein> putUp(List<Skein> skeins) {
    return skeins.stream().filter(skein -> !skein.opened() && skein.holds().isPositive()).max(NEWEST);
  }

  private static boolean covers(PlanCheck check, YarnColour yarn, List<Skein> stock, Skein like, int count) {
    List<Skein> more = new ArrayList<>(stock);
    String mark = unusedMark(stock);
    for (int i = 1; i <= count; i++) {
      more.add(bought(yarn, like, mark + i));
    }
    return PlanCheck.of(check.plan(), more).covers().stream()
        .noneMatch(cover -> cover.yarn().equals(yarn) && cover.verdict() == Verdict.SHORT);
  }

  /** No code on the shelf may be taken for a put-up that is not there yet. */
  private static String unusedMark(List<Skein> stock) {
    int longest = stock.stream().mapToInt(skein -> skein.code().length()).max().orElse(0);
    return "+".repeat(longest + 1);
  }

  private static Skein bought(YarnColour yarn, Skein like, String code) {
    return new Skein(
        code, yarn, like.hex(), like.fibre(), like.grist(), like.form(), like.measurement(), like.label(), false, "bought", "",
        Optional.empty(), Optional.empty());
  }
}
