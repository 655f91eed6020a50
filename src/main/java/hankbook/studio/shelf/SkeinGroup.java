package hankbook.studio.shelf;

import hankbook.measure.Length;
import hankbook.studio.ShelfSkein;
import hankbook.yarn.Colour;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The skeins of one yarn in one colour.
 *
 * @param skeins at least one
 */
public record SkeinGroup(List<SoughtSkein> skeins) {
  public SkeinGroup {
    skeins = List.copyOf(skeins);
    if (skeins.isEmpty()) {
      throw new IllegalArgumentException("a group of no skeins");
    }
  }

  /** Skeins by yarn and colour, in the order in which they first come. */
  public static List<SkeinGroup> of(List<SoughtSkein> skeins) {
    Map<YarnColour, List<SoughtSkein>> groups = new LinkedHashMap<>();
    skeins.forEach(skein -> groups.computeIfAbsent(skein.shelf().skein().yarn(), _ -> new ArrayList<>()).add(skein));
    return groups.values().stream().map(SkeinGroup::new).toList();
  }

  /** Which yarn in which colour. */
  public YarnColour yarn() {
    return skeins.getFirst().shelf().skein().yarn();
  }

  /** The first colour that was given of it as {@code #rrggbb}, or empty. */
  public String hex() {
    return first(skein -> skein.skein().hex());
  }

  /** The first fibre that was given of it, or empty. */
  public String fibre() {
    return first(skein -> skein.skein().fibre());
  }

  /** What it looks like. */
  public Optional<Colour> colour() {
    return skeins.stream().flatMap(skein -> skein.colour().stream()).findFirst();
  }

  /** All there is of it in the house. */
  public Length held() {
    return sum(skein -> skein.skein().holds());
  }

  /** What of it is promised to nothing. */
  public Length free() {
    return sum(ShelfSkein::free);
  }

  /** What of it is set aside for plans. */
  public Length reserved() {
    return sum(ShelfSkein::allReserved);
  }

  /** What of it is on looms. */
  public Length onLoom() {
    return sum(ShelfSkein::allOnLoom);
  }

  /** Its lots in order; skeins without one count as none. */
  public List<String> lots() {
    return skeins.stream().map(skein -> skein.shelf().skein().lot()).filter(lot -> !lot.isEmpty()).distinct().sorted().toList();
  }

  /** How many of its skeins are opened. */
  public long opened() {
    return skeins.stream().filter(skein -> skein.shelf().skein().opened()).count();
  }

  private String first(Function<ShelfSkein, String> said) {
    return skeins.stream().map(skein -> said.apply(skein.shelf())).filter(it -> !it.isEmpty()).findFirst().orElse("");
  }

  private Length sum(Function<ShelfSkein, Length> of) {
    return skeins.stream().map(skein -> of.apply(skein.shelf())).collect(Collectors.reducing(Length.ZERO, Length::plus));
  }
}
