package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.studio.shelf.NotUnderstood;
import hankbook.studio.shelf.ShelfField;
import hankbook.studio.shelf.ShelfQuestion;
import hankbook.studio.shelf.SoughtSkein;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What is said about a question to the shelf. */
final class ShelfAsking {
  private ShelfAsking() {}

  /** What of it was not understood, or empty. */
  static String faults(ShelfQuestion question) {
    return question.faults().stream().map(ShelfAsking::fault).distinct().collect(Collectors.joining(" "));
  }

  private static String fault(NotUnderstood fault) {
    return switch (fault.wanted()) {
      case AMOUNT -> Say.text("{0}: wanted a length or a mass after it, such as {1} or {2}.", fault.found(), Wording.example(">200 m"), Wording.example("<50 g"));
      case FIELD -> Say.text("{0} names nothing that can be asked for; {1}, {2}, {3} and {4} do.", fault.found(),
          asked(ShelfField.LOT), asked(ShelfField.PLACE), asked(ShelfField.FIBRE), asked(ShelfField.CODE));
    };
  }

  private static String asked(ShelfField field) {
    return ShelfVocabulary.name(field) + ":";
  }

  /** Why nothing answers. */
  static String nothing(ShelfQuestion question, List<SoughtSkein> skeins) {
    ShelfQuestion.Why why = question.whyNone(skeins);
    if (!why.unanswered().isEmpty()) {
      String none = why.unanswered().stream().map(word -> "“" + word + "”").collect(Collectors.joining(", "));
      return Say.count(why.unanswered().size(), "No skein answers to {1}.", "No skein answers to any of {1}.", none);
    }
    List<String> said = new ArrayList<>(List.of(Say.text("No skein answers to all of that at once.")));
    why.without().forEach(without -> said.add(Say.count(without.answers(), "Without “{1}” {0} skein would.", "Without “{1}” {0} skeins would.", without.words())));
    if (why.without().isEmpty()) {
      said.add(Say.text("Take a word or two away."));
    }
    return String.join("\n", said);
  }

  /** How to ask, with examples. */
  static String help() {
    return String.join(
        "\n",
        Say.text("Type words: a skein must answer to all of them. Each may stand anywhere: in yarn, colour, fibre, lot, place, code, form or plan."),
        Say.text("{0} also finds what looks blue, whatever it is called.", Say.text("blue")),
        Say.text("{0} or {1}: so much is free.", Wording.example(">200 m"), Wording.example("<50 g")),
        Say.text("{0}, {1}: only there.", Say.text("lot:7"), Say.text("place:chest")),
        Say.text("opened, new, free, reserved, loom: how it stands."),
        Say.text("{0}: not so. “{1}”: words that belong together.", Say.text("-cotton"), Say.text("left shelf")));
  }
}
