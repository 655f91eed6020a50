package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.yarn.Skein;

/** What sort of package a skein is, in words. */
final class SkeinWords {
  private SkeinWords() {}

  static String sort(Skein skein) {
    String form = Say.known(skein.form().toString());
    String begun = skein.opened() ? Say.text("{0}, opened", form) : form;
    return skein.lot().isEmpty() ? begun : Say.text("{0}, lot {1}", begun, skein.lot());
  }
}
