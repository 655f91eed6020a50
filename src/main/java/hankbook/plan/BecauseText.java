package hankbook.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

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

    /** That the same figure was told further up. */
    String asAbove();
  }

  private final Written written;
  private final List<String> lines = new ArrayList<>();
  private final Set<Because> told = new HashSet<>();

  private BecauseText(Written written) {
    this.written = written;
  }

  /** All of a figure, from the top; what is made of parts and comes again is not told again. */
  public static List<String> lines(Because figure, Written written) {
    BecauseText text = new BecauseText(written);
    text.add(figure, "", "");
    return List.copyOf(text.lines);
  }

  private void add(Because figure, String in, String sign) {
    Because read = figure.read();
    boolean again = figure.isMade() && !told.add(figure);
    String formula = again ? written.asAbove() : written.formula(figure);
    lines.add(in + (sign.isEmpty() ? "" : sign + " ") + written.name(figure) + ": " + written.amount(figure) + (formula.isEmpty() ? "" : " (" + formula + ")"));
    for (int i = 0; i < read.parts().size() && !again; i++) {
      add(read.parts().get(i), in + IN, sign(read, i));
    }
  }

  /** What stands before a part; nothing before the first. */
  public static String sign(Because whole, int part) {
    return part == 0 ? "" : whole.how().sign();
  }
}
