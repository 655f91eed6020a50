package hankbook.studio.shelf;

import hankbook.measure.Mass;
import hankbook.studio.ShelfSkein;
import hankbook.yarn.Colour;
import hankbook.yarn.Measurement;
import hankbook.yarn.Skein;
import hankbook.yarn.Tint;
import hankbook.yarn.Weighing;
import java.math.RoundingMode;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A skein made ready to be looked for, so that each keystroke only compares. */
public final class SoughtSkein {
  private final ShelfSkein shelf;
  private final Map<ShelfField, String> texts = new EnumMap<>(ShelfField.class);
  private final String open;
  private final Optional<Colour> colour;
  private final Set<Tint> tints;
  private final Optional<Mass> mass;

  private SoughtSkein(ShelfSkein shelf) {
    this.shelf = shelf;
    Skein skein = shelf.skein();
    for (ShelfField field : ShelfField.values()) {
      texts.put(field, Folded.of(text(field)));
    }
    StringBuilder all = new StringBuilder();
    texts.forEach((field, text) -> all.append(field.isOpen() ? text + "\n" : ""));
    open = all.toString();
    colour = Optional.of(skein.hex()).filter(hex -> !hex.isEmpty()).map(Colour::ofHex);
    tints = colour.map(Tint::of).orElse(Set.of());
    mass = mass(shelf);
  }

  /** Makes a skein ready. */
  public static SoughtSkein of(ShelfSkein shelf) {
    return new SoughtSkein(shelf);
  }

  /** The skein. */
  public ShelfSkein shelf() {
    return shelf;
  }

  /** What it looks like, where that was given. */
  public Optional<Colour> colour() {
    return colour;
  }

  Set<Tint> tints() {
    return tints;
  }

  /** What is free of it weighs; where its grist is not known, what it weighed as a whole. */
  Optional<Mass> mass() {
    return mass;
  }

  String folded(ShelfField field) {
    return texts.getOrDefault(field, "");
  }

  /** All that a word without a name before it is looked for in. */
  String open() {
    return open;
  }

  private static Optional<Mass> mass(ShelfSkein shelf) {
    Skein skein = shelf.skein();
    return skein.isMeasured()
        ? skein.knownGrist().map(grist -> grist.massOf(shelf.free(), RoundingMode.HALF_UP))
        : skein.measures().weighing().map(Weighing::net);
  }

  private String text(ShelfField field) {
    Skein skein = shelf.skein();
    return switch (field) {
      case YARN -> skein.yarn().yarn();
      case COLOUR -> skein.yarn().colour() + "\n" + skein.hex();
      case FIBRE -> skein.fibre();
      case PLACE -> skein.location();
      case CODE -> skein.code();
      case FORM -> skein.form().toString();
      case LOT -> skein.lot();
      case KNOWN -> known(skein.measurement());
      case PLAN -> String.join("\n", shelf.reserved().keySet()) + "\n" + String.join("\n", shelf.onLoom().keySet());
      case GRIST -> skein.grist().map(Object::toString).orElse("");
      case CAME -> skein.received().map(Object::toString).orElse("");
      case COST -> skein.cost().map(paid -> paid.getAmount() + " " + paid.getCurrencyUnit()).orElse("");
    };
  }

  private static String known(Measurement measurement) {
    return switch (measurement) {
      case Measurement.ByWeight weight -> weight.sample().isPresent() ? "weighed by its own grist" : "weighed";
      case Measurement.ByTurns _ -> "turns counted";
      case Measurement.ByLabel _ -> "label";
      case Measurement.Unmeasured _ -> "unmeasured";
    };
  }

  /** What it is made of alone tells two apart. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof SoughtSkein sought && shelf.equals(sought.shelf);
  }

  @Override
  public int hashCode() {
    return shelf.hashCode();
  }
}
