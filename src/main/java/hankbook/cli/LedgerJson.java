package hankbook.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hankbook.exchange.JsonText;
import hankbook.ledger.ChainedEntry;
import hankbook.ledger.Entry;
import hankbook.ledger.Finding;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.studio.AuditLedger;
import hankbook.studio.JournalEntry;
import hankbook.studio.PlanStanding;
import hankbook.studio.Receive;
import hankbook.studio.ShelfSkein;
import hankbook.yarn.Doubts;
import java.util.List;
import java.util.Map;

/** What is in a ledger, as one JSON object each; metres to four places. */
final class LedgerJson {
  private LedgerJson() {}

  static String delivery(Receive.Delivery delivery) {
    return JsonText.of(JsonText.object().put("received", delivery.received()).put("alreadyThere", delivery.alreadyThere()));
  }

  static String kept(String plan) {
    return JsonText.of(JsonText.object().put("plan", plan));
  }

  static String shelf(List<ShelfSkein> skeins, Doubts doubts) {
    ObjectNode root = JsonText.object();
    ArrayNode array = root.putArray("skeins");
    skeins.forEach(held -> skein(array.addObject(), held, doubts));
    return JsonText.of(root);
  }

  private static void skein(ObjectNode node, ShelfSkein held, Doubts doubts) {
    node.put("code", held.skein().code()).put("yarn", held.skein().yarn().yarn()).put("colour", held.skein().yarn().colour());
    node.put("lot", held.skein().lot()).put("form", held.skein().form().toString()).put("location", held.skein().location());
    node.put("measured", held.skein().isMeasured()).put("freeM", held.free().metres());
    node.put("knownBy", held.skein().measurement().words()).put("uncertaintyM", held.uncertainty(doubts).metres()).put("recount", held.skein().gristDisagrees());
    byPlan(node.putArray("reserved"), held.reserved());
    byPlan(node.putArray("onLoom"), held.onLoom());
  }

  private static void byPlan(ArrayNode array, Map<String, Length> lengths) {
    lengths.forEach((plan, length) -> array.addObject().put("plan", plan).put("lengthM", length.metres()));
  }

  static String plans(List<PlanStanding> plans) {
    ObjectNode root = JsonText.object();
    ArrayNode array = root.putArray("plans");
    for (PlanStanding plan : plans) {
      ObjectNode node = array.addObject().put("plan", plan.name());
      plan.verdict().ifPresentOrElse(verdict -> node.put("verdict", verdict.name()), () -> node.putNull("verdict").put("unfinished", plan.unfinished()));
      node.put("reservedM", plan.reserved().metres()).put("onLoomM", plan.onLoom().metres()).put("stands", plan.life());
    }
    return JsonText.of(root);
  }

  static String entered(List<ChainedEntry> entries) {
    return JsonText.of(node(entries));
  }

  static ObjectNode node(List<ChainedEntry> entries) {
    ObjectNode root = JsonText.object();
    ArrayNode array = root.putArray("entries");
    entries.forEach(entry -> entry(array.addObject(), entry));
    return root;
  }

  static String journal(List<JournalEntry> entries) {
    ObjectNode root = JsonText.object();
    ArrayNode array = root.putArray("entries");
    for (JournalEntry entry : entries) {
      ObjectNode node = entry(array.addObject(), entry.chained()).put("recorded", entry.recorded().toString());
      entry.reversedBy().ifPresentOrElse(by -> node.put("reversedBy", by.toString()), () -> node.putNull("reversedBy"));
    }
    return JsonText.of(root);
  }

  private static ObjectNode entry(ObjectNode node, ChainedEntry chained) {
    Entry entry = chained.entry();
    node.put("number", chained.number()).put("id", entry.id().toString()).put("kind", entry.kind().name()).put("date", entry.date().toString());
    node.put("author", entry.author()).put("note", entry.note());
    entry.reverses().ifPresentOrElse(original -> node.put("reverses", original.toString()), () -> node.putNull("reverses"));
    ArrayNode transfers = node.putArray("transfers");
    for (Transfer transfer : entry.transfers()) {
      transfers.addObject()
          .put("skein", transfer.skein())
          .put("from", transfer.from().text())
          .put("to", transfer.to().text())
          .put("lengthM", transfer.length().metres());
    }
    return node.put("hash", chained.hash());
  }

  static String audited(AuditLedger.Audited audited) {
    ObjectNode root = JsonText.object().put("entries", audited.entries()).put("sound", audited.audit().isClean());
    ArrayNode findings = root.putArray("findings");
    audited.audit().findings().stream().map(Finding::message).forEach(findings::add);
    return JsonText.of(root);
  }
}
