package hankbook.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.time.Duration;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

class WeavingFileProperties {
  /** Generous on the slowest machine; what it guards against is a reader that never comes back. */
  private static final Duration NEVER_SO_LONG = Duration.ofSeconds(30);

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
      assertTimeoutPreemptively(NEVER_SO_LONG, () -> WeavingFile.read("a.wif", text));
    } catch (RuntimeException fault) {
      throw fault;
    } catch (Exception bad) {
      assertThat(bad).isInstanceOf(BadInput.class);
      assertThat(((BadInput) bad).faults()).hasSizeBetween(1, 21).allSatisfy(fault -> assertThat(fault).startsWith("a.wif").contains(": found ", ", wanted ").doesNotContain("\n"));
    }
  }

  @Property(tries = 100)
  void whatIsWrittenOfThreadsIsWhatIsRead(@ForAll @Size(min = 1, max = 200) List<@IntRange(min = 1, max = 3) Integer> warp) throws BadInput {
    String colours = IntStream.range(0, warp.size()).mapToObj(i -> (i + 1) + "=" + warp.get(i)).collect(Collectors.joining("\n"));
    WeaveDraft draft = WeavingFile.read("a.wif", "[WARP COLORS]\n" + colours + "\n[COLOR TABLE]\n1=1,1,1\n2=2,2,2\n3=3,3,3\n");
    assertThat(draft.warp().colours().stream().map(WeaveColour::number).toList()).isEqualTo(warp);
    assertThat(draft.warp().counts().values().stream().mapToInt(Integer::intValue).sum()).isEqualTo(draft.warp().count());
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
      assertTimeoutPreemptively(NEVER_SO_LONG, () -> WeavingFile.read("a.wif", content));
    } catch (RuntimeException fault) {
      throw fault;
    } catch (Exception bad) {
      assertThat(bad).isInstanceOf(BadInput.class);
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
