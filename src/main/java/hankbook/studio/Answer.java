package hankbook.studio;

import hankbook.allot.Fit;
import hankbook.allot.Judgement;
import hankbook.allot.PlanCheck;
import hankbook.allot.WindingSheet;
import hankbook.allot.WindingWish;
import hankbook.exchange.BadInput;
import hankbook.gear.Gear;
import hankbook.measure.Unreadable;
import hankbook.plan.Plan;
import hankbook.reckon.Findings;
import hankbook.reckon.Manner;
import hankbook.reckon.Offer;
import hankbook.yarn.Skein;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * A plan held against the skeins that are free for it.
 *
 * @param stock every skein, with what of it is free for this plan
 * @param check what it comes to
 * @param judgement by which it was judged
 * @param gear the looms and reeds it was held against
 * @param counted the yarn on order that is counted among them as though it had come
 * @param learnt what finished plans taught
 */
public record Answer(List<Skein> stock, PlanCheck check, Judgement judgement, Gear gear, List<ExpectedSkein> counted, Findings learnt) {
  public Answer {
    stock = List.copyOf(stock);
    counted = List.copyOf(counted);
  }

  /**
   * Holds a plan against what there is.
   *
   * @param source what the plan was read from, for messages
   * @throws BadInput where the plan does not add up
   */
  static Answer of(String source, Plan plan, Means means) throws BadInput {
    return new Answer(means.stock(), reckoned(source, () -> means.check(plan)), means.judgement(), means.gear(), means.counted(), means.learnt());
  }

  /**
   * The most of the plan that the stock covers.
   *
   * @throws BadInput where its numbers are too large to try larger ones
   */
  public Fit fit() throws BadInput {
    return reckoned(check.plan().name(), () -> Fit.of(check.plan(), stock, judgement));
  }

  /**
   * What to have beside the warping board. Where other threads are held than the plan says, the skeins are chosen for those.
   *
   * @throws BadInput where the warp cannot be divided as wished
   */
  public WindingSheet winding(WindingWish wish) throws BadInput {
    return reckoned(check.plan().name(), () -> WindingSheet.of(heldTogether(wish.threads()), stock, wish));
  }

  private PlanCheck heldTogether(int threads) {
    return threads == check.plan().threads() ? check : means().check(check.plan().wound(threads));
  }

  /** How the plan's cloth is to be made, as far as plan and stock say. */
  public Manner manner() {
    return means().manner(check.plan());
  }

  /** What finished plans propose for this one; nothing of it is in it by itself. */
  public List<Offer> offers() {
    return learnt.equals(Findings.NONE) ? List.of() : learnt.offers(manner());
  }

  /** What it was held against. */
  Means means() {
    return new Means(stock, judgement, gear, counted, learnt);
  }

  /** When each skein is expected that was counted and has not come, by its code. */
  public Map<String, LocalDate> dues() {
    return counted.stream().collect(Collectors.toMap(coming -> coming.skein().code(), ExpectedSkein::due, (one, _) -> one, LinkedHashMap::new));
  }

  static <T> T reckoned(String source, Supplier<T> reckoning) throws BadInput {
    try {
      return reckoning.get();
    } catch (Unreadable unreadable) {
      throw new BadInput(source + ": " + unreadable.getMessage());
    } catch (ArithmeticException overflow) {
      throw new BadInput(source + ": found numbers that make more than a ledger can hold, wanted smaller ones");
    }
  }
}
