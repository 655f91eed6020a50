package hankbook.exchange;

import hankbook.yarn.Measurement;
import hankbook.yarn.Skein;
import java.util.List;
import java.util.Optional;

/**
 * What one stock row comes to, from a file or from a form.
 *
 * @param measurement how its length is known, as far as its cells can be read
 * @param skein the skein, where no cell is at fault
 * @param faults every bad cell
 */
public record RowReading(Measurement measurement, Optional<Skein> skein, List<CellFault> faults) {
  public RowReading {
    faults = List.copyOf(faults);
  }
}
