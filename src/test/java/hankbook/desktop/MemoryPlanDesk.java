package hankbook.desktop;

import hankbook.allot.PlanCheck;
import hankbook.allot.Share;
import hankbook.exchange.BadInput;
import hankbook.exchange.PlanFile;
import hankbook.exchange.StockFile;
import hankbook.measure.Length;
import hankbook.measure.Unreadable;
import hankbook.plan.Plan;
import hankbook.studio.NotDone;
import hankbook.studio.ShelfSkein;
import hankbook.yarn.Skein;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;

/** A ledger in memory with the sample studio's shelf, for tests of what the screen makes of a ledger. */
final class MemoryPlanDesk implements PlanDesk {
  final Map<String, String> texts = new TreeMap<>();
  final List<String> done = new ArrayList<>();
  private final Map<String, Map<String, Length>> reserved = new HashMap<>();
  private final Map<String, Map<String, Length>> onLoom = new HashMap<>();
  private final List<Skein> stock;

  MemoryPlanDesk() {
    try {
      stock = StockFile.read("stock.csv", Files.readString(Path.of("imports/stock.csv")));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    } catch (BadInput unreadable) {
      throw new IllegalStateException(unreadable);
    }
  }

  /** With one of the sample plans kept. */
  MemoryPlanDesk with(String name, String file) {
    try {
      texts.put(name, Files.readString(Path.of("imports", file)));
      return this;
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  @Override
  public List<String> names() {
    return List.copyOf(texts.keySet());
  }

  @Override
  public Optional<String> text(String name) {
    return Optional.ofNullable(texts.get(name));
  }

  @Override
  public void keep(String name, String text) {
    texts.put(name, text);
  }

  @Override
  public List<ShelfSkein> skeins() {
    return stock.stream().map(skein -> new ShelfSkein(skein, skein.holds(), of(skein, reserved), of(skein, onLoom))).toList();
  }

  private static Map<String, Length> of(Skein skein, Map<String, Map<String, Length>> where) {
    Map<String, Length> byPlan = new HashMap<>();
    where.forEach((plan, lengths) -> Optional.ofNullable(lengths.get(skein.code())).ifPresent(length -> byPlan.put(plan, length)));
    return byPlan;
  }

  @Override
  public PlanCheck check(Plan plan) throws BadInput {
    try {
      return PlanCheck.of(plan, stock);
    } catch (Unreadable doesNotAddUp) {
      throw new BadInput("plan: " + doesNotAddUp.getMessage());
    }
  }

  @Override
  public void reserve(UUID id, String name, boolean evenIfShort) throws BadInput, NotDone {
    PlanCheck check = check(PlanFile.read(name, text(name).orElseThrow()));
    if (check.isShort() && !evenIfShort) {
      throw new NotDone("A yarn is short.");
    }
    Map<String, Length> lengths = new HashMap<>();
    for (Share share : check.shares()) {
      lengths.merge(share.code(), share.warp().plus(share.weft()), Length::plus);
    }
    reserved.put(name, lengths);
    done.add("reserve " + name);
  }

  @Override
  public void release(UUID id, String name) throws NotDone {
    if (reserved.remove(name) == null) {
      throw new NotDone("Nothing is reserved for " + name + ".");
    }
    done.add("release " + name);
  }

  @Override
  public void draw(UUID id, String name) throws NotDone {
    Map<String, Length> lengths = reserved.remove(name);
    if (lengths == null) {
      throw new NotDone("Nothing is reserved for " + name + ".");
    }
    onLoom.put(name, lengths);
    done.add("draw " + name);
  }
}
