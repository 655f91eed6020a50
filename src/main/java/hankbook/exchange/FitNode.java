package hankbook.exchange;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hankbook.allot.Change;
import hankbook.allot.Fit;
import hankbook.allot.Purchase;
import hankbook.allot.Remedy;
import hankbook.allot.StandIn;
import hankbook.measure.Exact;
import hankbook.measure.Length;
import hankbook.measure.MoneyText;
import hankbook.plan.Plan;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.joda.money.Money;

/** Writes what fits of a plan, and what would make it fit. */
final class FitNode {
  private static final int PARTS = 4;

  private FitNode() {}

  static void write(ObjectNode node, Plan plan, Fit fit) {
    node.put("longestWarpM", fit.longestWarp().metres());
    length(node, "warpAloneM", fit.warpAlone());
    node.put("mostEnds", fit.mostEnds());
    length(node, "mostWidthInReedM", fit.mostWidth().map(width -> width.inReed()));
    length(node, "mostWidthM", fit.mostWidth().map(width -> width.finished(plan.allowances())));
    fit.closestSett().ifPresentOrElse(sett -> node.put("closestSett", sett.toString()), () -> node.putNull("closestSett"));
    fit.mostPieces().ifPresentOrElse(most -> node.put("mostPieces", most), () -> node.putNull("mostPieces"));
    length(node, "longestPieceM", fit.longestPiece());
    if (!fit.proven()) {
      node.put("proven", false);
    }
    ArrayNode buy = node.putArray("buy");
    fit.buy().forEach(purchase -> purchase(buy.addObject(), purchase));
    ArrayNode remedies = node.putArray("remedies");
    fit.remedies().forEach(remedy -> remedy(remedies.addObject(), remedy));
    ArrayNode standIns = node.putArray("standIns");
    fit.standIns().forEach(standIn -> standIn(standIns.addObject(), standIn));
  }

  private static void length(ObjectNode node, String key, Optional<Length> length) {
    length.ifPresentOrElse(known -> node.put(key, known.metres()), () -> node.putNull(key));
  }

  static void purchase(ObjectNode node, Purchase purchase) {
    AnswerFile.yarn(node, purchase.yarn());
    purchase.putUps().ifPresentOrElse(putUps -> node.put("putUps", putUps), () -> node.putNull("putUps"));
    money(node, "each", purchase.each());
    money(node, "total", purchase.total());
  }

  private static void money(ObjectNode node, String key, Optional<Money> money) {
    money.ifPresentOrElse(known -> node.put(key, MoneyText.print(known)), () -> node.putNull(key));
  }

  private static void remedy(ObjectNode node, Remedy remedy) {
    Change change = remedy.change();
    node.put("remedy", change.key()).put("givenUp", part(change.givenUp())).put("text", remedy.words()).put("whole", remedy.whole());
    ArrayNode cures = node.putArray("cures");
    remedy.cures().forEach(yarn -> AnswerFile.yarn(cures.addObject(), yarn));
    switch (change) {
      case Change.LessSampling less -> lengths(node, less.from(), less.to());
      case Change.OpenerSett opener ->
          sections(node.put("from", opener.from().toString()).put("to", opener.to().toString()).put("ends", opener.ends()), opener.sectionsLost());
      case Change.FewerPicks fewer -> node.put("from", fewer.from().toString()).put("to", fewer.to().toString());
      case Change.Narrower narrower -> sections(
          lengths(node, narrower.finishedFrom(), narrower.finishedTo()).put("ends", narrower.to().ends()).put("widthInReedM", narrower.to().inReed().metres()),
          narrower.sectionsLost());
      case Change.ShorterPieces shorter -> shorter(node, shorter);
      case Change.ShorterWarp shorter -> lengths(node, shorter.from(), shorter.to());
      case Change.FewerPieces fewer -> node.put("piece", fewer.piece()).put("from", fewer.from()).put("to", fewer.to());
      case Change.OtherYarn other -> standIn(node, other.standIn());
      case Change.Buying buying -> buying(node, buying.purchases());
    }
  }

  /** Said only where it is so. */
  private static void sections(ObjectNode node, boolean lost) {
    if (lost) {
      node.put("sectionsLost", true);
    }
  }

  private static ObjectNode lengths(ObjectNode node, Length from, Length to) {
    return node.put("fromM", from.metres()).put("toM", to.metres());
  }

  private static void shorter(ObjectNode node, Change.ShorterPieces shorter) {
    lengths(node, shorter.longestFrom(), shorter.longestTo());
    ArrayNode lengths = node.putArray("lengthsM");
    shorter.to().forEach(length -> lengths.add(length.metres()));
  }

  private static void buying(ObjectNode node, List<Purchase> purchases) {
    ArrayNode buy = node.putArray("buy");
    purchases.forEach(purchase -> purchase(buy.addObject(), purchase));
    money(node, "total", Purchase.total(purchases));
  }

  private static void standIn(ObjectNode node, StandIn standIn) {
    AnswerFile.yarn(node, standIn.yarn());
    AnswerFile.yarn(node.putObject("inPlaceOf"), standIn.place());
    node.put("freeM", standIn.free().metres());
    standIn.heavier().ifPresentOrElse(heavier -> node.put("heavier", part(heavier)), () -> node.putNull("heavier"));
    standIn.difference().ifPresentOrElse(
        difference -> node.put("colourDifference", BigDecimal.valueOf(difference.deltaE()).setScale(PARTS, RoundingMode.HALF_UP)),
        () -> node.putNull("colourDifference"));
    node.put("covers", standIn.covers());
  }

  private static BigDecimal part(BigFraction part) {
    return Exact.decimal(part, PARTS, RoundingMode.HALF_UP);
  }
}
