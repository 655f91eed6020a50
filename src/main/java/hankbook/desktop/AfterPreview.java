package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.ActualsDraft;
import hankbook.exchange.ActualsFile;
import hankbook.exchange.ActualsPart;
import hankbook.exchange.BadInput;
import hankbook.exchange.DraftRow;
import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import hankbook.reckon.Actuals;
import hankbook.reckon.Made;
import hankbook.reckon.Realised;
import hankbook.reckon.Reckoning;
import hankbook.studio.Finish;
import hankbook.studio.Finishing;
import hankbook.studio.NotDone;
import hankbook.studio.ToFinish;
import hankbook.studio.UsedAgainstPlan;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a form that is being filled in comes to.
 *
 * @param actuals what it says; empty where it cannot be read
 * @param finishing what squaring the book by it would come to; empty as long as that cannot be done
 * @param really the ways of cloth and loom as far as they are known already
 * @param went where the yarn went, where that can be told
 * @param whyNot why the book cannot be squared by it, or empty
 */
record AfterPreview(Optional<Actuals> actuals, Optional<Finishing> finishing, Optional<Realised> really, Optional<Reckoning> went, String whyNot) {
  /** Works it out; may take long. */
  static AfterPreview of(ToFinish ground, ActualsDraft draft, Finish finish) {
    String plan = ground.plan().name();
    List<DraftRow> said = draft.rows(ActualsPart.LEFTOVERS).stream().filter(row -> LeftReading.said(row).isPresent()).toList();
    Actuals actuals;
    try {
      actuals = ActualsFile.read(plan, draft.with(ActualsPart.LEFTOVERS, said).json()).actuals();
    } catch (BadInput unreadable) {
      return new AfterPreview(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Say.text("Mend first: {0}", AfterWords.why(unreadable, plan)));
    }
    String unsaid = unsaid(ground, draft, said);
    if (!unsaid.isEmpty()) {
      return refused(ground, actuals, Say.text("Still to be said in step 1: what is left of {0}.", unsaid));
    }
    try {
      Finishing finishing = finish.preview(plan, actuals);
      return new AfterPreview(Optional.of(actuals), Optional.of(finishing), known(() -> Realised.of(finishing.made())), known(() -> Reckoning.of(finishing.made())), "");
    } catch (BadInput unreadable) {
      return refused(ground, actuals, PlanWords.why(unreadable, plan));
    } catch (NotDone why) {
      return refused(ground, actuals, withoutPosting(why));
    }
  }

  /** A preview posts nothing anyway, so it need not be said. */
  private static String withoutPosting(NotDone why) {
    List<Object> values = why.phrase().values();
    return values.size() == 1 && values.getFirst() instanceof Phrase reason ? Wording.phrase(reason) : Status.words(why);
  }

  private static AfterPreview refused(ToFinish ground, Actuals actuals, String whyNot) {
    Made soFar = new Made(ground.plan(), actuals, List.of());
    return new AfterPreview(Optional.of(actuals), Optional.empty(), known(() -> Realised.of(soFar)), Optional.empty(), whyNot);
  }

  private static String unsaid(ToFinish ground, ActualsDraft draft, List<DraftRow> said) {
    Stream<String> drawn = ground.skeins().stream().filter(ToFinish.Taken::isDrawn).map(taken -> taken.drawn().code());
    Set<String> codes = said.stream().map(FoundRows::code).collect(Collectors.toSet());
    return Stream.concat(drawn, draft.rows(ActualsPart.LEFTOVERS).stream().map(FoundRows::code)).distinct().filter(code -> !codes.contains(code)).collect(Collectors.joining(", "));
  }

  private static <T> Optional<T> known(Supplier<T> reckoned) {
    try {
      return Optional.of(reckoned.get());
    } catch (Unreadable | ArithmeticException unfinished) {
      return Optional.empty();
    }
  }

  /** The yarns of which more stays unexplained than may without a reason. */
  List<UsedAgainstPlan> wantingReason() {
    return finishing.map(Finishing::wantingReason).orElse(List.of());
  }
}
