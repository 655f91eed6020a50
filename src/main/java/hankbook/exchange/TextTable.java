package hankbook.exchange;

import java.util.ArrayList;
import java.util.List;

/** Columns as wide as their widest cell; numbers stand at the right. */
public final class TextTable {
  private final List<String> header;
  private final List<Boolean> right;
  private final List<List<String>> rows = new ArrayList<>();

  /** The columns by their headings; a heading that starts with {@code >} makes a column of numbers. */
  public TextTable(String... headings) {
    right = List.of(headings).stream().map(heading -> heading.startsWith(">")).toList();
    header = List.of(headings).stream().map(heading -> heading.startsWith(">") ? heading.substring(1) : heading).toList();
  }

  /** Adds a row; one cell to each heading. */
  public void row(String... cells) {
    rows.add(List.of(cells));
  }

  /** All lines, the headings first. */
  public List<String> lines() {
    List<List<String>> all = new ArrayList<>(rows);
    all.addFirst(header);
    List<Integer> widths = new ArrayList<>();
    for (int i = 0; i < header.size(); i++) {
      int column = i;
      widths.add(all.stream().mapToInt(row -> width(row.get(column))).max().orElse(0));
    }
    return all.stream().map(row -> line(row, widths)).toList();
  }

  private String line(List<String> row, List<Integer> widths) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < row.size(); i++) {
      String space = " ".repeat(widths.get(i) - width(row.get(i)));
      line.append(right.get(i) ? space + row.get(i) : row.get(i) + space).append("  ");
    }
    return line.toString().stripTrailing();
  }

  private static int width(String cell) {
    return cell.codePointCount(0, cell.length());
  }
}
