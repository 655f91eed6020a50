package hankbook.exchange;

import com.opencsv.CSVReader;
import com.opencsv.CSVReaderBuilder;
import com.opencsv.ICSVParser;
import com.opencsv.RFC4180ParserBuilder;
import com.opencsv.enums.CSVReaderNullFieldIndicator;
import com.opencsv.exceptions.CsvValidationException;
import hankbook.measure.MoneyText;
import hankbook.measure.Unreadable;
import hankbook.yarn.Skein;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.joda.money.Money;

/** Reads a stock file: RFC 4180, UTF-8, a header row, columns in any order. All rows or none; every bad row is reported at once. */
public final class StockFile {
  /** The columns, in the order they are written. */
  public static final List<String> COLUMNS =
      List.of(
          "code", "yarn", "colour", "hex", "fibre", "grist", "form", "length", "gross", "tare", "opened", "lot", "location", "cost", "received", "turns", "reel",
          "regain");

  private final String file;
  private final List<String> faults = new ArrayList<>();
  private final List<Row> skeins = new ArrayList<>();
  private final Set<String> codes = new HashSet<>();
  private int row;

  /**
   * A skein and where it stands in the file.
   *
   * @param number of the row, the header being the first
   */
  public record Row(int number, Skein skein) {}

  private StockFile(String file) {
    this.file = file;
  }

  /**
   * Reads the text of a stock file.
   *
   * @param file its name, for messages
   * @throws BadInput naming every row that cannot be read
   */
  public static List<Skein> read(String file, String text) throws BadInput {
    return rows(file, text).stream().map(Row::skein).toList();
  }

  /**
   * Reads the text of a stock file, keeping count of its rows.
   *
   * @param file its name, for messages
   * @throws BadInput naming every row that cannot be read
   */
  public static List<Row> rows(String file, String text) throws BadInput {
    StockFile reader = new StockFile(file);
    ICSVParser parser = new RFC4180ParserBuilder().withFieldAsNull(CSVReaderNullFieldIndicator.NEITHER).build();
    try (CSVReader rows = new CSVReaderBuilder(new StringReader(text)).withCSVParser(parser).build()) {
      reader.rows(rows);
    } catch (IOException | CsvValidationException broken) {
      throw new BadInput(file + ", row " + (reader.row + 1) + ": found a quote that is never closed, wanted rows after RFC 4180");
    }
    if (!reader.faults.isEmpty()) {
      throw new BadInput(reader.faults);
    }
    return List.copyOf(reader.skeins);
  }

  /** Reads one row by the names of its columns, by the same rules; a column that is not there is unknown. */
  public static RowReading row(Map<String, String> values) {
    return StockRow.read(values);
  }

  /**
   * Reads an amount of money as a stock file has it, such as 24.50 EUR.
   *
   * @throws Unreadable if it is none
   */
  public static Money money(String text) {
    return MoneyText.parse(text);
  }

  private void rows(CSVReader rows) throws IOException, CsvValidationException, BadInput {
    String[] header = rows.readNext();
    if (header == null) {
      throw new BadInput(file + ": found an empty file, wanted a header row of " + String.join(",", COLUMNS));
    }
    List<String> columns = header(header);
    row = 1;
    for (String[] cells = rows.readNext(); cells != null; cells = rows.readNext()) {
      row++;
      if (cells.length > 1 || !cells[0].isBlank()) {
        read(columns, cells);
      }
    }
  }

  private List<String> header(String[] header) throws BadInput {
    List<String> columns = new ArrayList<>();
    for (String cell : header) {
      String column = cell.strip();
      if (!COLUMNS.contains(column) || columns.contains(column)) {
        throw new BadInput(file + ", row 1: found column '" + column + "', wanted each of " + String.join(",", COLUMNS) + " at most once");
      }
      columns.add(column);
    }
    for (String needed : List.of("code", "yarn", "colour")) {
      if (!columns.contains(needed)) {
        throw new BadInput(file + ", row 1: found no column '" + needed + "', wanted it");
      }
    }
    return columns;
  }

  private void read(List<String> columns, String[] cells) {
    String where = file + ", row " + row;
    if (cells.length != columns.size()) {
      faults.add(where + ": found " + cells.length + " cells, wanted " + columns.size() + " as in the header");
      return;
    }
    Map<String, String> values = new HashMap<>();
    for (int i = 0; i < cells.length; i++) {
      values.put(columns.get(i), cells[i].strip());
    }
    RowReading reading = row(values);
    reading.faults().forEach(fault -> faults.add(where + ", " + fault));
    reading.skein().ifPresent(skein -> add(where, skein));
  }

  private void add(String where, Skein skein) {
    if (codes.add(skein.code())) {
      skeins.add(new Row(row, skein));
    } else {
      faults.add(where + ", code: found '" + skein.code() + "' again, wanted a code of its own");
    }
  }
}
