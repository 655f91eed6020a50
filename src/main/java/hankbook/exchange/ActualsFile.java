package hankbook.exchange;

import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import hankbook.reckon.Actuals;
import hankbook.yarn.OneLine;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * An actuals file, format {@code hankbook-actuals/1}: what was found after a cloth was cut off. A blank text counts as nothing said.
 *
 * @param plan whose cloth it was; empty where the file does not say
 * @param actuals what was found
 */
public record ActualsFile(Optional<String> plan, Actuals actuals) {
  static final String FORMAT = "hankbook-actuals/1";
  private static final int LONGEST_NOTE = 10_000;
  private static final Pattern DAY = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");

  /**
   * Reads the text of an actuals file.
   *
   * @param file its name, for messages
   * @throws BadInput naming the file, the field, what was found and what is wanted
   */
  public static ActualsFile read(String file, String text) throws BadInput {
    return JsonFile.read(file, text, "what was found after a cloth", root -> read(new JsonFields(root, "", known())));
  }

  private static Set<String> known() {
    Set<String> known = new HashSet<>(ActualsPart.ACTUALS.known());
    known.add("format");
    for (ActualsPart part : ActualsPart.values()) {
      if (!part.key().isEmpty()) {
        known.add(part.key());
      }
    }
    return known;
  }

  private static ActualsFile read(JsonFields fields) {
    fields.required("format", FORMAT, text -> JsonFile.format(text, FORMAT));
    SaidFields said = new SaidFields(fields);
    Optional<String> plan = said.text("plan", OneLine::of);
    Optional<LocalDate> date = said.text("date", ActualsFile::day);
    String reason = said.text("reason", ActualsFile::note).orElse("");
    String note = said.text("note", ActualsFile::note).orElse("");
    ActualsFields parts = new ActualsFields(fields);
    return fields.built("actuals", () -> new ActualsFile(
        plan,
        new Actuals(date, parts.leftovers(), parts.bundles(ActualsPart.THRUMS), parts.bundles(ActualsPart.SAMPLES), parts.warp(), parts.cloth(), parts.times(), reason, note)));
  }

  private static LocalDate day(String text) {
    try {
      if (DAY.matcher(text.strip()).matches()) {
        return LocalDate.parse(text.strip());
      }
    } catch (DateTimeParseException noSuchDay) {
      // Said below, as for any other text that is no day.
    }
    throw new Unreadable(text, "a day such as 2026-03-14");
  }

  private static String note(String text) {
    String note = text.strip();
    if (note.length() > LONGEST_NOTE || note.codePoints().anyMatch(c -> (Character.isISOControl(c) && c != '\n' && c != '\t') || Character.getType(c) == Character.SURROGATE)) {
      throw new Unreadable(note.substring(0, Math.min(note.length(), 20)).replaceAll("\\p{Cntrl}|\\p{Cs}", "�") + "…", Phrase.of("at most {0} printable characters", LONGEST_NOTE));
    }
    return note;
  }

  /** The text of an actuals file that is read back to the same. */
  public String json() {
    return ActualsRows.draft(this).json();
  }
}
