package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.reckon.Finding;
import hankbook.reckon.Lesson;
import hankbook.reckon.Manner;
import hankbook.yarn.FibreFamily;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What was learnt, in words. */
final class LearntWords {
  private LearntWords() {}

  /** The families of fibres, such as {@code wool and silk}. */
  static String fibre(Set<FibreFamily> fibre) {
    return Wording.phrase(new Manner(Optional.empty(), Optional.empty(), fibre).fibres());
  }

  /** A number and its unit stay on one line. */
  static String unbroken(String words) {
    return words.replaceAll("(?<=\\d) (?=%|(cm|s|min)\\b)", "\u00A0");
  }

  /** From how many plans what is shown comes, and what it is for. */
  static String summary(List<Finding> rows, Manner group) {
    if (rows.isEmpty()) {
      return Say.text("Nothing was learnt of cloths {0}. Choose fewer things.", Wording.phrase(group.phrase()));
    }
    long plans = rows.stream().flatMap(row -> row.lessons().stream()).map(Lesson::plan).distinct().count();
    return Say.count(plans,
        "From {0} finished plan. Odd ones count too. It is offered beside the allowances of plans to come, and nothing of it is put into a plan by itself.",
        "From {0} finished plans. Odd ones count too. It is offered beside the allowances of plans to come, and nothing of it is put into a plan by itself.");
  }

  /** Where the next cloth comes out 95 times of 100. */
  static String range(Finding finding) {
    return finding.count() == 1 ? Say.text("one plan only") : finding.scatter().map(Wording::phrase).orElse("");
  }

  /** How far the values scatter; empty of a single one. */
  static String spread(Finding finding) {
    return finding.spread().map(finding.which().unit()::phrase).map(Wording::phrase).orElse("");
  }

  /** The plans that do not belong to the others, which count all the same. */
  static String odd(Finding finding) {
    return finding.odd().stream().map(lesson -> Say.text("{0} with {1}", lesson.plan(), Wording.phrase(finding.which().unit().phrase(lesson.value())))).collect(Collectors.joining(", "));
  }

  /** How plans come to teach, for those of whom none did yet. */
  static List<String> teaching() {
    return List.of(
        Say.text("A plan teaches once its book is squared, as far as something was measured. One finished plan proposes what it "
            + "found; two or more show how far cloths differ and where the next comes out 95 times of 100; of "
            + "three or more one that does not belong to the others is named. Every one counts."),
        Say.text("Loom waste: measure how long the warp is that stays unwoven, or weigh the thrums."),
        Say.text("Warp take-up: measure the warp as it was wound, its loom waste, and the cloth off the loom."),
        Say.text("Weft take-up: count the picks and measure the width in the reed; what is left of the weft tells the rest. Winding "
            + "loss: the same of a warp whose length was measured."),
        Say.text("Draw-in and shrinkage: measure the width in the reed, and length and width of the cloth off the loom and finished."),
        Say.text("Times: write down how long winding, threading, weaving and the other kinds of work took."),
        Say.text("What is learnt is kept apart by loom, weave and fibre: name the loom and the weave in a plan, and say of what fibre "
            + "its yarn is when it is received."));
  }
}
