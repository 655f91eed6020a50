package hankbook.desktop;

import hankbook.desktop.say.Language;
import hankbook.desktop.say.Say;
import hankbook.desktop.units.Units;
import java.util.Locale;
import java.util.function.Consumer;

/** In which language and units the window speaks to whoever sits before it. It is remembered on this machine; the ledger, which many share, has none of it. */
final class YouModel {
  private static final String LANGUAGE = "language";
  private static final String UNITS = "units";

  private final Remembered remembered;
  private final Consumer<Runnable> otherwise;

  /** @param otherwise is given the change, makes it once nothing typed would be lost by it, and then says anew what stands in the window */
  YouModel(Remembered remembered, Consumer<Runnable> otherwise) {
    this.remembered = remembered;
    this.otherwise = otherwise;
  }

  /** Lets the window speak as it was left; at first as the system does. */
  static void speakAs(Remembered remembered) {
    Say.in(language(remembered));
    Wording.in(units(remembered));
  }

  private static Language language(Remembered remembered) {
    return remembered.get(LANGUAGE, Language.class).orElseGet(() -> Language.of(Locale.getDefault()));
  }

  private static Units units(Remembered remembered) {
    return remembered.get(UNITS, Units.class).orElseGet(() -> Units.of(Locale.getDefault()));
  }

  Units units() {
    return Wording.units();
  }

  Language language() {
    return Say.language();
  }

  /** Speaks another language as soon as that may be. */
  void speak(Language language) {
    if (language != Say.language()) {
      otherwise.accept(() -> {
        remembered.put(LANGUAGE, language);
        Say.in(language);
      });
    }
  }

  /** Says quantities in other units as soon as that may be. */
  void measure(Units units) {
    if (!units.equals(Wording.units())) {
      otherwise.accept(() -> {
        remembered.put(UNITS, units);
        Wording.in(units);
      });
    }
  }
}
