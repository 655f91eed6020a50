package hankbook.exchange;

import java.util.List;
import java.util.Optional;

/** A file that cannot be taken as it is. Each fault names the file, the row or field, what was found and what is wanted. */
public final class BadInput extends Exception {
  private static final long serialVersionUID = 1L;

  /** The faults, one line each; transient only because the list type does not promise otherwise. */
  private final transient List<String> faults;

  private final transient Optional<Fault> field;

  public BadInput(List<String> faults) {
    this(faults, Optional.empty());
  }

  /** A single fault whose field is known. */
  BadInput(String message, Fault field) {
    this(List.of(message), Optional.of(field));
  }

  private BadInput(List<String> faults, Optional<Fault> field) {
    super(String.join("; ", faults));
    this.faults = List.copyOf(faults);
    this.field = field;
  }

  public BadInput(String fault) {
    this(List.of(fault));
  }

  /** Every fault found, in the file's order. */
  public List<String> faults() {
    return faults;
  }

  /** The field at fault in its parts, where a single field is. */
  public Optional<Fault> field() {
    return field;
  }
}
