package hankbook.desktop;

import hankbook.exchange.ActualsDraft;
import hankbook.exchange.ActualsFile;
import hankbook.exchange.ActualsPart;
import hankbook.exchange.BadInput;
import hankbook.exchange.DraftRow;
import hankbook.measure.Unreadable;
import hankbook.reckon.Actuals;
import hankbook.reckon.Made;
import hankbook.reckon.Realised;
import hankbook.studio.Finish;
import hankbook.studio.Finishing;
import hankbook.studio.NotDone;
import hankbook.studio.ToFinish;
import hankbook.studio.UsedAgainstPlan;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a form that is being filled in comes to.
 *
 * @param actuals what it says; empty where it cannot be read
 * @param finishing what squaring the book by it would come to; empty as long as that cannot be done
 * @param really the ways of cloth and loom as far as they are known already
 * @param whyNot why the book cannot be squared by it, or empty
 */
record AfterPreview(Optional<Actuals> actuals, Optional<Finishing> finishing, Optional<Realised> really, String whyNot) {
  /** Works it out; may take long. */
  static AfterPreview of(ToFinish ground, ActualsDraft draft, Finish finish) {
    String plan = ground.plan().name();
    List<DraftRow> said = draft.rows(ActualsPart.LEFTOVERS).stream().filter(row -> LeftReading.said(row).isPresent()).toList();
    Actuals actuals;
    try {
      actuals = ActualsFile.read(plan, draft.with(ActualsPart.LEFTOVERS, said).json()).actuals();
    } catch (BadInput unreadable) {
      return new AfterPreview(Optional.empty(), Optional.empty(), Optional.empty(), "Mend first: " + PlanWords.why(unreadable, plan));
    }
    String unsaid = unsaid(ground, draft, said);
    if (!unsaid.isEmpty()) {
      return refused(ground, actuals, "Still to be said in step 1: what is left of " + unsaid + ".");
    }
    try {
      Finishing finishing = finish.preview(plan, actuals);
      return new AfterPreview(Optional.of(actuals), Optional.of(finishing), really(finishing.made()), "");
    } catch (BadInput unreadable) {
      return refused(ground, actuals, PlanWords.why(unreadable, plan));
    } catch (NotDone why) {
      return refused(ground, actuals, Status.words(why).replace(" Nothing was posted.", ""));
    }
  }

  private static AfterPreview refused(ToFinish ground, Actuals actuals, String whyNot) {
    return new AfterPreview(Optional.of(actuals), Optional.empty(), really(new Made(ground.plan(), actuals, List.of())), whyNot);
  }

  private static String unsaid(ToFinish ground, ActualsDraft draft, List<DraftRow> said) {
    Stream<String> drawn = ground.skeins().stream().filter(ToFinish.Taken::isDrawn).map(taken -> taken.drawn().code());
    Set<String> codes = said.stream().map(FoundRows::code).collect(Collectors.toSet());
    return Stream.concat(drawn, draft.rows(ActualsPart.LEFTOVERS).stream().map(FoundRows::code)).distinct().filter(code -> !codes.contains(code)).collect(Collectors.joining(", "));
  }

  private static Optional<Realised> really(Made made) {
    try {
      return Optional.of(Realised.of(made));
    } catch (Unreadable | ArithmeticException unfinished) {
      return Optional.empty();
    }
  }

  /** The yarns of which more stays unexplained than may without a reason. */
  List<UsedAgainstPlan> wantingReason() {
    return finishing.map(Finishing::wantingReason).orElse(List.of());
  }
}
