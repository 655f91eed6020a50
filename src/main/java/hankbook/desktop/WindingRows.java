package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.allot.Feed;
import hankbook.allot.PassesBecause;
import hankbook.allot.Share;
import hankbook.allot.Stint;
import hankbook.allot.WindingSheet;
import hankbook.desktop.say.Say;
import hankbook.desktop.why.Opened;
import hankbook.desktop.why.WhyBelow;
import hankbook.exchange.WindingSteps;
import hankbook.exchange.WindingWords;
import hankbook.plan.Bout;
import hankbook.studio.ShelfSkein;
import hankbook.yarn.YarnColour;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.apache.commons.numbers.fraction.BigFraction;

/** A winding sheet in rows that can be read from the warping board. */
final class WindingRows extends VBox {
  private final WindingSheet sheet;
  private final WindingModel winding;
  private final YarnPalette palette;
  private final Map<String, YarnColour> yarns;

  WindingRows(WindingModel.Planned found, WindingModel winding, List<ShelfSkein> skeins) {
    this.sheet = found.sheet();
    this.winding = winding;
    this.palette = YarnPalette.of(skeins);
    this.yarns = skeins.stream().collect(Collectors.toMap(held -> held.skein().code(), held -> held.skein().yarn()));
    getStyleClass().add("winding-rows");
    getChildren().add(PlanPage.text(Wording.phrase(WindingWords.whole(sheet)), "winding-words"));
    WhyBelow below = new WhyBelow("winding", new Opened(), BecauseWords.ON_SCREEN);
    String passes = Wording.number(BigFraction.of(sheet.passes()), 0);
    getChildren().addAll(new FigureBox(Say.text("passes"), below.figure("passes", Say.text("passes"), passes, () -> PassesBecause.of(sheet))), below);
    if (sheet.check().isShort()) {
      Label mark = StandingMark.labelled(Standing.SHORT);
      getChildren().add(row(mark, PlanPage.text(PlanWords.shortOf(sheet.check()) + " " + Say.text("What has a skein can be wound."), "winding-words")));
    }
    WindingWords.otherThreads(sheet, found.planned()).map(Wording::phrase).ifPresent(this::otherThreads);
    steps(Say.text("In the order of the warp"), WindingSteps.ofWarp(sheet));
    steps(Say.text("Beside it, for repairs"), WindingSteps.ofSpare(sheet));
    sheet.feeds().forEach(this::feed);
    bouts();
    PlanPage.section(this, Say.text("To wind in all"), sheet.lengths().entrySet().stream().map(yarn -> total(yarn.getKey(), Wording.yarn(yarn.getValue()))).toArray(Node[]::new));
  }

  private void otherThreads(String words) {
    Button take = new Button(Say.text("Let the plan say {0}", sheet.wish().threads()));
    take.setId("winding-take-threads");
    take.getStyleClass().addAll(Styles.SMALL, Styles.BUTTON_OUTLINED);
    take.setMinWidth(USE_PREF_SIZE);
    take.setOnAction(_ -> winding.takeThreads());
    getChildren().add(row(PlanPage.text(words, "winding-words"), take));
  }

  private void steps(String title, WindingSteps steps) {
    PlanPage.section(this, title, steps.lines().stream().map(this::step).toArray(Node[]::new));
  }

  private Node step(WindingSteps.Line line) {
    Label passes = new Label(line.passes());
    passes.getStyleClass().add(line.content().isEmpty() ? "winding-again" : "winding-passes");
    HBox row = row(passes);
    row.setMinHeight(USE_PREF_SIZE);
    if (line.inside()) {
      row.getStyleClass().add("winding-inside");
    }
    line.yarns().forEach(yarn -> row.getChildren().add(palette.swatch(yarn)));
    if (!line.content().isEmpty()) {
      row.getChildren().add(grown(PlanPage.text(line.content(), "winding-words")));
    }
    return row;
  }

