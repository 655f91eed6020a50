package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.geometry.Rectangle2D;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class WindowPlaceTest {
  private static final Rectangle2D MAIN = new Rectangle2D(0, 24, 1920, 1056);
  private static final Rectangle2D LEFT = new Rectangle2D(-1280, 0, 1280, 1024);

  @Test
  void aWindowThatCanBeTakenHoldOfStaysEvenAcrossTwoScreens() {
    WindowPlace across = new WindowPlace(-300, 60, 1200, 800, false);
    assertThat(across.onto(List.of(MAIN, LEFT))).isEqualTo(across);
    WindowPlace halfOut = new WindowPlace(1500, 500, 1200, 800, true);
    assertThat(halfOut.onto(List.of(MAIN))).isEqualTo(halfOut);
  }

  @Test
  void aWindowOnAScreenThatIsGoneIsBroughtBackInItsSize() {
    assertThat(new WindowPlace(-1200, 100, 1000, 700, true).onto(List.of(MAIN))).isEqualTo(new WindowPlace(0, 100, 1000, 700, true));
    assertThat(new WindowPlace(5000, 4000, 1000, 700, false).onto(List.of(MAIN, LEFT))).isEqualTo(new WindowPlace(920, 380, 1000, 700, false));
  }

  @Test
  void aWindowLargerThanTheScreensIsMadeSmaller() {
    assertThat(new WindowPlace(0, 30, 2560, 1400, false).onto(List.of(MAIN))).isEqualTo(new WindowPlace(0, 24, 1920, 1056, false));
  }

  @Test
  void aTitleAboveOrBelowTheScreenIsBroughtBack() {
    assertThat(new WindowPlace(100, -200, 1000, 700, false).onto(List.of(MAIN)).y()).isEqualTo(24);
    assertThat(new WindowPlace(100, 1070, 1000, 700, false).onto(List.of(MAIN)).y()).isEqualTo(380);
  }

  @Property(seed = "2026")
  void whereverItStoodItsTitleCanBeReached(
      @ForAll int x, @ForAll int y, @ForAll @IntRange(min = 1) int width, @ForAll @IntRange(min = 1) int height) {
    WindowPlace place = new WindowPlace(x, y, width, height, false).onto(List.of(MAIN, LEFT));
    assertThat(List.of(MAIN, LEFT)).anyMatch(screen ->
        place.y() >= screen.getMinY() && place.y() + Math.min(place.height(), 30) <= screen.getMaxY()
            && Math.min((double) place.x() + place.width(), screen.getMaxX()) - Math.max(place.x(), screen.getMinX()) >= Math.min(place.width(), 100));
    assertThat(place.onto(List.of(MAIN, LEFT))).isEqualTo(place);
  }
}
