package hankbook.yarn;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** The name of several dye lots together. */
class MixedLotsProperties {
  @Example
  void itNamesEachLotOnce() {
    assertThat(MixedLots.together("K2", "K1")).isEqualTo("K1 + K2");
    assertThat(MixedLots.together("K1 + K2", "K2")).isEqualTo("K1 + K2");
    assertThat(MixedLots.together("", "K1")).isEqualTo("K1 + unknown");
    assertThat(MixedLots.together("", "")).isEmpty();
  }

  @Property(tries = 200)
  void itIsTheSameInWhateverOrderTheyCome(@ForAll("lots") String one, @ForAll("lots") String two, @ForAll("lots") String three) {
    assertThat(MixedLots.together(one, two)).isEqualTo(MixedLots.together(two, one));
    if (!one.equals(two) && !two.equals(three)) {
      assertThat(MixedLots.together(MixedLots.together(one, two), three)).isEqualTo(MixedLots.together(one, MixedLots.together(two, three)));
    }
  }

  @Property(tries = 200)
  void itIsTheNameOfNeitherWhereTheyDiffer(@ForAll("lots") String one, @ForAll("lots") String two) {
    if (!one.equals(two)) {
      assertThat(MixedLots.together(one, two)).isNotIn(one, two);
    }
  }

  @Provide
  Arbitrary<String> lots() {
    return Arbitraries.of("", "K1", "K2", "17", "K-290", "blue chest");
  }
}
