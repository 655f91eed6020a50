package hankbook.studio.shelf;

import hankbook.exchange.BadInput;
import hankbook.exchange.StockFile;
import hankbook.measure.Length;
import hankbook.studio.ShelfSkein;
import hankbook.yarn.Skein;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** The sample studio's shelf, of which every fifth skein is reserved and every seventh on a loom. */
final class Shelves {
  private Shelves() {}

  static final List<SoughtSkein> SAMPLE = sample();

  private static List<SoughtSkein> sample() {
    try {
      return StockFile.read("stock.csv", Files.readString(Path.of("imports/stock.csv"))).stream().map(Shelves::kept).map(SoughtSkein::of).toList();
    } catch (BadInput | IOException broken) {
      throw new IllegalStateException(broken);
    }
  }

  private static ShelfSkein kept(Skein skein) {
    int number = Integer.parseInt(skein.code().substring(1));
    Length half = new Length(skein.holds().tenthsOfMillimetre() / 2);
    boolean reserved = number % 5 == 0 && half.isPositive();
    boolean onLoom = number % 7 == 0 && half.isPositive();
    Length free = reserved || onLoom ? skein.holds().minus(half) : skein.holds();
    return new ShelfSkein(
        skein, free, reserved ? Map.of("Quay towels", half) : Map.of(), onLoom && !reserved ? Map.of("Ash blanket", half) : Map.of());
  }
}
