package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.studio.shelf.ShelfField;
import hankbook.studio.shelf.ShelfState;
import hankbook.studio.shelf.ShelfWords;
import hankbook.studio.shelf.Sign;
import hankbook.yarn.PackageForm;
import hankbook.yarn.Tint;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;

/** The words that questions to the shelf are asked with, in the language of the window; the English ones always hold as well. */
final class ShelfVocabulary {
  private ShelfVocabulary() {}

  /** The words as they are now. */
  static ShelfWords now() {
    Map<String, ShelfField> fields = words(ShelfField.values(), ShelfVocabulary::name);
    Map<String, ShelfState> states = words(ShelfState.values(), ShelfVocabulary::name);
    states.put(Say.text("new"), ShelfState.UNOPENED);
    states.put(Say.text("on the loom"), ShelfState.LOOM);
    Map<String, Sign> signs = words(Sign.values(), ShelfVocabulary::name);
    Map<String, String> same = new HashMap<>();
    Arrays.stream(PackageForm.values()).forEach(form -> same.put(Say.known(form.toString()), form.toString()));
    same.put(Say.text("weighed"), "weighed");
    same.put(Say.text("counted"), "counted");
    same.put(Say.text("label"), "label");
    same.put(Say.text("unmeasured"), "unmeasured");
    return ShelfWords.ENGLISH.and(
        new ShelfWords(fields, states, words(Tint.values(), ShelfVocabulary::name), signs, same, Wording.units().yarn().unit(), Say.language().decimalMark()));
  }

  private static <T> Map<String, T> words(T[] meanings, Function<T, String> name) {
    Map<String, T> words = new HashMap<>();
    Arrays.stream(meanings).forEach(meaning -> words.put(name.apply(meaning), meaning));
    return words;
  }

  /** What is asked for before a colon. */
  static String name(ShelfField field) {
    return switch (field) {
      case YARN -> Say.text("yarn");
      case COLOUR -> Say.text("colour");
      case FIBRE -> Say.text("fibre");
      case PLACE -> Say.text("place");
      case CODE -> Say.text("code");
      case FORM -> Say.text("form");
      case LOT -> Say.text("lot");
      case KNOWN -> Say.text("known");
      case PLAN -> Say.text("plan");
      case GRIST -> Say.text("grist");
      case CAME -> Say.text("came");
      case COST -> Say.text("cost");
    };
  }

  private static String name(ShelfState state) {
    return switch (state) {
      case OPENED -> Say.text("opened");
      case UNOPENED -> Say.text("unopened");
      case FREE -> Say.text("free");
      case RESERVED -> Say.text("reserved");
      case LOOM -> Say.text("loom");
    };
  }

  private static String name(Sign sign) {
    return switch (sign) {
      case OVER -> Say.text("over");
      case UNDER -> Say.text("under");
      case AT_LEAST -> Say.text("at least");
      case AT_MOST -> Say.text("at most");
    };
  }

  private static String name(Tint tint) {
    return switch (tint) {
      case RED -> Say.text("red");
      case ORANGE -> Say.text("orange");
      case YELLOW -> Say.text("yellow");
      case GREEN -> Say.text("green");
      case TURQUOISE -> Say.text("turquoise");
      case BLUE -> Say.text("blue");
      case PURPLE -> Say.text("purple");
      case PINK -> Say.text("pink");
      case BROWN -> Say.text("brown");
      case GREY -> Say.text("grey");
      case BLACK -> Say.text("black");
      case WHITE -> Say.text("white");
    };
  }
}
