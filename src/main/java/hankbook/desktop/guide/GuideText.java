package hankbook.desktop.guide;

import java.util.function.Consumer;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Hyperlink;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.Emphasis;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;

/** One paragraph or heading of a page: words, some of them marked, and ways to other pages. */
final class GuideText extends TextFlow {
  /**
   * @param paragraph whose children are the words
   * @param style of all of it
   * @param follow is given where a link leads
   */
  GuideText(Node paragraph, String style, Consumer<String> follow) {
    getStyleClass().addAll("guide-text", style);
    setAccessibleRole(AccessibleRole.TEXT);
    StringBuilder spoken = new StringBuilder();
    words(paragraph, new Writer(style, spoken, follow));
    setAccessibleText(spoken.toString());
  }

  private static void words(Node of, AbstractVisitor writer) {
    for (Node child = of.getFirstChild(); child != null; child = child.getNext()) {
      child.accept(writer);
    }
  }

  /** Writes the words in the style of what they stand in. */
  private final class Writer extends AbstractVisitor {
    private final String style;
    private final StringBuilder spoken;
    private final Consumer<String> follow;

    Writer(String style, StringBuilder spoken, Consumer<String> follow) {
      this.style = style;
      this.spoken = spoken;
      this.follow = follow;
    }

    @Override
    public void visit(org.commonmark.node.Text text) {
      write(text.getLiteral(), style);
    }

    @Override
    public void visit(Code code) {
      write(code.getLiteral(), "guide-code");
    }

    @Override
    public void visit(SoftLineBreak line) {
      write(" ", style);
    }

    @Override
    public void visit(HardLineBreak line) {
      write("\n", style);
    }

    @Override
    public void visit(StrongEmphasis strong) {
      words(strong, new Writer("guide-strong", spoken, follow));
    }

    @Override
    public void visit(Emphasis emphasis) {
      words(emphasis, new Writer("guide-strong", spoken, follow));
    }

    @Override
    public void visit(Link link) {
      StringBuilder words = new StringBuilder();
      words(link, new AbstractVisitor() {
        @Override
        public void visit(org.commonmark.node.Text text) {
          words.append(text.getLiteral());
        }
      });
      spoken.append(words);
      Hyperlink way = new Hyperlink(words.toString());
      way.setOnAction(_ -> follow.accept(link.getDestination()));
      getChildren().add(way);
    }

    private void write(String words, String how) {
      spoken.append(words);
      Text text = new Text(words);
      text.getStyleClass().addAll("guide-words", how);
      getChildren().add(text);
    }
  }
}
