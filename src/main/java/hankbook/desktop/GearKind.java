package hankbook.desktop;

import hankbook.studio.NotDone;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One kind of gear: how it is typed and shown, and what the ledger does with it.
 *
 * @param <T> a loom or a reed
 */
interface GearKind<T> {
  /** {@code loom} or {@code reed}. */
  String word();

  /** Its fields, the name first. */
  List<GearField> fields();

  /** Reads what is typed; what cannot be read is told to the reading. */
  Optional<T> read(GearReading reading);

  /** What would be typed for it, by field. */
  Map<String, String> texts(T gear);

  /** Those there are, by name. */
  List<T> all();

  /** Enters one, perhaps in the place of another of its name. */
  void add(T gear, boolean replace) throws NotDone;

  /** Takes one off the list. */
  void putAway(String name) throws NotDone;
}
