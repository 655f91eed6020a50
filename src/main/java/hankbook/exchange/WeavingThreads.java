package hankbook.exchange;

import hankbook.measure.Unreadable;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.Stream;

/** Reads one side of a weaving file: how many threads there are, and what each of them is. */
final class WeavingThreads {
  /** Many times what any loom holds, and few enough for any machine. */
  static final int MOST = 100_000;

  private final WeavingSections sections;
  private final WeavingFaults faults;
  private final WeavingSide side;
  private final int count;

  WeavingThreads(WeavingSections sections, WeavingFaults faults, WeavingSide side) {
    this.sections = sections;
    this.faults = faults;
    this.side = side;
    this.count = counted();
  }

  int count() {
    return count;
  }

  WeaveThreads read(WeavingColours colours) {
    WeaveColour rest = sections.line(side.section(), "color").flatMap(line -> faults.read(line, colours::named)).orElse(WeaveColour.NONE);
    List<WeaveColour> threads = new ArrayList<>(Collections.nCopies(count, rest));
    each(side.colours(), colours::named, (thread, colour) -> threads.set(thread - 1, colour));
    Map<Integer, BigDecimal> spacing = new TreeMap<>();
    each(side.spacing(), WeavingNumber::decimal, spacing::put);
    each(side.thickness(), WeavingNumber::decimal, (_, _) -> {});
    return new WeaveThreads(threads, new WeavingSpacing(sections, faults, side).sett(count, spacing));
  }

  /** Reads what a section says of each thread; one of which it says nothing is passed over. */
  <T> void each(String section, Function<String, T> reader, BiConsumer<Integer, T> taker) {
    for (WeavingLine line : sections.lines(section)) {
      Optional<Integer> thread = faults.readKey(line, this::thread);
      if (thread.isPresent() && !line.value().isEmpty()) {
        faults.read(line, reader).ifPresent(value -> taker.accept(thread.get(), value));
      }
    }
  }

  private int thread(String key) {
    return WeavingNumber.whole(key, 1, count, side.thread());
  }

  /** What the side says of itself; else as many as its sections have. */
  private int counted() {
    Optional<WeavingLine> said = sections.line(side.section(), "threads");
    if (said.isPresent()) {
      return faults.read(said.get(), text -> WeavingNumber.whole(text, 0, MOST, "how many threads there are,")).orElse(MOST);
    }
    return Stream.concat(side.courses().stream(), Stream.of(side.colours(), side.spacing(), side.thickness()))
        .flatMap(section -> sections.lines(section).stream())
        .mapToInt(WeavingThreads::likely)
        .max()
        .orElse(0);
  }

  private static int likely(WeavingLine line) {
    try {
      return WeavingNumber.whole(line.key(), 1, MOST, "");
    } catch (Unreadable toBeToldLater) {
      return 0;
    }
  }
}
