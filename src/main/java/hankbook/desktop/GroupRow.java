package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.measure.Length;
import hankbook.studio.shelf.GroupOrder;
import hankbook.studio.shelf.SkeinGroup;
import hankbook.yarn.Colour;
import hankbook.yarn.YarnColour;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;

/** The skeins of one yarn in one colour as the shelf shows them; what is said of them is made once, and only when it is looked at. */
final class GroupRow {
  private final SkeinGroup group;
  private final List<SkeinRow> skeins;
  private final Optional<Colour> picked;
  private final BooleanProperty open = new SimpleBooleanProperty();
  private Optional<Said> said = Optional.empty();

  /** What a row says. */
  private record Said(Amount held, Amount free, Amount reserved, Amount onLoom, String count, String apart) {}

  /** @param picked the colour it is held against */
  GroupRow(SkeinGroup group, List<SkeinRow> skeins, Optional<Colour> picked) {
    this.group = group;
    this.skeins = List.copyOf(skeins);
    this.picked = picked;
  }

  private Said said() {
    if (said.isEmpty()) {
      String apart = picked.map(colour -> GroupOrder.apart(group, colour).map(Object::toString).orElse("–")).orElse("");
      said = Optional.of(new Said(Amount.of(group.held()), Amount.of(group.free()), Amount.of(group.reserved()), Amount.of(group.onLoom()), counted(), apart));
    }
    return said.get();
  }

  private String counted() {
    String many = Say.count(skeins.size(), "{0} skein", "{0} skeins");
    int lots = group.lots().size();
    return lots == 1 ? Say.text("{0}, lot {1}", many, group.lots().getFirst()) : lots == 0 ? many : Say.text("{0}, {1} lots", many, lots);
  }

  YarnColour yarn() {
    return group.yarn();
  }

  String hex() {
    return group.hex();
  }

  List<SkeinRow> skeins() {
    return skeins;
  }

  /** Whether its skeins are shown below it. */
  BooleanProperty openProperty() {
    return open;
  }

  Amount held() {
    return said().held();
  }

  Amount free() {
    return said().free();
  }

  Amount reserved() {
    return said().reserved();
  }

  Amount onLoom() {
    return said().onLoom();
  }

  /** How many skeins and lots it is. */
  String count() {
    return said().count();
  }

  /** How far it looks from the picked colour; empty where none is picked. */
  String apart() {
    return said().apart();
  }

  /** All of it in words. */
  String words() {
    return Say.text("{0}: {1}, {2}", yarn(), Wording.yarn(held().length()), count());
  }

  /** Where its yarn is, in words; what is nothing is not said. */
  static String standing(Length free, Length reserved, Length onLoom) {
    if (reserved.isZero() && onLoom.isZero()) {
      return Say.text("all free");
    }
    if (onLoom.isZero()) {
      return Say.text("{0} free, {1} reserved", Wording.yarn(free), Wording.yarn(reserved));
    }
    return reserved.isZero()
        ? Say.text("{0} free, {1} on the loom", Wording.yarn(free), Wording.yarn(onLoom))
        : Say.text("{0} free, {1} reserved, {2} on the loom", Wording.yarn(free), Wording.yarn(reserved), Wording.yarn(onLoom));
  }
}
