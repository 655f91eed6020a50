package hankbook.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.measure.Sett;
import hankbook.plan.Need.Role;
import hankbook.plan.OrderEntry;
import hankbook.plan.Plan;
import hankbook.plan.Warp;
import hankbook.plan.WarpOrder;
import hankbook.yarn.YarnColour;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

class WeavingFileProperties {
  /** Two of a name of colour, one that cannot be written without quotes, and one that is chosen twice. */
  private static final List<YarnColour> YARNS =
      List.of(new YarnColour("Skerry 16/2", "Chalk"), new YarnColour("Loft", "Chalk"), new YarnColour("Loft", "2 x (Grey, light)"), new YarnColour("Skerry 16/2", "Chalk"));

  private static final DraftRow PIECE = DraftRow.BLANK.with("length", "1 m").with("width", "1 m");

  @Property(tries = 500)
  void bytesOfAnyKindAreReadOrRefused(@ForAll @Size(max = 2000) byte[] content) {
    assertReadOrRefused(content);
  }

  @Property(tries = 1000)
  void aDraftInWhichAnyBytesWereChangedIsReadOrRefused(@ForAll("edited") byte[] content) {
    assertReadOrRefused(content);
  }

  @Property(tries = 500)
  void linesOfAnyKindAreReadOrRefused(@ForAll("lines") String text) {
    try {
      WeavingFile.read("a.wif", text);
    } catch (BadInput bad) {
      assertThat(bad.faults()).hasSizeBetween(1, 21).allSatisfy(fault -> assertThat(fault).startsWith("a.wif").contains(": found ", ", wanted ").doesNotContain("\n"));
    }
  }

  @Property(tries = 100)
  void whatIsWrittenOfThreadsIsWhatIsRead(@ForAll @Size(min = 1, max = 200) List<@IntRange(min = 1, max = 3) Integer> warp) throws BadInput {
    String colours = IntStream.range(0, warp.size()).mapToObj(i -> (i + 1) + "=" + warp.get(i)).collect(Collectors.joining("\n"));
    WeaveDraft draft = WeavingFile.read("a.wif", "[WARP COLORS]\n" + colours + "\n[COLOR TABLE]\n1=1,1,1\n2=2,2,2\n3=3,3,3\n");
    assertThat(draft.warp().colours().stream().map(WeaveColour::number).toList()).isEqualTo(warp);
    assertThat(draft.warp().counts().values().stream().mapToInt(Integer::intValue).sum()).isEqualTo(draft.warp().count());
  }

  @Property(tries = 200)
  void thePlanOfADraftHasItsThreadsInItsOrder(@ForAll @Size(min = 1, max = 120) List<@IntRange(min = 1, max = 4) Integer> warp, @ForAll @Size(min = 1, max = 40) List<@IntRange(min = 1, max = 4) Integer> weft)
      throws BadInput {
    Map<WeaveUse, YarnColour> yarns = new HashMap<>();
    Stream.of(Role.values()).forEach(role -> IntStream.rangeClosed(1, 4).forEach(number -> yarns.put(new WeaveUse(role, colour(number)), YARNS.get(number - 1))));
    WeaveShafts noLoom = new WeaveShafts(0, 0, true, false, 0, new TreeMap<>());
    WeaveDraft draft = new WeaveDraft("", threads(warp), threads(weft), noLoom, List.of());
    Plan plan = PlanFile.read("plan.json", WeavePlan.of(draft, "Any", yarns).withRow(PlanPart.PIECES, PIECE).json());
    assertThat(ends(plan.warp())).isEqualTo(warp.stream().map(number -> YARNS.get(number - 1)).toList());
    assertThat(WarpOrder.ends(plan.warp(), warp.size()).stream().mapToLong(Long::longValue).sum()).isEqualTo(warp.size());
    plan.weftSuccession().ifPresent(order -> assertThat(order.threads()).isEqualTo(weft.size()));
  }

  private static List<YarnColour> ends(Warp warp) {
    if (warp.succession().isEmpty()) {
      return Collections.nCopies(warp.ends().orElseThrow(), warp.order().getFirst().yarn());
    }
    Map<String, YarnColour> byMark = warp.order().stream().collect(Collectors.toMap(OrderEntry::mark, OrderEntry::yarn));
    return warp.succession().get().runs(Integer.MAX_VALUE).stream().flatMap(run -> Collections.nCopies((int) run.count(), byMark.get(run.mark())).stream()).toList();
  }

  private static WeaveThreads threads(List<Integer> numbers) {
    return new WeaveThreads(numbers.stream().map(WeavingFileProperties::colour).toList(), Optional.of(Sett.perCentimetre(10)));
  }

  private static WeaveColour colour(int number) {
    return new WeaveColour(number, "#00000" + number);
  }

  @Provide
  Arbitrary<byte[]> edited() {
    byte[] draft = twillStripes();
    Arbitrary<int[]> edit = Arbitraries.integers().between(0, draft.length - 1).flatMap(at -> Arbitraries.oneOf(
        Arbitraries.integers().between(0, 255), Arbitraries.of((int) '=', (int) '[', (int) ']', (int) ';', (int) ',', (int) '\n', (int) '9')).map(value -> new int[] {at, value}));
    return edit.list().ofMinSize(1).ofMaxSize(8).map(edits -> {
      byte[] changed = draft.clone();
      edits.forEach(each -> changed[each[0]] = (byte) each[1]);
      return changed;
    });
  }

  @Provide
  Arbitrary<String> lines() {
    Arbitrary<String> heads = Arbitraries.of("WIF", "WEAVING", "WARP", "WEFT", "COLOR PALETTE", "COLOR TABLE", "WARP COLORS", "WEFT SPACING", "THREADING", "LIFTPLAN", "TIEUP", "TEXT", "else")
        .map(name -> "[" + name + "]");
    Arbitrary<String> keys = Arbitraries.of("1", "2", "03", "7", "threads", "Color", "spacing", "units", "Range", "Entries", "shafts", "title", "", "99999999999");
    Arbitrary<String> values = Arbitraries.oneOf(
        Arbitraries.of("1", "0", "-1", "1,2", "0,255", "1,2,3", "Inches", "0.1", ".", ",", "", "true", "; remark", "999999999", "0.0000000000000000000000000000001"), Arbitraries.strings().ofMaxLength(8));
    Arbitrary<String> entries = Combinators.combine(keys, values).as((key, value) -> key + "=" + value);
    return Arbitraries.oneOf(heads, entries, entries, entries).list().ofMaxSize(30).map(lines -> String.join("\n", lines));
  }

  private static void assertReadOrRefused(byte[] content) {
    try {
      WeavingFile.read("a.wif", content);
    } catch (BadInput bad) {
      assertThat(bad.faults()).isNotEmpty();
    }
  }

  private static byte[] twillStripes() {
    try {
      return Files.readAllBytes(WeavingFileTest.path("twill-stripes.wif"));
    } catch (IOException missing) {
      throw new UncheckedIOException(missing);
    }
  }
}
