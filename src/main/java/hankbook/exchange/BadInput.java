package hankbook.exchange;

import java.util.List;

/** A file that cannot be taken as it is. Each fault names the file, the row or field, what was found and what is wanted. */
public final class BadInput extends Exception {
  private static final long serialVersionUID = 1L;

  /** The faults, one line each; transient only because the list type does not promise otherwise. */
  private final transient List<String> faults;

  public BadInput(List<String> faults) {
    super(String.join("; ", faults));
    this.faults = List.copyOf(faults);
  }

  public BadInput(String fault) {
    this(List.of(fault));
  }

  /** Every fault found, in the file's order. */
  public List<String> faults() {
    return faults;
  }
}
