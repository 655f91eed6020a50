package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.ActualsPart;
import hankbook.measure.Length;
import hankbook.reckon.Cause;
import hankbook.reckon.SkeinUse;
import hankbook.reckon.YarnAccount;
import hankbook.studio.Finishing;
import hankbook.studio.ToFinish;
import hankbook.studio.UsedAgainstPlan;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.css.PseudoClass;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** What a form that is being filled in comes to, and the reason where one is needed. */
final class AfterPreviewPane extends VBox {
  private static final PseudoClass STALE = PseudoClass.getPseudoClass("stale");

  private final AfterEditor editor;
  private final VBox found = new VBox();

  AfterPreviewPane(AfterEditor editor) {
    this.editor = editor;
    getStyleClass().add("plan-answer");
    found.getStyleClass().add("plan-column");
    FoundNote reason = new FoundNote(editor, "reason", Say.text("Why what cannot be explained is accepted"), Say.text("the reason, which is kept"), 2);
    Labels.showOnly(reason, editor.preview().foundProperty().flatMap(answer -> editor.draftProperty().map(
        draft -> answer.filter(now -> !now.wantingReason().isEmpty()).isPresent() || !draft.text(ActualsPart.ACTUALS, 1, "reason").isBlank())));
    getChildren().addAll(found, reason);
    editor.preview().foundProperty().subscribe(this::show);
    editor.preview().reckoningProperty().subscribe(reckoning -> found.pseudoClassStateChanged(STALE, reckoning));
  }

  private void show(Optional<AfterPreview> answer) {
    found.getChildren().clear();
    Optional<ToFinish> ground = editor.groundProperty().get();
    if (answer.isPresent() && ground.isPresent()) {
      AfterPreview preview = answer.get();
      PlanPage.section(found, Say.text("What would be posted"), posted(preview));
      preview.really().ifPresent(really -> PlanPage.section(found, Say.text("As it came out"), new CameOut(ground.get().plan(), really)));
      preview.finishing().ifPresent(finishing -> PlanPage.section(found, Say.text("Where the yarn went"), went(ground.get(), finishing, preview)));
    }
  }

  private static Node posted(AfterPreview preview) {
    if (preview.finishing().isEmpty()) {
      return Labels.quiet(Say.text("Nothing yet."));
    }
    GridPane grid = new GridPane();
    grid.getStyleClass().add("posted");
    List<SkeinUse> skeins = preview.finishing().get().squared().skeins();
    row(grid, List.of("", Say.text("back"), Say.text("samples"), Say.text("thrums"), Say.text("woven")), "quiet");
    skeins.forEach(use -> row(grid, List.of(use.skein().code(), metres(use.returned()), metres(use.sampled()), metres(use.thrums()), metres(use.woven())), "fact"));
    VBox all = new VBox(grid);
    all.getStyleClass().add("plan-figure");
    skeins.stream().filter(use -> use.drawnMore().isPositive()).forEach(
        use -> all.getChildren().add(Labels.quiet(Say.text("{0}: {1} more are taken off the shelf first.", use.skein().code(), Wording.metres(use.drawnMore())))));
    skeins.stream().filter(use -> use.skein().reserved().isPositive()).forEach(
        use -> all.getChildren().add(Labels.quiet(Say.text("{0}: {1} still set aside are released.", use.skein().code(), Wording.metres(use.skein().reserved())))));
    skeins.stream().filter(use -> use.recounted().isPositive()).forEach(
        use -> all.getChildren().add(Labels.quiet(Say.text("{0}: {1} that the book did not know of are found.", use.skein().code(), Wording.metres(use.recounted())))));
    return all;
  }

  private static String metres(Length length) {
    return length.isZero() ? "–" : Wording.metres(length);
  }

  private static void row(GridPane grid, List<String> texts, String style) {
    int row = grid.getRowCount();
    for (int column = 0; column < texts.size(); column++) {
      Label cell = new Label(texts.get(column));
      cell.setMinWidth(USE_PREF_SIZE);
      cell.getStyleClass().add(style);
      GridPane.setHalignment(cell, column == 0 ? HPos.LEFT : HPos.RIGHT);
      grid.add(cell, column, row);
    }
  }

  private static Node[] went(ToFinish ground, Finishing finishing, AfterPreview preview) {
    YarnPalette palette = YarnPalette.of(ground.skeins().stream().map(ToFinish.Taken::held).toList());
    List<Node> cards = new ArrayList<>();
    for (UsedAgainstPlan yarn : finishing.yarns()) {
      Label name = new Label(yarn.yarn().toString(), palette.swatch(yarn.yarn()));
      name.getStyleClass().add("share-code");
      Label used = new Label(Say.text("{0} planned, {1} used", Wording.metres(yarn.planned()), Wording.metres(yarn.used())));
      used.setWrapText(true);
      Label unexplained = yarn.wantsReason() ? PlanPage.text(AfterWords.unexplained(yarn), "fault") : Labels.quiet(AfterWords.unexplained(yarn));
      VBox card = new VBox(new HBox(name), used);
      preview.went().flatMap(went -> went.yarns().stream().filter(account -> account.yarn().equals(yarn.yarn())).findFirst()).map(AfterPreviewPane::causes)
          .filter(words -> !words.isEmpty()).map(Labels::quiet).ifPresent(card.getChildren()::add);
      card.getChildren().add(unexplained);
      card.getStyleClass().add("cover-card");
      cards.add(card);
    }
    return cards.toArray(Node[]::new);
  }

  private static String causes(YarnAccount account) {
    return Arrays.stream(Cause.values())
        .filter(cause -> cause != Cause.UNEXPLAINED && !account.part(cause).isZero())
        .map(cause -> Say.known(cause.words()) + " " + AfterWords.signed(account.part(cause)))
        .collect(Collectors.joining(", "));
  }
}
