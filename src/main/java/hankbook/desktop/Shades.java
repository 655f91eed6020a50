package hankbook.desktop;

import hankbook.plan.Band;
import hankbook.plan.ClothThread;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import javafx.scene.paint.Color;

/**
 * A band of threads seen from so far that several fall on one point: the light of each point, and which part of it is of threads whose
 * colour nobody told. However long the band is, the work is bounded: a band of very many stripes is looked at here and there.
 */
final class Shades {
  private static final int MOST_STRIPES = 5_000;
  private static final int LOOKS = 4;
  private static final int HATCH = 3;
  private static final Light PALE = Light.of(Color.web("#d8d8d8"));
  private static final Light DARK = Light.of(Color.web("#8a8a8a"));

  private final List<Light> known;
  private final List<Double> unknown;

  private Shades(List<Light> known, List<Double> unknown) {
    this.known = known;
    this.unknown = unknown;
  }

  /** A band over so many points. */
  static Shades of(Band band, int points, YarnPalette palette) {
    List<Light> known = new ArrayList<>(Collections.nCopies(points, Light.NONE));
    List<Double> unknown = new ArrayList<>(Collections.nCopies(points, 0.0));
    List<Band.Stripe> stripes = stripes(band, points);
    double scale = (double) points / stripes.stream().mapToLong(Band.Stripe::count).sum();
    long before = 0;
    for (Band.Stripe stripe : stripes) {
      Optional<Light> light = palette.colour(stripe.thread().yarn()).map(Light::of);
      double to = (before + stripe.count()) * scale;
      for (int point = (int) (before * scale); point < Math.min(points, to); point++) {
        double part = Math.min(to, point + 1) - Math.max(before * scale, point);
        int at = point;
        light.ifPresentOrElse(it -> known.set(at, known.get(at).plus(it, part)), () -> unknown.set(at, unknown.get(at) + part));
      }
      before += stripe.count();
    }
    return new Shades(known, unknown);
  }

  private static List<Band.Stripe> stripes(Band band, int points) {
    List<Band.Stripe> stripes = band.stripes(MOST_STRIPES);
    if (stripes.stream().mapToLong(Band.Stripe::count).sum() == band.count()) {
      return stripes;
    }
    List<ClothThread> seen = band.sample(LOOKS * points);
    return seen.stream().map(thread -> new Band.Stripe(thread, 1)).toList();
  }

  int points() {
    return known.size();
  }

  /** A point as a pixel of a picture, where what is not known is hatched. */
  int argb(int point, int x, int y) {
    return known.get(point).plus(hatch(x, y), unknown.get(point)).argb();
  }

  /** Where a point of one band crosses a point of another in plain weave, each shows one half. */
  int argb(int point, Shades other, int crossing, int x, int y) {
    return Light.NONE.plus(known.get(point), 0.5).plus(other.known.get(crossing), 0.5)
        .plus(hatch(x, y), (unknown.get(point) + other.unknown.get(crossing)) / 2).argb();
  }

  private static Light hatch(int x, int y) {
    return (x + y) / HATCH % 2 == 0 ? PALE : DARK;
  }
}
