package hankbook.desktop.say;

import java.util.Arrays;
import java.util.Locale;

/** The languages that the window speaks. */
public enum Language {
  ENGLISH("English", "en"),
  GERMAN("Deutsch", "de"),
  SWEDISH("Svenska", "sv");

  private final String ownName;
  private final String code;

  Language(String ownName, String code) {
    this.ownName = ownName;
    this.code = code;
  }

  /** The language of a place; English for one whose language the window does not speak. */
  public static Language of(Locale place) {
    return Arrays.stream(values()).filter(language -> language.code.equals(place.getLanguage())).findFirst().orElse(ENGLISH);
  }

  /** What its speakers call it. */
  public String ownName() {
    return ownName;
  }

  /** Its two letters of ISO 639-1. */
  public String code() {
    return code;
  }

  public Locale locale() {
    return Locale.of(code);
  }

  /** What stands between whole and part of a number: a point or a comma. */
  public char decimalMark() {
    return this == ENGLISH ? '.' : ',';
  }
}
