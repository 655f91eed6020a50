package hankbook.desktop;

import hankbook.allot.Fit;
import hankbook.allot.PlanCheck;
import hankbook.desktop.say.Say;
import hankbook.measure.Length;
import hankbook.plan.Piece;
import hankbook.plan.Plan;
import hankbook.plan.PlanVariants;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What more the shelf allows than the open plan asks for, where that is not short. */
final class FitModel {
  /** An answer with the check it belongs to. */
  record Found(PlanCheck check, Fit most) {}

  private final PlanEditor editor;
  private final LiveAnswer<Found> fit;

  FitModel(PlanDesk desk, Work work, PlanEditor editor) {
    this.editor = editor;
    this.fit = new LiveAnswer<>(work, () -> check().map(check -> () -> new Found(check, desk.fit(check.plan()))), PlanWords::trouble);
    editor.answerProperty().subscribe(_ -> fit.ask());
  }

  /** The most of everything while someone looks at it. */
  LiveAnswer<Found> fit() {
    return fit;
  }

  /** What more a plan that is not short might be, in a line; empty where there is no more. */
  String surplus() {
    return found().map(now -> surplus(now.check(), now.most())).orElse("");
  }

  private static String surplus(PlanCheck check, Fit most) {
    Plan plan = check.plan();
    List<String> more = new ArrayList<>();
    if (most.longestWarp().compareTo(check.yardage().warp().total()) > 0) {
      more.add(Say.text("a warp of {0}", PlanWords.fine(most.longestWarp())));
    }
    int pieces = plan.pieces().stream().mapToInt(Piece::count).sum();
    most.mostPieces().stream().filter(count -> count > pieces).forEach(count -> more.add(Say.count(count, "{0} piece", "{0} pieces")));
    most.longestPiece().filter(longest -> longest.compareTo(PlanVariants.longestPiece(plan)) > 0).ifPresent(longest -> more.add(Say.text("pieces up to {0} long", centimetres(longest))));
    return more.isEmpty() ? "" : Say.text("At the most the shelf would allow {0}.", String.join(Say.text(", or "), more));
  }

  /** An answer to what is no longer shown says nothing. */
  private Optional<Found> found() {
    return fit.foundProperty().get().filter(now -> check().filter(now.check()::equals).isPresent());
  }

  private Optional<PlanCheck> check() {
    return editor.answerProperty().get() instanceof PlanAnswer.Reckoned(PlanCheck check) && !check.isShort() ? Optional.of(check) : Optional.empty();
  }

  private static String centimetres(Length length) {
    return Wording.width(length);
  }
}
