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

  /** One of them, as it is said on the screen. */
  String words();

  /** All of them, as they are said on the screen. */
  String several();

  /** Its fields, the name first. */
  List<GearField> fields();

  /** Reads what is typed; what cannot be read is told to the reading. */
  Optional<T> read(GearReading reading);

  /** What would be typed for it, by field. */
  Map<String, String> texts(T gear);

  /** Those there are, by name. */
  List<T> all();

  /** Those there are, as the list shows them. */
  default List<GearRow<T>> rows() {
    return all().stream().map(gear -> new GearRow<>(gear, texts(gear))).toList();
  }

  /** What the list calls what finished plans say of it; empty where they say nothing of this kind of gear. */
  default String learntCaption() {
    return "";
  }

  /** Enters one, perhaps in the place of another of its name. */
  void add(T gear, boolean replace) throws NotDone;

  /** Takes one off the list. */
  void putAway(String name) throws NotDone;
}
