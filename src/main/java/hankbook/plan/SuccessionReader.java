package hankbook.plan;

import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a written order from left to right; a refusal says at which character. */
final class SuccessionReader {
  static final String WANTED = "an order such as 12 x (6 Chalk, 2 Woad), 6 Chalk";
  private static final int LONGEST = 100_000;
  private static final int DEEPEST = 30;
  private static final int SHOWN = 20;
  private static final String WORD_ENDS = "(?![\\p{L}\\d])";
  private static final Pattern COUNT = Pattern.compile("\\d+");
  private static final Pattern TIMES = Pattern.compile("(?:x|×|\\*|times)" + WORD_ENDS, Pattern.CASE_INSENSITIVE);
  private static final Pattern TIMES_AFTER = Pattern.compile("(?:x|×|\\*)(?=\\s*\\d)", Pattern.CASE_INSENSITIVE);
  private static final Pattern AND_BACK = Pattern.compile("and back" + WORD_ENDS, Pattern.CASE_INSENSITIVE);
  private static final Pattern MIRROR = Pattern.compile("(?:(mirror)|there and back)" + WORD_ENDS, Pattern.CASE_INSENSITIVE);

  /** What can come several times: what is in brackets, what comes back, or what comes several times itself. */
  private static final Pattern REPEATED = Pattern.compile("\\(|" + MIRROR.pattern() + "|\\d+\\s*" + TIMES.pattern(), Pattern.CASE_INSENSITIVE);

  private static final Pattern MARK = Pattern.compile("[^,()\"\\p{Cntrl}]+");
  private static final Pattern QUOTED = Pattern.compile("\"((?:[^\"\\p{Cntrl}]|\"\")*)\"");

  /** Signs of arithmetic, with which no mark starts: a count is a whole number. */
  private static final Pattern SIGN = Pattern.compile("[.+/*×-]");

  private final String text;
  private int at;
  private int depth;

  private SuccessionReader(String text) {
    this.text = text;
  }

  static Succession read(String text) {
    if (text.length() > LONGEST) {
      throw new Unreadable(text.substring(0, SHOWN) + "…", Phrase.of("an order of at most {0} characters", LONGEST));
    }
    if (text.isBlank()) {
      throw new Unreadable(text, WANTED);
    }
    SuccessionReader reader = new SuccessionReader(text);
    Succession whole = reader.succession();
    if (reader.at < text.length()) {
      throw reader.wanted(reader.text.charAt(reader.at) == ')' ? "no closing bracket, as none is open," : "a comma");
    }
    return whole;
  }

  private Succession succession() {
    List<SuccessionPart> parts = new ArrayList<>();
    do {
      parts.addAll(part());
    } while (take(','));
    return built(() -> new Succession(parts));
  }

  private List<SuccessionPart> part() {
    skipBlanks();
    Optional<Matcher> mirror = taken(MIRROR);
    if (mirror.isPresent()) {
      Mirror.Turn turn = mirror.get().group(1) == null ? Mirror.Turn.ON_THE_LAST : Mirror.Turn.DOUBLED;
      return after(List.of(new Mirror(group("brackets round what comes there and back,"), turn)));
    }
    if (at < text.length() && text.charAt(at) == '(') {
      return after(group("").parts());
    }
    Optional<Matcher> digits = taken(COUNT);
    if (digits.isEmpty()) {
      return List.of(run(1));
    }
    long count = count(digits.get().group());
    skipBlanks();
    return List.of(taken(TIMES).isPresent() ? repeated(count) : run(count));
  }

  /** What is written behind a closing bracket: how often it comes, or that it comes back. */
  private List<SuccessionPart> after(List<SuccessionPart> group) {
    skipBlanks();
    if (taken(TIMES_AFTER).isPresent()) {
      skipBlanks();
      long times = count(taken(COUNT).orElseThrow().group());
      return after(List.of(built(() -> new Repeat(times, new Succession(group)))));
    }
    return taken(AND_BACK).isPresent() ? after(List.of(new Mirror(new Succession(group), Mirror.Turn.ON_THE_LAST))) : group;
  }

  private Repeat repeated(long times) {
    skipBlanks();
    if (!REPEATED.matcher(text).region(at, text.length()).lookingAt()) {
      throw wanted("brackets round what comes " + times + (times == 1 ? " time," : " times,"));
    }
    List<SuccessionPart> group = part();
    return built(() -> new Repeat(times, new Succession(group)));
  }

  private Succession group(String otherwise) {
    if (++depth > DEEPEST) {
      throw wanted("brackets at most " + DEEPEST + " deep");
    }
    if (!take('(')) {
      throw wanted(otherwise);
    }
    Succession group = succession();
    if (!take(')')) {
      throw wanted("a comma or a closing bracket");
    }
    depth--;
    return group;
  }

  private Run run(long count) {
    Optional<Matcher> quoted = taken(QUOTED);
    if (quoted.isEmpty() && SIGN.matcher(text).region(at, text.length()).lookingAt()) {
      throw wanted("a whole count and a mark such as 6 Chalk");
    }
    String mark = quoted.map(found -> found.group(1).replace("\"\"", "\"")).or(() -> taken(MARK).map(Matcher::group)).orElse("");
    if (mark.isBlank()) {
      throw wanted("a mark such as Chalk");
    }
    return built(() -> new Run(count, mark));
  }

  private long count(String digits) {
    if (digits.length() > Long.toString(Succession.MOST).length() || Long.parseLong(digits) > Succession.MOST || Long.parseLong(digits) < 1) {
      at -= digits.length();
      throw wanted("a count from 1 to " + Succession.MOST);
    }
    return Long.parseLong(digits);
  }

  private boolean take(char sign) {
    skipBlanks();
    if (at < text.length() && text.charAt(at) == sign) {
      at++;
      skipBlanks();
      return true;
    }
    return false;
  }

  private Optional<Matcher> taken(Pattern pattern) {
    Matcher matcher = pattern.matcher(text).region(at, text.length());
    if (!matcher.lookingAt()) {
      return Optional.empty();
    }
    at = matcher.end();
    return Optional.of(matcher);
  }

  private void skipBlanks() {
    while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
      at++;
    }
  }

  /** A refusal of what is built tells a number of its own; near what it stood is told here. */
  private <T> T built(Supplier<T> builder) {
    try {
      return builder.get();
    } catch (Unreadable unreadable) {
      throw wanted(unreadable.wanted() + " before this,");
    }
  }

  private Unreadable wanted(String what) {
    String rest = text.substring(at);
    String found = rest.length() > SHOWN ? rest.substring(0, SHOWN) + "…" : rest;
    return new Unreadable(found, Phrase.of("{0} at character {1} of the order", what, at + 1));
  }
}
