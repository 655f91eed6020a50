package hankbook.desktop;

import hankbook.allot.PlanCheck;
import hankbook.allot.Share;
import hankbook.allot.SkeinBecause;
import hankbook.desktop.say.Say;
import hankbook.desktop.why.Opened;
import hankbook.desktop.why.WhyBelow;
import hankbook.plan.Because;
import hankbook.studio.Shelf;
import hankbook.studio.ShelfSkein;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** The skeins to take, yarn by yarn: what each gives and why it was chosen. */
final class SharesByYarn {
  private final List<Share> shares;
  private final Map<String, Skein> free;
  private final Map<String, YarnColour> yarns;
  private final YarnPalette palette;
  private final Opened opened;

  /**
   * The skeins that a plan takes.
   *
   * @param skeins on the shelf
   * @param opened what explains itself, kept from one answer to the next
   */
  SharesByYarn(PlanCheck check, List<ShelfSkein> skeins, YarnPalette palette, Opened opened) {
    this.shares = check.shares();
    this.free = Shelf.freeFor(check.plan().name(), skeins).stream().collect(Collectors.toMap(Skein::code, Function.identity()));
    this.yarns = skeins.stream().collect(Collectors.toMap(held -> held.skein().code(), held -> held.skein().yarn()));
    this.palette = palette;
    this.opened = opened;
  }

  /** A part for each yarn. */
  Node[] groups() {
    Map<YarnColour, List<Share>> byYarn = new LinkedHashMap<>();
    shares.forEach(share -> byYarn.computeIfAbsent(yarns.getOrDefault(share.code(), new YarnColour(Say.text("Other"), Say.text("yarn"))), _ -> new ArrayList<>()).add(share));
    return byYarn.entrySet().stream().map(yarn -> group(yarn.getKey(), yarn.getValue())).toArray(Node[]::new);
  }

  private Node group(YarnColour yarn, List<Share> ofYarn) {
    Label name = new Label(Say.count(ofYarn.size(), "{1}, {0} skein", "{1}, {0} skeins", yarn), palette.swatch(yarn));
    GridPane rows = new GridPane();
    rows.getStyleClass().add("share-rows");
    for (Share share : ofYarn) {
      Label code = new Label(share.code());
      code.getStyleClass().add("share-code");
      code.setMinWidth(VBox.USE_PREF_SIZE);
      GridPane.setValignment(code, VPos.TOP);
      rows.addRow(rows.getRowCount(), code, gives(share));
    }
    VBox group = new VBox(name, rows);
    group.getStyleClass().add("share-group");
    return group;
  }

  private Node gives(Share share) {
    WhyBelow below = new WhyBelow("skein-" + share.code(), opened, BecauseWords.ON_SCREEN);
    ToggleButton gives = below.figure("gives", share.code(), gives(share.ends(), share), () -> why(share));
    gives.setWrapText(true);
    gives.setMinWidth(0);
    gives.getStyleClass().add("share-words");
    return new VBox(gives, Labels.quiet(share.reason()), below);
  }

  /** What it gives of what is free of it; where the shelf changed meanwhile only what it gives. */
  private Because why(Share share) {
    Skein skein = free.get(share.code());
    return skein == null ? SkeinBecause.given(share) : SkeinBecause.left(share, skein);
  }

  private static String gives(int ends, Share share) {
    if (ends == 0) {
      return Say.text("{0} of weft", Wording.yarn(share.weft()));
    }
    return share.weft().isPositive()
        ? Say.count(ends, "{0} end, {1} and {2} of weft", "{0} ends, {1} and {2} of weft", Wording.yarn(share.warp()), Wording.yarn(share.weft()))
        : Say.count(ends, "{0} end, {1}", "{0} ends, {1}", Wording.yarn(share.warp()));
  }
}
