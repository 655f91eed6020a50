package hankbook.yarn;

import hankbook.measure.Unreadable;
import java.util.Arrays;
import java.util.Locale;

/** How a skein's yarn is put up. */
public enum PackageForm {
  SKEIN,
  CONE,
  BALL,
  SPOOL;

  /**
   * Reads skein, cone, ball or spool.
   *
   * @throws Unreadable if it is none of these
   */
  public static PackageForm parse(String text) {
    return Arrays.stream(values())
        .filter(form -> form.toString().equals(text.strip().toLowerCase(Locale.ROOT)))
        .findFirst()
        .orElseThrow(() -> new Unreadable(text, "skein, cone, ball or spool"));
  }

  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }
}
