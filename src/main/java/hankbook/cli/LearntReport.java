package hankbook.cli;

import hankbook.exchange.TextTable;
import hankbook.reckon.Finding;
import hankbook.reckon.Lesson;
import hankbook.reckon.Manner;
import hankbook.reckon.Offer;
import hankbook.studio.Learnt;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** What was learnt, as pages to read. */
final class LearntReport {
  private LearntReport() {}

  static String findings(List<Finding> findings, Manner manner) {
    if (findings.isEmpty()) {
      String what = manner.equals(Manner.ANY) ? "" : " of plans " + manner.words();
      return "Nothing is learnt yet" + what + "; finish PLAN --actuals FILE.json says what was found after a cloth, and that teaches.";
    }
    TextTable table = new TextTable("", ">plans", "made", ">mean", ">spread", "the next, 95 of 100");
    findings.forEach(finding -> table.row(
        finding.which().words(), Integer.toString(finding.count()), finding.group().words(), finding.which().unit().printInFull(finding.mean()),
        finding.spread().map(finding.which().unit()::print).orElse(""), finding.count() == 1 ? "one plan only" : finding.range()));
    List<String> lines = new ArrayList<>(table.lines());
    List<String> odd = findings.stream().flatMap(finding -> finding.odd().stream()).distinct().map(LearntReport::odd).toList();
    if (!odd.isEmpty()) {
      lines.add("");
      lines.add("Odd beside the others, and counted all the same:");
      lines.addAll(odd);
    }
    return String.join(System.lineSeparator(), lines);
  }

  private static String odd(Lesson lesson) {
    String when = lesson.date().map(date -> ", " + date).orElse("");
    return "  " + lesson.plan() + when + ": " + lesson.which().words() + " " + lesson.which().unit().printInFull(lesson.value());
  }

  static String proposal(Learnt.Proposal proposal) {
    String plan = proposal.plan().check().plan().name();
    if (proposal.offers().isEmpty()) {
      return plan + ": nothing is learnt yet that it could go by; finish PLAN --actuals FILE.json says what was found after a cloth.";
    }
    List<String> lines = new ArrayList<>(List.of(plan + ", " + (proposal.manner().equals(Manner.ANY) ? "of which neither loom nor weave nor fibre is known" : proposal.manner().words())));
    lines.add("");
    TextTable table = new TextTable("", ">plan says", ">learnt", "");
    proposal.offers().forEach(offer -> table.row(offer.which().words(), said(proposal, offer), offer.text(), offer.reason().english()));
    lines.addAll(table.lines());
    lines.add("");
    lines.add("Nothing was changed: what you like of it, put into the plan.");
    return String.join(System.lineSeparator(), lines);
  }

  private static String said(Learnt.Proposal proposal, Offer offer) {
    return offer.said(proposal.plan().check().plan().allowances()).map(said -> print(offer, said)).orElse("");
  }

  private static String print(Offer offer, BigFraction said) {
    return offer.which().unit().printInFull(said);
  }
}
