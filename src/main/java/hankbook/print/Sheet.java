package hankbook.print;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * What stands on a sheet of paper, from top to bottom, in words and figures as they are to be read.
 *
 * @param title of the whole
 * @param subtitle a line below it; may be empty
 * @param parts one below the other; one with nothing in it is left out
 * @param foot a line at the foot of every page; may be empty
 */
public record Sheet(String title, String subtitle, List<Part> parts, String foot) {
  public Sheet {
    parts = List.copyOf(parts);
  }

  /** A part of the sheet under a heading. */
  public sealed interface Part {
    /** What stands over it. */
    String heading();
  }

  /**
   * Facts, each a name and what is so.
   *
   * @param heading over them
   * @param facts in the order in which they are read
   */
  public record Facts(String heading, List<Fact> facts) implements Part {
    public Facts {
      facts = List.copyOf(facts);
    }
  }

  /** One fact. */
  public record Fact(String name, String words) {}

  /**
   * A table.
   *
   * @param heading over it
   * @param columns at least one
   * @param rows each with a cell for every column
   */
  public record Table(String heading, List<Column> columns, List<Row> rows) implements Part {
    public Table {
      columns = List.copyOf(columns);
      rows = List.copyOf(rows);
      for (Row row : rows) {
        if (row.cells().size() != columns.size()) {
          throw new IllegalArgumentException("a row of " + row.cells().size() + " cells in a table of " + columns.size() + " columns");
        }
      }
    }
  }

  /**
   * A column.
   *
   * @param title over it
   * @param figures whether figures stand in it, which end in one line
   * @param share of the table's width, beside the other columns' shares; over zero
   */
  public record Column(String title, boolean figures, int share) {}

  /**
   * A row.
   *
   * @param cells from left to right
   * @param sum whether it is the sum of those above
   */
  public record Row(List<Cell> cells, boolean sum) {
    public Row {
      cells = List.copyOf(cells);
    }

    /** A row of words. */
    public static Row of(String... words) {
      return new Row(List.of(words).stream().map(Cell::of).toList(), false);
    }
  }

  /**
   * A cell.
   *
   * @param words in it
   * @param hex the colour of the yarn it speaks of, as {@code #rrggbb}, shown as a patch before the words
   */
  public record Cell(String words, Optional<String> hex) {
    public Cell {
      hex = hex.filter(colour -> colour.matches("#[0-9a-f]{6}"));
    }

    /** Without a colour. */
    public static Cell of(String words) {
      return new Cell(words, Optional.empty());
    }
  }

  /**
   * Bars one below the other, each from one figure to another on a scale that all of them share.
   *
   * @param heading over them
   * @param bars from top to bottom
   */
  public record Bars(String heading, List<Bar> bars) implements Part {
    public Bars {
      bars = List.copyOf(bars);
    }
  }

  /**
   * One bar.
   *
   * @param name of it
   * @param from where it begins on the scale
   * @param to where it ends
   * @param words for what it shows
   * @param whole whether it is a whole, rather than what comes to one or goes from it
   */
  public record Bar(String name, BigDecimal from, BigDecimal to, String words, boolean whole) {}

  /**
   * A few sentences.
   *
   * @param heading over them
   * @param words without line ends
   */
  public record Words(String heading, String words) implements Part {}
}
