package hankbook.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.measure.Length;
import hankbook.measure.Sett;
import hankbook.yarn.YarnColour;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class ClothPatternTest {
  private static final ClothThread CHALK = new ClothThread(new YarnColour("Skerry 16/2", "Chalk"), 1);
  private static final ClothThread WOAD = new ClothThread(new YarnColour("Skerry 16/2", "Woad"), 1);

  /** In plain weave of Chalk warp and Woad weft every crossing shows the other colour than its neighbours. */
  @Test
  void plainWeaveShowsWarpAndWeftInTurn() {
    ClothPattern cloth = ClothPattern.of(plan(Optional.empty(), weft(WOAD, "1")));
    assertThat(List.of(cloth.at(0, 0), cloth.at(1, 0), cloth.at(0, 1), cloth.at(1, 1))).containsExactly(CHALK, WOAD, WOAD, CHALK);
    assertThat(cloth.pickPerEnd()).isEqualTo(BigFraction.of(10, 8));
    assertThat(cloth.warp().count()).isEqualTo(30);
    assertThat(cloth.weft().orElseThrow().count()).isEqualTo(800);
  }

  @Test
  void aClothWithoutWeftShowsItsWarp() {
    ClothPattern cloth = ClothPattern.of(plan(Optional.empty()));
    assertThat(cloth.weft()).isEmpty();
    assertThat(cloth.at(1, 0)).isEqualTo(CHALK);
    assertThat(cloth.warp().stripes(9)).containsExactly(new Band.Stripe(CHALK, 20), new Band.Stripe(WOAD, 10));
  }

  @Test
  void theWrittenPicksRepeatAlongTheCloth() {
    Band picks = ClothPattern.of(plan(Optional.of("3 Chalk, 2 Woad"), weft(CHALK, "1"), weft(WOAD, "1"))).weft().orElseThrow();
    assertThat(picks.stripes(3)).containsExactly(new Band.Stripe(CHALK, 3), new Band.Stripe(WOAD, 2), new Band.Stripe(CHALK, 3));
    assertThat(picks.at(798)).isEqualTo(WOAD);
    assertThatThrownBy(() -> picks.at(800)).isInstanceOf(IndexOutOfBoundsException.class);
  }

  @Test
  void picksWithoutAnOrderAreOneStretchEach() {
    Band picks = ClothPattern.of(plan(Optional.empty(), weft(CHALK, "0.75"), weft(WOAD, "0.25"))).weft().orElseThrow();
    assertThat(picks.stripes(9)).containsExactly(new Band.Stripe(CHALK, 600), new Band.Stripe(WOAD, 200));
  }

  @Test
  void theLastStripeEndsWithTheBand() {
    Band band = new Band(Succession.parse("3 a, 2 b"), Map.of("a", CHALK, "b", WOAD), 9);
    assertThat(band.stripes(9))
        .containsExactly(new Band.Stripe(CHALK, 3), new Band.Stripe(WOAD, 2), new Band.Stripe(CHALK, 3), new Band.Stripe(WOAD, 1));
  }

  @Test
  void aHugeBandIsSampledAtEvenDistances() {
    Band band = new Band(Succession.parse("500000000 a, 500000000 b"), Map.of("a", CHALK, "b", WOAD), 1_000_000_000);
    assertThat(band.sample(4)).containsExactly(CHALK, CHALK, WOAD, WOAD);
    assertThat(new Band(Succession.parse("a, b"), Map.of("a", CHALK, "b", WOAD), 3).sample(10)).containsExactly(CHALK, WOAD, CHALK);
    assertThat(new Band(Succession.parse("a"), Map.of("a", CHALK), 0).stripes(3)).isEmpty();
  }

  private static Weft weft(ClothThread thread, String share) {
    BigFraction part = hankbook.measure.Exact.of(new java.math.BigDecimal(share));
    return new Weft(thread.yarn(), Sett.perCentimetre(8), part, 1, BigFraction.ONE, Optional.of(Length.metres(1)));
  }

  private static Plan plan(Optional<String> picks, Weft... wefts) {
    List<OrderEntry> order = List.of(new OrderEntry(CHALK.yarn(), new OrderEntry.Ends(20), 1), new OrderEntry(WOAD.yarn(), new OrderEntry.Ends(10), 1));
    Warp warp = new Warp(Sett.perCentimetre(10), OptionalInt.of(30), Optional.of(Length.metres(1)), 1, 0, order);
    return new Plan("Checks", List.of(), warp, List.of(wefts), picks.map(Succession::parse), Allowances.NONE, 1);
  }
}