  private void feed(Feed feed) {
    VBox rows = new VBox(PlanPage.text(Wording.phrase(WindingWords.amount(feed)), "winding-words"));
    rows.getStyleClass().add("winding-feed");
    WindingWords.hindrance(sheet, feed).map(Wording::phrase).ifPresent(why -> rows.getChildren().add(PlanPage.text(why, "winding-hindrance")));
    List<Stint> stints = feed.stints();
    for (int i = 0; i < stints.size(); i++) {
      boolean first = i == 0 || stints.get(i - 1).position() != stints.get(i).position();
      rows.getChildren().add(first ? begins(stints.get(i)) : changes(stints.get(i - 1), stints.get(i)));
    }
    if (stints.isEmpty()) {
      sheet.check().shares().stream().filter(share -> share.ends(feed.kind().kind()) > 0 && feed.kind().yarn().equals(yarns.get(share.code())))
          .forEach(share -> rows.getChildren().add(waits(feed, share)));
    }
    PlanPage.section(this, new Label(feed.kind().yarn().toString(), palette.swatch(feed.kind().yarn())), rows);
  }

  private static Node begins(Stint stint) {
    String ends = stint.firstPass() == 1 ? ends(stint.ends()) : Say.count(stint.ends(), "from pass {1}, {0} end", "from pass {1}, {0} ends", stint.firstPass());
    return skein(Say.text("position {0}", stint.position()), stint.skein(), ends);
  }

  private static Node changes(Stint before, Stint next) {
    boolean follows = next.firstPass() == before.lastPass() + 1;
    String ends = follows ? ends(next.ends()) : Say.count(next.ends(), "for pass {1}, {0} end", "for pass {1}, {0} ends", next.firstPass());
    return skein(Say.text("after pass {0}", before.lastPass()), next.skein(), ends);
  }

  /** Of a yarn that is short no skein has a position yet. */
  private static Node waits(Feed feed, Share share) {
    return skein(Say.text("gives"), share.code(), ends(share.ends(feed.kind().kind())));
  }

  private static Node skein(String where, String code, String ends) {
    Label place = new Label(where);
    place.getStyleClass().add("winding-place");
    Label skein = new Label(code);
    skein.getStyleClass().add("winding-skein");
    return row(place, skein, grown(PlanPage.text(ends, "winding-words")));
  }

  private void bouts() {
    GridPane table = new GridPane();
    table.getStyleClass().add("winding-bouts");
    table.addRow(0, Labels.quiet(Say.text("bout")), Labels.quiet(Say.text("passes")), Labels.quiet(Say.text("ends")), Labels.quiet(Say.text("counting groups")));
    int number = 0;
    for (Bout bout : sheet.bouts()) {
      number++;
      String groups = Wording.phrase(WindingWords.groups(sheet.counted(bout), sheet.wish().group()));
      table.addRow(number, cell(Integer.toString(number)), cell(bout.firstPass() + "-" + bout.lastPass()), cell(Integer.toString(bout.ends())), cell(groups));
    }
    PlanPage.section(this, Say.text("Bouts"), PlanPage.text(Wording.phrase(WindingWords.bouts(sheet)), "winding-words"), table);
  }

  private static Label cell(String text) {
    Label cell = new Label(text);
    cell.getStyleClass().add("winding-words");
    return cell;
  }

  private Node total(YarnColour yarn, String metres) {
    Label length = new Label(metres);
    length.getStyleClass().add("winding-skein");
    return row(palette.swatch(yarn), PlanPage.text(yarn.toString(), "winding-words"), length);
  }

  private static String ends(int count) {
    return Say.count(count, "{0} end", "{0} ends");
  }

  private static Label grown(Label label) {
    HBox.setHgrow(label, Priority.ALWAYS);
    return label;
  }

  private static HBox row(Node... parts) {
    HBox row = new HBox(parts);
    row.getStyleClass().add("winding-row");
    row.setAlignment(Pos.CENTER_LEFT);
    return row;
  }
}
