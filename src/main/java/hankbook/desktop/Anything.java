package hankbook.desktop;

import hankbook.cost.Purchase;
import hankbook.desktop.find.Sort;
import hankbook.desktop.find.Thing;
import hankbook.desktop.say.Say;
import hankbook.gear.Loom;
import hankbook.gear.Reed;
import hankbook.studio.Looms;
import hankbook.studio.Plans;
import hankbook.studio.Purchased;
import hankbook.studio.Purchases;
import hankbook.studio.Reeds;
import hankbook.studio.Shelf;
import hankbook.studio.ShelfSkein;
import hankbook.studio.Studio;
import hankbook.yarn.Skein;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * What can be found in a ledger.
 *
 * @param opens ways to skeins, plans and entries
 * @param gear a way to the looms and reeds
 * @param purchase a way to the purchase with a number
 */
record Anything(Studio studio, Opens opens, Runnable gear, Consumer<Integer> purchase) {
  private static final int MOST_DIGITS = 9;

  /** Everything that is kept. */
  List<Thing> kept() {
    List<Thing> all = new ArrayList<>();
    new Shelf(studio).everySkein().forEach(skein -> all.add(skein(skein)));
    new Plans(studio).names().forEach(name -> all.add(Thing.of(Sort.PLAN, name, "", () -> opens.plan().accept(name))));
    new Looms(studio).all().forEach(loom -> all.add(loom(loom)));
    new Reeds(studio).all().forEach(reed -> all.add(reed(reed)));
    new Purchases(studio).all().forEach(purchased -> all.add(purchase(purchased)));
    return all;
  }

  /** The entry whose number was typed. */
  List<Thing> named(String typed) {
    if (typed.length() > MOST_DIGITS || !typed.chars().allMatch(Character::isDigit) || typed.chars().allMatch(digit -> digit == '0')) {
      return List.of();
    }
    long number = Long.parseLong(typed);
    return List.of(new Thing(Sort.ENTRY, Say.text("Entry {0}", number), Say.text("in the journal"), typed, 0, () -> opens.entry().accept(number)));
  }

  private Thing skein(ShelfSkein shelf) {
    Skein skein = shelf.skein();
    String free = shelf.isUsedUp() ? Say.text("used up") : Say.text("{0} free", Wording.yarn(shelf.free()));
    String more = String.join(" ", skein.lot(), skein.location(), skein.fibre());
    long came = skein.received().map(date -> date.toEpochDay()).orElse(0L) - (shelf.isUsedUp() ? 1_000_000 : 0);
    return new Thing(Sort.SKEIN, skein.code(), Say.text("{0}, {1}", skein.yarn(), free), more, came, () -> opens.skein().accept(skein.code()));
  }

  private Thing loom(Loom loom) {
    return Thing.of(Sort.GEAR, loom.name(), Say.text("loom, {0} wide", Wording.cloth(loom.width())), gear);
  }

  private Thing reed(Reed reed) {
    return Thing.of(Sort.GEAR, reed.name(), Say.text("reed"), gear);
  }

  private Thing purchase(Purchased purchased) {
    int number = purchased.kept().number();
    Purchase paid = purchased.kept().landed().purchase();
    String detail = paid.from().isEmpty() ? paid.date().toString() : paid.from() + ", " + paid.date();
    return new Thing(Sort.PURCHASE, Say.text("Purchase {0}", number), detail, String.join(" ", paid.skeins()), number, () -> purchase.accept(number));
  }
}
