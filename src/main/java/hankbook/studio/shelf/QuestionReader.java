package hankbook.studio.shelf;

import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.Unreadable;
import hankbook.yarn.Tint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Reads a question, piece by piece. */
final class QuestionReader {
  private static final Pattern SIGNED = Pattern.compile("(>=|<=|≥|≤|>|<)(.*)");
  private static final Pattern NUMBER = Pattern.compile("[0-9.]+");

  /** What can follow the beginning of a number: three more digits, or its unit. */
  private static final Pattern FOLLOWS = Pattern.compile("\\d{3}(?!\\d).*|\\p{L}+");

  private final ShelfWords words;
  private final List<Piece> pieces;
  private final List<Clause> clauses = new ArrayList<>();
  private final List<NotUnderstood> faults = new ArrayList<>();
  private int at;

  QuestionReader(String question, ShelfWords words) {
    this.words = words;
    pieces = Piece.of(question);
  }

  ShelfQuestion read() {
    while (at < pieces.size()) {
      int start = at;
      Piece piece = pieces.get(at);
      boolean not = !piece.isQuoted() && piece.text().startsWith("-");
      Piece said = not ? piece.from(1) : piece;
      at++;
      if (!said.text().isBlank()) {
        Optional<Predicate<SoughtSkein>> holds = holds(said);
        String typed = pieces.subList(start, at).stream().map(Piece::typed).collect(Collectors.joining(" "));
        holds.ifPresent(it -> clauses.add(new Clause(typed, not ? it.negate() : it)));
      }
    }
    return new ShelfQuestion(clauses, faults);
  }

  /** What a piece asks; empty where it asks nothing yet or was not understood. */
  private Optional<Predicate<SoughtSkein>> holds(Piece said) {
    Matcher signed = SIGNED.matcher(said.text());
    if (said.isPlain() && signed.matches()) {
      return amount(Optional.ofNullable(words.signs().get(signed.group(1))).orElseThrow(), signed.group(2), said.text());
    }
    int colon = said.text().indexOf(':');
    if (colon > 0 && colon < said.plainTo()) {
      return field(said.text().substring(0, colon), Folded.of(said.text().substring(colon + 1)));
    }
    return Optional.of(said.isPlain() ? phrase(said) : text(Folded.of(said.text())));
  }

  private Optional<Predicate<SoughtSkein>> field(String name, String value) {
    ShelfField field = words.fields().get(Folded.of(name));
    if (field == null) {
      faults.add(new NotUnderstood(name + ":", NotUnderstood.Wanted.FIELD));
      return Optional.empty();
    }
    if (value.isBlank()) {
      return Optional.empty();
    }
    Set<Tint> tints = field == ShelfField.COLOUR ? words.tintsOf(value) : Set.of();
    Set<String> same = words.sameAs(value);
    return Optional.of(skein -> stands(field, skein.folded(field), value) || same.stream().anyMatch(other -> Folded.startsWordIn(skein.folded(field), other)) || skein.tints().stream().anyMatch(tints::contains));
  }

  /** Lot 7 is not lot 70. */
  private static boolean stands(ShelfField field, String text, String value) {
    return field == ShelfField.LOT ? Folded.isWordIn(text, value) : Folded.startsWordIn(text, value);
  }

  private static Predicate<SoughtSkein> text(String sought) {
    return skein -> Folded.startsWordIn(skein.open(), sought);
  }

  /** One word, or several that mean something together. */
  private Predicate<SoughtSkein> phrase(Piece said) {
    for (int more = ShelfWords.LONGEST - 1; more >= 0; more--) {
      Optional<String> phrase = joined(said, more, " ");
      Optional<Sign> sign = phrase.map(words.signs()::get);
      Optional<ShelfState> state = phrase.map(words.states()::get).filter(_ -> phrase.get().contains(" "));
      if (sign.isPresent() || state.isPresent()) {
        at += more;
        Optional<Predicate<SoughtSkein>> asked = sign.flatMap(it -> measured(it, "")).or(() -> state.map(it -> skein -> it.holdsOf(skein.shelf())));
        if (asked.isPresent()) {
          return asked.get();
        }
        at -= more;
      }
    }
    return word(Folded.of(said.text()));
  }

  private Predicate<SoughtSkein> word(String word) {
    Set<Tint> tints = words.tintsOf(word);
    Set<ShelfState> states = words.statesOf(word);
    Set<String> same = words.sameAs(word);
    return text(word)
        .or(skein -> skein.tints().stream().anyMatch(tints::contains))
        .or(skein -> states.stream().anyMatch(state -> state.holdsOf(skein.shelf())))
        .or(skein -> same.stream().anyMatch(other -> Folded.startsWordIn(skein.open(), other)));
  }

  /** A text and so many pieces after it; empty where there are not so many plain ones. */
  private Optional<String> joined(Piece said, int more, String between) {
    if (at + more > pieces.size() || !pieces.subList(at, at + more).stream().allMatch(Piece::isPlain)) {
      return Optional.empty();
    }
    StringBuilder joined = new StringBuilder(Folded.of(said.text()));
    pieces.subList(at, at + more).forEach(piece -> joined.append(between).append(Folded.of(piece.text())));
    return Optional.of(joined.toString());
  }

  private Optional<Predicate<SoughtSkein>> amount(Sign sign, String after, String typed) {
    Optional<Predicate<SoughtSkein>> asked = measured(sign, after);
    if (asked.isEmpty()) {
      faults.add(new NotUnderstood(typed, NotUnderstood.Wanted.AMOUNT));
    }
    return asked;
  }

  /** An amount that begins in one piece and may go on in the next two, as {@code 1 000 m} does. */
  private Optional<Predicate<SoughtSkein>> measured(Sign sign, String begun) {
    for (int more = ShelfWords.LONGEST; more >= 0; more--) {
      boolean follow = follow(begun.isEmpty() ? 1 : 0, more);
      Optional<Predicate<SoughtSkein>> asked = follow ? joined(new Piece(begun, begun.length(), begun), more, "").flatMap(text -> measure(sign, text)) : Optional.empty();
      if (asked.isPresent()) {
        at += more;
        return asked;
      }
    }
    return Optional.empty();
  }

  /** Whether so many pieces from here can be the rest of a number that has begun. */
  private boolean follow(int from, int more) {
    return at + more <= pieces.size() && (from >= more || pieces.subList(at + from, at + more).stream().allMatch(piece -> FOLLOWS.matcher(piece.text()).matches()));
  }

  private Optional<Predicate<SoughtSkein>> measure(Sign sign, String typed) {
    String text = typed.replace(words.mark(), '.');
    String amount = NUMBER.matcher(text).matches() ? text + words.unit().symbol() : text;
    return read(amount, Length::parse).<Predicate<SoughtSkein>>map(length -> skein -> skein.shelf().skein().isMeasured() && sign.holds(skein.shelf().free().compareTo(length)))
        .or(() -> read(amount, Mass::parse).map(mass -> skein -> skein.mass().filter(it -> sign.holds(it.compareTo(mass))).isPresent()));
  }

  private static <T> Optional<T> read(String text, Function<String, T> parse) {
    try {
      return Optional.of(parse.apply(text));
    } catch (Unreadable | ArithmeticException _) {
      return Optional.empty();
    }
  }
}
