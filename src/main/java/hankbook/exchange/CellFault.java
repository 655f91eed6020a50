package hankbook.exchange;

import hankbook.measure.Unreadable;

/**
 * One cell of a stock row that cannot be taken.
 *
 * @param column which
 * @param found as it was written, or empty
 * @param wanted what would have been accepted, as a noun phrase
 */
public record CellFault(String column, String found, String wanted) {
  @Override
  public String toString() {
    return column + ": " + new Unreadable(found, wanted).getMessage();
  }
}
