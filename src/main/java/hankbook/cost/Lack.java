package hankbook.cost;

import hankbook.allot.EndsGiven;
import hankbook.allot.PlanCheck;
import hankbook.allot.Purchase;
import hankbook.allot.Share;
import hankbook.measure.Length;
import hankbook.plan.Need;
import hankbook.yarn.YarnColour;
import java.util.List;
import java.util.Optional;

/** What no skein gives of a yarn: whole ends for the warp, and weft. */
record Lack(Length warp, Length weft) {
  /** @param shares what skeins give of the yarn */
  static Lack of(YarnColour yarn, PlanCheck check, List<Share> shares) {
    Length warp = Length.ZERO;
    Length weft = Length.ZERO;
    for (Need need : check.yardage().needs()) {
      if (need.yarn().equals(yarn)) {
        warp = need.role() == Need.Role.WARP ? warp.plus(need.perThread().times(need.threads())) : warp;
        weft = need.role() == Need.Role.WEFT ? weft.plus(need.length()) : weft;
      }
    }
    Length given = shares.stream()
        .flatMap(share -> share.kinds().stream())
        .map(EndsGiven::length)
        .reduce(Length.ZERO, Length::plus);
    Length woven = shares.stream().map(Share::weft).reduce(Length.ZERO, Length::plus);
    return new Lack(warp.minus(given), weft.minus(woven));
  }

  Length length() {
    return warp.plus(weft);
  }

  /** The put-ups that are bought for it and their price, where both are known. */
  static Optional<Worth> bought(Purchase purchase) {
    return purchase.total().flatMap(cost -> purchase.holds().map(each -> new Worth(each.times(purchase.putUps().orElseThrow()), cost)));
  }
}
