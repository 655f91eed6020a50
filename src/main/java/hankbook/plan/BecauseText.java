package hankbook.plan;

import java.util.ArrayList;
import java.util.List;

/** A figure and what it is made of as lines of text, each part set in below what it makes. */
public final class BecauseText {
  private static final String IN = "  ";

  /** How the words and numbers of a figure are written. */
  public interface Written {
    /** What it is, and whose. */
    String name(Because figure);

    /** How it is reckoned; empty where it is given. */
    String formula(Because figure);

    /** The number with its unit. */
    String amount(Because figure);
  }

  private BecauseText() {}

  /** All of a figure, from the top. */
  public static List<String> lines(Because figure, Written written) {
    List<String> lines = new ArrayList<>();
    add(figure, "", "", written, lines);
    return List.copyOf(lines);
  }

  private static void add(Because figure, String in, String sign, Written written, List<String> lines) {
    Because read = figure.read();
    String formula = written.formula(figure);
    lines.add(in + (sign.isEmpty() ? "" : sign + " ") + written.name(figure) + ": " + written.amount(figure) + (formula.isEmpty() ? "" : " (" + formula + ")"));
    for (int i = 0; i < read.parts().size(); i++) {
      add(read.parts().get(i), in + IN, sign(read, i), written, lines);
    }
  }

  /** What stands before a part; nothing before the first. */
  public static String sign(Because whole, int part) {
    return part == 0 ? "" : whole.how().sign();
  }
}
