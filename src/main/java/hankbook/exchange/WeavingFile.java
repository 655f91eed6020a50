package hankbook.exchange;

import hankbook.measure.Unreadable;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Reads a draft in the open Weaving Information File 1.1 interchange format: sections of keys and values. What it says of yarn and loom is
 * taken; what is only for the eye is passed over. Written from memory of the open specification.
 */
public final class WeavingFile {
  /** More than a draft of the most threads takes. */
  public static final int MOST_BYTES = 8 << 20;

  /** Far more than anyone keeps; for each of them the shelf is searched. */
  private static final int MOST_COLOURS = 1000;

  private static final int LONGEST_TITLE = 200;
  private static final String WANTED = "a weaving information file";

  private WeavingFile() {}

  /**
   * Reads the bytes of a weaving file, in UTF-8 or else in ISO 8859-1.
   *
   * @param file its name, for messages
   * @throws BadInput naming section and line of each fault, of at most the first few
   */
  public static WeaveDraft read(String file, byte[] content) throws BadInput {
    if (content.length > MOST_BYTES) {
      throw new BadInput(file + ": found more than " + (MOST_BYTES >> 20) + " MiB, wanted " + WANTED + " of at most as much");
    }
    try {
      return read(file, StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(content)).toString());
    } catch (CharacterCodingException notUnicode) {
      return read(file, new String(content, StandardCharsets.ISO_8859_1));
    }
  }

  /**
   * Reads the text of a weaving file.
   *
   * @param file its name, for messages
   * @throws BadInput naming section and line of each fault, of at most the first few
   */
  public static WeaveDraft read(String file, String text) throws BadInput {
    if (text.indexOf('\0') >= 0) {
      throw new BadInput(file + ": found bytes that are no text, wanted " + WANTED + " in UTF-8 or ISO 8859-1");
    }
    WeavingFaults faults = new WeavingFaults(file);
    WeavingSections sections = WeavingSections.of(text.startsWith("\uFEFF") ? text.substring(1) : text, faults);
    faults.refuse();
    if (sections.isEmpty()) {
      throw new BadInput(file + ": found no section that says anything of a draft, wanted " + WANTED + " with [WARP], [WEFT] and [THREADING]");
    }
    sections.line("wif", "version").ifPresent(line -> faults.read(line, WeavingFile::version));
    WeaveDraft draft = draft(sections, faults);
    faults.refuse();
    return draft;
  }

  private static WeaveDraft draft(WeavingSections sections, WeavingFaults faults) {
    WeavingColours colours = WeavingColours.of(sections, faults);
    WeavingThreads ends = new WeavingThreads(sections, faults, WeavingSide.WARP);
    WeavingThreads picks = new WeavingThreads(sections, faults, WeavingSide.WEFT);
    if (ends.count() == 0) {
      faults.add(0, "[WARP]", "", "at least one end, in Threads or in [THREADING]");
    }
    WeaveThreads warp = ends.read(colours);
    WeaveThreads weft = picks.read(colours);
    checkColours(warp, weft, faults);
    WeaveShafts shafts = WeavingShafts.read(sections, ends, picks, faults);
    String title = sections.line("text", "title").map(line -> title(line.value())).orElse("");
    return new WeaveDraft(title, warp, weft, shafts, notes(colours, warp, weft, shafts));
  }

  private static void checkColours(WeaveThreads warp, WeaveThreads weft, WeavingFaults faults) {
    Set<WeaveColour> used = new HashSet<>(warp.colours());
    used.addAll(weft.colours());
    if (used.size() > MOST_COLOURS) {
      faults.add(0, "[WARP COLORS] and [WEFT COLORS]", used.size() + " colours in use", "at most " + MOST_COLOURS);
    }
  }

  private static List<String> notes(WeavingColours colours, WeaveThreads warp, WeaveThreads weft, WeaveShafts shafts) {
    List<String> notes = new ArrayList<>();
    if (weft.count() == 0) {
      notes.add("The file has no picks.");
    }
    if (shafts.unthreaded() > 0 && shafts.unthreaded() < warp.count()) {
      notes.add(shafts.unthreaded() + " of its " + warp.count() + " ends are on no shaft.");
    }
    if (colours.isEmpty()) {
      notes.add("The file does not say what its colours look like.");
    } else {
      colours.guessedRange().ifPresent(range -> notes.add("The file gives no range for its colours; they were read as from 0 to " + range.most() + "."));
    }
    return notes;
  }

  /** A title is no reason to refuse a draft. */
  private static String title(String text) {
    return text.length() > LONGEST_TITLE ? "" : text.replaceAll("\\p{Cntrl}|\\p{Cs}", "").strip();
  }

  private static String version(String text) {
    if (!text.matches("1(\\.[01])?")) {
      throw new Unreadable(text, "1.1");
    }
    return text;
  }
}
