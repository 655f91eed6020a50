package hankbook.desktop;

import hankbook.measure.Length;

/** A line of the shelf by yarn and colour. */
sealed interface ShelfLine {
  Amount held();

  Amount free();

  Amount reserved();

  Amount onLoom();

  /** How many it is, or what sort of one. */
  String sort();

  /** Where the yarn is, in words. */
  default String standing() {
    return held().length().isZero() ? "" : GroupRow.standing(free().length(), reserved().length(), onLoom().length());
  }

  /** What there is of it. */
  default Length length() {
    return held().length();
  }

  /** A yarn in a colour. */
  record OfGroup(GroupRow row) implements ShelfLine {
    @Override
    public Amount held() {
      return row.held();
    }

    @Override
    public Amount free() {
      return row.free();
    }

    @Override
    public Amount reserved() {
      return row.reserved();
    }

    @Override
    public Amount onLoom() {
      return row.onLoom();
    }

    @Override
    public String sort() {
      return row.count();
    }
  }

  /** One of its skeins. */
  record OfSkein(SkeinRow row) implements ShelfLine {
    @Override
    public Amount held() {
      return row.held();
    }

    @Override
    public Amount free() {
      return row.free();
    }

    @Override
    public Amount reserved() {
      return row.reserved();
    }

    @Override
    public Amount onLoom() {
      return row.onLoom();
    }

    @Override
    public String sort() {
      return SkeinWords.sort(row.skein());
    }
  }
}
