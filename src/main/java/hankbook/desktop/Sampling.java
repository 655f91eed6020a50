package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.measure.Length;
import hankbook.studio.Grists;
import hankbook.studio.Studio;
import hankbook.yarn.GristSample;
import hankbook.yarn.Kept;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/** Weighing a sample of the chosen skein's yarn, whose own grist is used instead of its yarn number from then on. */
public final class Sampling {
  private final Studio studio;
  private final Status status;
  private final ShelfModel shelf;
  private final Act use;
  private final Act forget;
  private final SampleFields fields = new SampleFields();
  private final ReadOnlyStringWrapper rules = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper found = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper against = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper recounts = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper usualDivision = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper usualWithin = new ReadOnlyStringWrapper("");
  private final ReadOnlyBooleanWrapper known = new ReadOnlyBooleanWrapper(false);
  private Optional<Skein> skein = Optional.empty();

  /** @param shelf the skeins that a grist may tell something of, which is read anew once one is used */
  public Sampling(Studio studio, Work work, Status status, ShelfModel shelf) {
    this.studio = studio;
    this.status = status;
    this.shelf = shelf;
    use = new Act(work);
    forget = new Act(work);
    fields.subscribe(() -> {
      use.renew();
      judge();
    });
  }

  SampleFields fields() {
    return fields;
  }

  /** Letting the sample rule. */
  Act using() {
    return use;
  }

  /** Letting the yarn number rule again. */
  Act forgetting() {
    return forget;
  }

  /** Whether a sample rules now. */
  ReadOnlyBooleanProperty knownProperty() {
    return known.getReadOnlyProperty();
  }

  /** By what the yarn's grist is known now. */
  ReadOnlyStringProperty rulesProperty() {
    return rules.getReadOnlyProperty();
  }

  /** The grist that the sample comes to, and how surely; empty as long as there is none. */
  ReadOnlyStringProperty foundProperty() {
    return found.getReadOnlyProperty();
  }

  /** That grist beside the yarn number. */
  ReadOnlyStringProperty againstProperty() {
    return against.getReadOnlyProperty();
  }

  /** Which skeins the grist makes longer or shorter than the ledger has them, a line each, or empty. */
  ReadOnlyStringProperty recountsProperty() {
    return recounts.getReadOnlyProperty();
  }

  ReadOnlyStringProperty usualDivisionProperty() {
    return usualDivision.getReadOnlyProperty();
  }

  ReadOnlyStringProperty usualWithinProperty() {
    return usualWithin.getReadOnlyProperty();
  }

  /** Whether something is typed that stands in no ledger yet. */
  boolean isBegun() {
    return fields.isBegun();
  }

  /** Turns to the yarn of a skein, or to none; what was typed for another yarn is cleared. */
  void turnTo(Optional<SkeinRow> row) {
    Optional<Skein> now = row.map(SkeinRow::skein);
    boolean another = !now.map(Sampling::yarn).equals(skein.map(Sampling::yarn));
    skein = now;
    if (another) {
      fields.clear();
      use.renew();
      forget.renew();
    }
    judge();
  }

  /** Lets the sample rule. */
  void useIt() {
    if (use.isPossible()) {
      String yarn = skein.map(Sampling::yarn).orElseThrow();
      GristSample sample = fields.read().sample().orElseThrow();
      String grist = Wording.grist(sample, skein.map(Skein::fibre).orElse(""));
      use.attempt(_ -> new Grists(studio).weigh(yarn, sample), fields::clear, () -> done(Say.text("{0} goes by its own grist now, {1}.", yarn, grist)), status::wrong);
    }
  }

  /** Lets the yarn number rule again. */
  void forgetIt() {
    if (forget.isPossible()) {
      String yarn = skein.map(Sampling::yarn).orElseThrow();
      forget.attempt(_ -> new Grists(studio).forget(yarn), () -> {}, () -> done(Say.text("{0} goes by its yarn number again.", yarn)), status::wrong);
    }
  }

  private void done(String words) {
    status.done(words);
    shelf.refresh();
  }

  private void judge() {
    SampleFields.Reading read = fields.read();
    Optional<GristSample> ruling = skein.flatMap(Skein::sample);
    known.set(ruling.isPresent());
    rules.set(skein.map(Sampling::rules).orElse(""));
    usualDivision.set(fields.usualDivision());
    usualWithin.set(fields.usualWithin());
    found.set(read.sample().map(sample -> Wording.grist(sample, skein.map(Skein::fibre).orElse(""))).orElse(""));
    against.set(skein.flatMap(now -> read.sample().flatMap(sample -> now.grist().map(number -> GristWords.against(sample.grist(), number)))).orElse(""));
    recounts.set(read.sample().map(sample -> recounts(sample, Say.text("Once it is used, weigh these again; by this grist they held:")))
        .or(() -> ruling.map(sample -> recounts(sample, Say.text("Weigh these again; by this grist they held:")))).orElse(""));
    use.judge(skein.isEmpty() ? Say.text("Choose a skein.") : read.sample().equals(ruling) && ruling.isPresent() ? Say.text("This sample rules already.") : read.whyNot());
    forget.judge(ruling.isPresent() ? "" : Say.text("No sample of it was weighed."));
  }

  private static String rules(Skein skein) {
    String byNumber = skein.grist().map(number -> Say.text("{0}, {1}, by its yarn number", number, Wording.grist(number.grist(), skein.fibre()))).orElse(Say.text("no grist known"));
    String how = skein.sample().map(sample -> Say.text("{0}, by {1} that weighed {2}", Wording.grist(sample, skein.fibre()), sample.length(), sample.mass())).orElse(byNumber);
    return Say.text("{0}: {1}.", yarn(skein), how);
  }

  private String recounts(GristSample sample, String weigh) {
    String yarn = skein.map(Sampling::yarn).orElse("");
    List<String> lines = shelf.everySkein().stream()
        .filter(other -> yarn(other).equals(yarn) && other.holds().isPositive())
        .map(other -> other.withSample(Optional.of(sample)))
        .filter(Skein::gristDisagrees)
        .map(Sampling::recount)
        .toList();
    return lines.isEmpty() ? "" : weigh + "\n" + String.join("\n", lines);
  }

  private static String recount(Skein skein) {
    YarnColour yarn = skein.yarn();
    Length counted = skein.kept().flatMap(Kept::counted).orElse(Length.ZERO);
    Length more = skein.toRecount();
    String held = Wording.yarn(counted.plus(more));
    return more.isNegative()
        ? Say.text("{0} {1}: {2}, {3} less than the ledger took it for", skein.code(), yarn.colour(), held, Wording.yarn(more.negated()))
        : Say.text("{0} {1}: {2}, {3} more than the ledger took it for", skein.code(), yarn.colour(), held, Wording.yarn(more));
  }

  private static String yarn(Skein skein) {
    return skein.yarn().yarn();
  }
}
