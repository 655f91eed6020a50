package hankbook.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import hankbook.exchange.JsonText;
import hankbook.ledger.ChainedEntry;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.studio.FarOff;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A recount, as a page to read or as one JSON object. */
final class RecountReport {
  private RecountReport() {}

  static String page(List<ChainedEntry> entered, Optional<FarOff> farOff) {
    List<String> lines = new ArrayList<>(List.of(LedgerReport.entered(entered)));
    farOff.ifPresent(far -> {
      far.book().ifPresent(book -> lines.add(against(far, "the book had", book)));
      far.label().ifPresent(label -> lines.add(against(far, "its label says", label)));
      lines.add("If that is a slip, reverse " + far.entry() + " --reason 'a slip' takes it back.");
    });
    return String.join(System.lineSeparator(), lines);
  }

  private static String against(FarOff far, String says, Length known) {
    Length more = far.found().minus(known);
    return far.skein() + " holds " + metres(far.found()) + " now, and " + says + " " + metres(known) + ": "
        + (more.isNegative() ? metres(more.negated()) + " less." : metres(more) + " more.");
  }

  private static String metres(Length length) {
    return length.print(LengthUnit.METRE, 1);
  }

  static String json(List<ChainedEntry> entered, Optional<FarOff> farOff) {
    ObjectNode root = LedgerJson.node(entered);
    farOff.ifPresent(far -> {
      ObjectNode node = root.putObject("farOff").put("skein", far.skein()).put("foundM", far.found().metres());
      far.book().ifPresentOrElse(book -> node.put("bookM", book.metres()), () -> node.putNull("bookM"));
      far.label().ifPresentOrElse(label -> node.put("labelM", label.metres()), () -> node.putNull("labelM"));
    });
    return JsonText.of(root);
  }
}
