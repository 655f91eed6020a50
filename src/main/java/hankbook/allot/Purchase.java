package hankbook.allot;

import hankbook.measure.Length;
import hankbook.plan.Need;
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

  static List<Purchase> of(PlanCheck check, List<Skein> stock, Judgement judgement) {
    return check.covers().stream()
        .filter(cover -> cover.verdict() == Verdict.SHORT)
        .map(cover -> new Purchase(cover.yarn(), putUps(check, cover.yarn(), stock, judgement.usefulRemnant())))
        .toList();
  }

  private static OptionalInt putUps(PlanCheck check, YarnColour yarn, List<Skein> stock, Length usefulRemnant) {
    List<Skein> held = PlanCheck.skeinsOf(yarn, stock);
    Optional<Skein> like = putUp(held).or(() -> putUp(stock.stream().filter(skein -> skein.yarn().yarn().equals(yarn.yarn())).toList()));
    List<Need> needs = check.yardage().needs().stream().filter(need -> need.yarn().equals(yarn)).toList();
    if (like.isEmpty() || YarnCheck.isShort(needs, with(held, yarn, like.get(), MOST), usefulRemnant)) {
      return OptionalInt.empty();
    }
    int lacks = 0;
    int enough = MOST;
    while (enough - lacks > 1) {
      int middle = (lacks + enough) / 2;
      if (YarnCheck.isShort(needs, with(held, yarn, like.get(), middle), usefulRemnant)) {
        lacks = middle;
      } else {
        enough = middle;
      }
    }
    return OptionalInt.of(enough);
  }

  private static Optional<Skein> putUp(List<Skein> skeins) {
    return skeins.stream().filter(skein -> !skein.opened() && skein.holds().isPositive()).max(NEWEST);
  }

  private static List<Skein> with(List<Skein> held, YarnColour yarn, Skein like, int count) {
    List<Skein> more = new ArrayList<>(held);
    String mark = unusedMark(held);
    for (int i = 1; i <= count; i++) {
      more.add(bought(yarn, like, mark + i));
    }
    return more;
  }

  /** No code on the shelf may be taken for a put-up that is not there yet. */
  private static String unusedMark(List<Skein> stock) {
    int longest = stock.stream().mapToInt(skein -> skein.code().length()).max().orElse(0);
    return "+".repeat(longest + 1);
  }

  private static Skein bought(YarnColour yarn, Skein like, String code) {
    return new Skein(
        code, yarn, like.hex(), like.fibre(), like.grist(), like.form(), like.label(), like.turns(), like.weighing(), false, "bought", "",
        Optional.empty(), Optional.empty(), Optional.empty(), like.sample());
  }
}
