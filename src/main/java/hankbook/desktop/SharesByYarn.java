package hankbook.desktop;

import hankbook.allot.Share;
import hankbook.studio.ShelfSkein;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** The skeins to take, yarn by yarn: what each gives and why it was chosen. */
final class SharesByYarn {
  private SharesByYarn() {}

  static Node[] of(List<Share> shares, List<ShelfSkein> skeins, YarnPalette palette) {
    Map<String, YarnColour> yarns = skeins.stream().collect(Collectors.toMap(held -> held.skein().code(), held -> held.skein().yarn()));
    Map<YarnColour, List<Share>> byYarn = new LinkedHashMap<>();
    shares.forEach(share -> byYarn.computeIfAbsent(yarns.getOrDefault(share.code(), new YarnColour("Other", "yarn")), _ -> new ArrayList<>()).add(share));
    return byYarn.entrySet().stream().map(yarn -> group(yarn.getKey(), yarn.getValue(), palette)).toArray(Node[]::new);
  }

  private static Node group(YarnColour yarn, List<Share> shares, YarnPalette palette) {
    Label name = new Label(yarn + ", " + Wording.count(shares.size(), "skein", "skeins"), palette.swatch(yarn));
    GridPane rows = new GridPane();
    rows.getStyleClass().add("share-rows");
    for (Share share : shares) {
      Label code = new Label(share.code());
      code.getStyleClass().add("share-code");
      code.setMinWidth(VBox.USE_PREF_SIZE);
      GridPane.setValignment(code, VPos.TOP);
      rows.addRow(rows.getRowCount(), code, new VBox(PlanPage.text(gives(share), "share-words"), Labels.quiet(share.reason())));
    }
    VBox group = new VBox(name, rows);
    group.getStyleClass().add("share-group");
    return group;
  }

  private static String gives(Share share) {
    String ends = share.ends() > 0 ? Wording.count(share.ends(), "end", "ends") + ", " + Wording.metres(share.warp()) : "";
    String weft = share.weft().isPositive() ? Wording.metres(share.weft()) + " of weft" : "";
    return ends + (ends.isEmpty() || weft.isEmpty() ? "" : " and ") + weft;
  }
}
