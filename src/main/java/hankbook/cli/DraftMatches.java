package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.exchange.WeaveUse;
import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import hankbook.plan.Need.Role;
import hankbook.studio.DraftColour;
import hankbook.studio.DraftPreview;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads which yarns the weaver chose for the colours of a draft: {@code A=Skerry 16/2, Woad}, {@code weft #2f5d8a=Skerry 16/2, Woad}. */
final class DraftMatches {
  private static final Pattern FORM = Pattern.compile("\\s*(?:(warp|weft)\\s+)?([^=]*?)\\s*=\\s*(.*?)\\s*,\\s*([^,]*?)\\s*", Pattern.CASE_INSENSITIVE);
  private static final String WANTED = "a colour of the draft and a yarn with its colour, such as 'A=Skerry 16/2, Woad' or 'weft A=Skerry 16/2, Chalk'";

  private final DraftPreview preview;
  private final List<Skein> shelf;

  DraftMatches(DraftPreview preview, List<Skein> shelf) {
    this.preview = preview;
    this.shelf = shelf;
  }

  /**
   * The choice. What is said of warp or weft alone rules over what is said of a colour wherever it comes.
   *
   * @throws BadInput naming each that cannot be taken
   */
  Map<WeaveUse, YarnColour> read(List<String> matches) throws BadInput {
    Map<WeaveUse, YarnColour> everywhere = new HashMap<>();
    Map<WeaveUse, YarnColour> oneSide = new HashMap<>();
    List<String> faults = new ArrayList<>();
    for (String match : matches) {
      try {
        read(match, everywhere, oneSide);
      } catch (Unreadable unreadable) {
        faults.add("--match '" + match + "': " + unreadable.getMessage());
      }
    }
    if (!faults.isEmpty()) {
      throw new BadInput(faults);
    }
    everywhere.putAll(oneSide);
    return everywhere;
  }

  private void read(String match, Map<WeaveUse, YarnColour> everywhere, Map<WeaveUse, YarnColour> oneSide) {
    Matcher parts = FORM.matcher(match);
    if (!parts.matches()) {
      throw new Unreadable(match, WANTED);
    }
    Optional<Role> side = Optional.ofNullable(parts.group(1)).map(role -> Role.valueOf(role.toUpperCase(Locale.ROOT)));
    DraftColour colour = colour(parts.group(2));
    YarnColour yarn = onShelf(new YarnColour(parts.group(3), parts.group(4)));
    List<WeaveUse> uses =
        preview.uses().stream().filter(use -> use.colour().equals(colour.colour()) && side.filter(role -> role != use.role()).isEmpty()).toList();
    if (uses.isEmpty()) {
      throw new Unreadable(parts.group(1) + " " + parts.group(2), Phrase.of("a colour that comes in the {0}", parts.group(1)));
    }
    for (WeaveUse use : uses) {
      if ((side.isPresent() ? oneSide : everywhere).putIfAbsent(use, yarn) != null) {
        throw new Unreadable(match, "each colour matched once");
      }
    }
  }

  private DraftColour colour(String text) {
    return preview.colours().stream()
        .filter(colour -> colour.mark().equalsIgnoreCase(text) || colour.colour().toString().equalsIgnoreCase(text))
        .findFirst()
        .orElseThrow(() -> new Unreadable(text, Phrase.of("one of the draft's colours, {0}", colours())));
  }

  private String colours() {
    return String.join(", ", preview.colours().stream().map(colour -> colour.mark() + " (" + colour.colour() + ")").toList());
  }

  /** A yarn of the shelf is called as it is there, whatever the case in which it was typed. */
  private YarnColour onShelf(YarnColour typed) {
    List<YarnColour> alike = shelf.stream().map(Skein::yarn).filter(yarn -> alike(yarn, typed)).toList();
    return alike.isEmpty() || alike.contains(typed) ? typed : alike.getFirst();
  }

  private static boolean alike(YarnColour one, YarnColour other) {
    return one.yarn().equalsIgnoreCase(other.yarn()) && one.colour().equalsIgnoreCase(other.colour());
  }
}
