package hankbook.cli;

import hankbook.exchange.TextTable;
import hankbook.ledger.ChainedEntry;
import hankbook.ledger.Entry;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.studio.AuditLedger;
import hankbook.studio.JournalEntry;
import hankbook.studio.PlanStanding;
import hankbook.studio.Receive;
import hankbook.studio.ShelfSkein;
import hankbook.yarn.Doubts;
import hankbook.yarn.Skein;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** What is in a ledger, as pages to read. */
final class LedgerReport {
  private static final Comparator<ShelfSkein> BY_YARN = Comparator.comparing((ShelfSkein held) -> held.skein().yarn()).thenComparing(held -> held.skein().code());

  private LedgerReport() {}

  static String delivery(Receive.Delivery delivery) {
    String before = delivery.alreadyThere() == 0 ? "." : "; " + delivery.alreadyThere() + " of the file had come before.";
    return "Received " + count(delivery.received(), "skein", "skeins") + before;
  }

  static String described(int changed) {
    return changed == 0 ? "Nothing to change: the ledger says so already." : "Described " + count(changed, "skein", "skeins") + " anew; what was said before is kept.";
  }

  static String shelf(List<ShelfSkein> skeins, Doubts doubts) {
    if (skeins.isEmpty()) {
      return "No skein to show.";
    }
    TextTable table = new TextTable("code", "yarn", "lot", "form", ">free", ">±", "known by", ">reserved", ">on loom", "where");
    skeins.stream().sorted(BY_YARN).forEach(held -> table.row(
        held.skein().code(),
        held.skein().yarn().toString(),
        held.skein().lot(),
        held.skein().form().toString(),
        held.skein().isMeasured() ? metres(held.free()) : "unmeasured",
        held.skein().holds().isPositive() ? metres(held.uncertainty(doubts)) : "",
        held.skein().measurement().words(),
        metresOrNothing(held.allReserved()),
        metresOrNothing(held.allOnLoom()),
        held.skein().location()));
    List<String> lines = new ArrayList<>(table.lines());
    lines.add("");
    lines.add(
        count(skeins.size(), "skein", "skeins") + ": " + sum(skeins, ShelfSkein::free) + " free, " + sum(skeins, ShelfSkein::allReserved) + " reserved, "
            + sum(skeins, ShelfSkein::allOnLoom) + " on the loom.");
    List<String> toRecount = skeins.stream().map(ShelfSkein::skein).filter(Skein::gristDisagrees).map(Skein::code).toList();
    if (!toRecount.isEmpty()) {
      lines.add("By the grist that was weighed these hold other metres, weigh them again and recount: " + String.join(", ", toRecount) + ".");
    }
    return page(lines);
  }

  static String plans(List<PlanStanding> plans) {
    if (plans.isEmpty()) {
      return "No plan yet; plan add takes one from a file.";
    }
    TextTable table = new TextTable("plan", "verdict", "stands", ">reserved", ">on loom");
    plans.forEach(plan -> table.row(
        plan.name(), verdict(plan), plan.life(), metresOrNothing(plan.reserved()), metresOrNothing(plan.onLoom())));
    List<String> lines = new ArrayList<>(table.lines());
    lines.add("");
    lines.add("Each verdict is for that plan alone: what two plans both want is counted for each of them until one reserves it.");
    plans.stream().filter(plan -> verdict(plan).equals("unfinished")).forEach(plan -> lines.add(plan.unfinished()));
    return page(lines);
  }

  /** Of a plan that is woven already, nobody asks whether the shelf covers it. */
  private static String verdict(PlanStanding plan) {
    return plan.life().equals(PlanStanding.SQUARED) ? "" : plan.verdict().map(Enum::name).orElse("unfinished");
  }

  static String entered(List<ChainedEntry> entries) {
    return entries.isEmpty() ? "Nothing to change: the ledger says so already." : page(entries.stream().flatMap(LedgerReport::entry).toList());
  }

  static String journal(List<JournalEntry> entries, int ofAll) {
    if (entries.isEmpty()) {
      return "No entry to show.";
    }
    List<String> lines = new ArrayList<>();
    for (JournalEntry entry : entries) {
      lines.addAll(entry(entry.chained()).toList());
      if (entry.reversedBy().isPresent()) {
        lines.add("      taken back since");
      }
    }
    if (entries.size() < ofAll) {
      lines.add("");
      lines.add(count(ofAll - entries.size(), "earlier entry", "earlier entries") + "; --most 0 shows all.");
    }
    return page(lines);
  }

  static String audited(AuditLedger.Audited audited) {
    if (audited.audit().isClean()) {
      return "The ledger is sound: " + count(audited.entries(), "entry", "entries") + ", every hash and every balance as it should be.";
    }
    List<String> lines = new ArrayList<>(List.of("The ledger is not sound. Keep a copy of it before anything else; what does not hold:"));
    audited.audit().findings().forEach(finding -> lines.add("  " + finding.message()));
    return page(lines);
  }

  private static Stream<String> entry(ChainedEntry chained) {
    Entry entry = chained.entry();
    String first = "%5d  %s  %s, by %s%s".formatted(
        chained.number(), entry.date(), entry.kind().words(), entry.author(), entry.note().isEmpty() ? "" : ": " + entry.note());
    return Stream.concat(Stream.of(first), entry.transfers().stream().map(LedgerReport::transfer));
  }

  private static String transfer(Transfer transfer) {
    return "       %s of %s from %s to %s".formatted(transfer.length(), transfer.skein(), transfer.from().words(), transfer.to().words());
  }

  private static String sum(List<ShelfSkein> skeins, Function<ShelfSkein, Length> part) {
    return metres(skeins.stream().map(part).reduce(Length.ZERO, Length::plus));
  }

  private static String metresOrNothing(Length length) {
    return length.isZero() ? "" : metres(length);
  }

  private static String metres(Length length) {
    return length.print(LengthUnit.METRE, 1);
  }

  private static String count(long count, String one, String more) {
    return count + " " + (count == 1 ? one : more);
  }

  private static String page(List<String> lines) {
    return String.join(System.lineSeparator(), lines);
  }
}
