package hankbook.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hankbook.exchange.JsonText;
import hankbook.measure.Exact;
import hankbook.measure.LengthUnit;
import hankbook.reckon.Finding;
import hankbook.reckon.LearntUnit;
import hankbook.reckon.Lesson;
import hankbook.reckon.Manner;
import hankbook.reckon.Offer;
import hankbook.studio.Learnt;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** What was learnt, as one JSON object each: parts as fractions, lengths in metres, times in seconds, to six places. */
final class LearntJson {
  private static final int PLACES = 6;

  private LearntJson() {}

  static String findings(List<Finding> findings) {
    ObjectNode root = JsonText.object();
    ArrayNode array = root.putArray("findings");
    findings.forEach(finding -> finding(array.addObject(), finding));
    return JsonText.of(root);
  }

  static String proposal(Learnt.Proposal proposal) {
    ObjectNode root = JsonText.object().put("plan", proposal.plan().check().plan().name());
    manner(root, proposal.manner());
    ArrayNode array = root.putArray("offers");
    for (Offer offer : proposal.offers()) {
      ObjectNode node = array.addObject();
      finding(node, offer.finding());
      put(node, "says", offer.which().unit(), offer.said(proposal.plan().check().plan().allowances()));
      put(node, "offered", offer.which().unit(), Optional.of(offer.which().unit().told(offer.value())));
      node.put("text", offer.text()).put("reason", offer.reason().english());
    }
    return JsonText.of(root);
  }

  private static void finding(ObjectNode node, Finding finding) {
    LearntUnit unit = finding.which().unit();
    node.put("of", finding.which().key()).put("unit", symbol(unit));
    manner(node, finding.group());
    node.put("plans", finding.count());
    put(node, "mean", unit, Optional.of(finding.mean()));
    put(node, "spread", unit, finding.spread());
    put(node, "low", unit, finding.interval().map(Finding.Interval::low));
    put(node, "high", unit, finding.interval().map(Finding.Interval::high));
    ArrayNode odd = node.putArray("odd");
    for (Lesson lesson : finding.odd()) {
      ObjectNode one = odd.addObject().put("plan", lesson.plan());
      lesson.date().ifPresentOrElse(date -> one.put("date", date.toString()), () -> one.putNull("date"));
      put(one, "value", unit, Optional.of(lesson.value()));
    }
  }

  private static void manner(ObjectNode node, Manner manner) {
    node.put("loom", manner.loom().orElse(null));
    node.put("weave", manner.weave().map(Object::toString).orElse(null));
    node.put("fibre", manner.fibre().isEmpty() ? null : manner.fibreWords());
  }

  private static String symbol(LearntUnit unit) {
    return switch (unit) {
      case OF_CLOTH -> "of cloth";
      case PART -> "part";
      case LENGTH -> "m";
      case END -> "s/end";
      case PICK -> "s/pick";
      case PIECE -> "s/piece";
    };
  }

  private static void put(ObjectNode node, String key, LearntUnit unit, Optional<BigFraction> value) {
    value.ifPresentOrElse(there -> node.put(key, number(unit, there)), () -> node.putNull(key));
  }

  private static BigDecimal number(LearntUnit unit, BigFraction value) {
    BigFraction told = unit == LearntUnit.LENGTH ? value.divide(LengthUnit.METRE.tenthsOfMillimetre()) : value;
    return Exact.decimal(told, PLACES, RoundingMode.HALF_UP);
  }
}
