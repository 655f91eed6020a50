package hankbook.desktop;

import hankbook.desktop.say.Language;
import hankbook.desktop.say.Say;
import hankbook.desktop.units.Units;
import java.util.Locale;

/** In which language and units the window speaks to whoever sits before it. It is remembered on this machine; the ledger, which many share, has none of it. */
final class YouModel {
  private static final String LANGUAGE = "language";
  private static final String UNITS = "units";

  private final Remembered remembered;
  private final Runnable otherwise;

  /** @param otherwise what follows once the window is to speak otherwise: what stands in it is said anew */
  YouModel(Remembered remembered, Runnable otherwise) {
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

  /** Speaks another language from now on. */
  void speak(Language language) {
    if (language != Say.language()) {
      remembered.put(LANGUAGE, language);
      Say.in(language);
      otherwise.run();
    }
  }

  /** Says quantities in other units from now on. */
  void measure(Units units) {
    if (!units.equals(Wording.units())) {
      remembered.put(UNITS, units);
      Wording.in(units);
      otherwise.run();
    }
  }
}
