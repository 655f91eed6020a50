package hankbook.desktop.say;

import hankbook.cost.Basis;
import hankbook.cost.YarnUse;
import hankbook.ledger.EntryKind;
import hankbook.plan.Term;
import hankbook.plan.WorkKind;
import hankbook.reckon.Cause;
import hankbook.reckon.Learnable;
import hankbook.reckon.Way;
import hankbook.studio.QueuedPlan;
import hankbook.studio.ValuedStock;
import hankbook.yarn.FibreFamily;
import hankbook.yarn.PackageForm;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/** The words of the enums below the window, and other constants there, that the window says as they are known: the one place where they are listed. */
final class WordsBelow {
  private final Set<String> words = new TreeSet<>();

  private WordsBelow() {}

  static Set<String> all() {
    WordsBelow all = new WordsBelow();
    all.of(EntryKind.values(), EntryKind::words);
    all.of(PackageForm.values(), PackageForm::toString);
    all.of(WorkKind.values(), WorkKind::key);
    all.of(Basis.values(), Basis::words);
    all.of(Cause.values(), Cause::words);
    all.of(Way.values(), Way::words);
    all.of(Learnable.values(), Learnable::words);
    all.of(Term.values(), Term::words);
    all.of(Term.values(), Term::formula);
    all.of(FibreFamily.values(), FibreFamily::words);
    all.of(YarnUse.values(), YarnUse::words);
    all.of(QueuedPlan.Stands.values(), QueuedPlan.Stands::words);
    all.words.add(ValuedStock.CAUTION);
    all.words.addAll(Set.of(" and ", "not set", "as paid", "Yarn", "Work", "Still to buy", "Overheads", "For each plan", "Winding", "Beaming", "Threading", "Sleying", "Weaving", "Finishing"));
    all.words.remove("");
    all.words.addAll(Set.of("yarn", "colour", "code", "name", "dents", "width", "waste", "shafts", "leftovers", "thrums", "samples", "warp", "cloth"));
    return all.words;
  }

  private <T> void of(T[] all, Function<T, String> word) {
    Arrays.stream(all).map(word).forEach(words::add);
  }
}
