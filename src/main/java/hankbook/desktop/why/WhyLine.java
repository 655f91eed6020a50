package hankbook.desktop.why;

import hankbook.plan.Because;
import hankbook.plan.BecauseText;
import java.util.ArrayList;
import java.util.List;

/**
 * A line of an explanation.
 *
 * @param figure what stands in it
 * @param sign what stands before it, such as {@code ×}; or empty
 */
record WhyLine(Because figure, String sign) {
  /** The lines below it. */
  List<WhyLine> parts() {
    Because read = figure.read();
    List<WhyLine> lines = new ArrayList<>();
    for (int i = 0; i < read.parts().size(); i++) {
      lines.add(new WhyLine(read.parts().get(i), BecauseText.sign(read, i)));
    }
    return lines;
  }
}
