package hankbook.studio;

import hankbook.measure.Unreadable;
import hankbook.yarn.OneLine;
import hankbook.yarn.PackageForm;
import hankbook.yarn.Skein;
import java.util.Optional;

/**
 * A package that yarn is wound onto. All else that is said of it is as it was of the skein that the yarn comes off.
 *
 * @param code its own, which no skein of the ledger has
 * @param form how it is put up; empty for as the other
 * @param location where it lies; empty for where the other does
 */
public record NewPackage(String code, Optional<PackageForm> form, Optional<String> location) {
  public NewPackage {
    code = OneLine.of(code);
    if (code.isBlank()) {
      throw new Unreadable(code, "a code of its own");
    }
  }

  /** A package that is put up as the other and lies beside it. */
  public NewPackage(String code) {
    this(code, Optional.empty(), Optional.empty());
  }

  /**
   * The skein that it becomes, without any cost of its own: that comes with the yarn.
   *
   * @param off the skein that the yarn comes off
   * @param asItWas whether it is measured by what was measured of that
   */
  Skein of(Skein off, boolean asItWas) {
    return new Skein(
        code, off.yarn(), off.hex(), off.fibre(), off.grist(), form.orElse(off.form()), asItWas ? off.measures().label() : Optional.empty(), Optional.empty(), Optional.empty(),
        true, off.lot(), location.orElse(off.location()), Optional.empty(), off.received(), Optional.empty(), Optional.empty());
  }
}
