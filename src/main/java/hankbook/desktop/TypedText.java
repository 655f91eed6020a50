package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.desktop.units.Marks;
import java.util.Set;
import javafx.beans.property.StringProperty;

/**
 * The text of a quantity between a field, where it has the decimal mark of the user's language, and what lies below it, where it has the point of the files. Names,
 * lots, codes and notes do not go this way.
 */
final class TypedText {
  /** The fields of a skein, a loom or a purchase that are for quantities. */
  private static final Set<String> QUANTITIES = Set.of("length", "gross", "tare", "turns", "reel", "regain", "grist", "cost", "width", "waste", "dents", "rate");

  private TypedText() {}

  /** Whether a field of a skein, a loom, a reed or a purchase is for a quantity. */
  static boolean isQuantity(String key) {
    return QUANTITIES.contains(key);
  }

  private static Marks marks() {
    return new Marks(Say.language().decimalMark());
  }

  /** A text as it stands in a field. */
  static String shown(String canonical) {
    return marks().shown(canonical);
  }

  /** What stands in a field as the files have it; where it is no quantity, neither is this. */
  static String canonical(String typed) {
    return marks().canonical(typed);
  }

  /** What is to be said where a text of the files, which was typed so, has the other mark; else empty. */
  static String aboutMark(String canonical) {
    if (!Marks.isOther(canonical)) {
      return "";
    }
    return marks().decimal() == '.' ? Say.text("The decimal mark is a point: 1.5.") : Say.text("The decimal mark is a comma: 1,5.");
  }

  /** Lets a field show a text of the files, and that text follow what is typed. What is typed stays as it is for as long as it means the same. */
  static void bind(StringProperty field, StringProperty canonical) {
    field.set(shown(canonical.get()));
    field.subscribe((_, typed) -> canonical.set(canonical(typed)));
    canonical.subscribe((_, text) -> {
      if (!text.equals(canonical(field.get()))) {
        field.set(shown(text));
      }
    });
  }
}
