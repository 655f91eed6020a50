package hankbook.desktop.guide;

import java.util.function.Consumer;
import javafx.beans.binding.Bindings;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.BulletList;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.Text;

/** All of a page, one part under the other. What the guide never uses (tables, HTML) is not shown; a test holds its pages to the rest. */
final class GuideBody extends VBox {
  private final Consumer<String> follow;

  /**
   * @param page what it says
   * @param follow is given where a link leads
   */
  GuideBody(Node page, Consumer<String> follow) {
    this.follow = follow;
    getStyleClass().add("guide-body");
    setMinWidth(0);
    page.accept(new Setter(this));
  }

  /** Sets block after block into a box. */
  private final class Setter extends AbstractVisitor {
    private final Pane box;

    Setter(Pane box) {
      this.box = box;
    }

    @Override
    public void visit(Heading heading) {
      box.getChildren().add(new GuideText(heading, heading.getLevel() == 1 ? "guide-title" : "guide-heading", follow));
    }

    @Override
    public void visit(Paragraph paragraph) {
      if (paragraph.getFirstChild() instanceof org.commonmark.node.Image image && image.getNext() == null) {
        box.getChildren().add(picture(image));
      } else {
        box.getChildren().add(new GuideText(paragraph, "guide-plain", follow));
      }
    }

    @Override
    public void visit(BulletList list) {
      items(list, 0);
    }

    @Override
    public void visit(OrderedList list) {
      items(list, 1);
    }

    @Override
    public void visit(FencedCodeBlock code) {
      box.getChildren().add(code(code.getLiteral()));
    }

    @Override
    public void visit(IndentedCodeBlock code) {
      box.getChildren().add(code(code.getLiteral()));
    }

    private void items(Node list, int first) {
      int number = first;
      for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
        if (item instanceof ListItem) {
          VBox words = new VBox();
          words.getStyleClass().add("guide-item");
          HBox.setHgrow(words, Priority.ALWAYS);
          Label mark = new Label(first == 0 ? "–" : number + ".");
          mark.getStyleClass().add("guide-number");
          box.getChildren().add(new HBox(mark, words));
          new Setter(words).visitChildren(item);
          number++;
        }
      }
    }
  }

  private static Label code(String text) {
    Label code = new Label(text.stripTrailing());
    code.setWrapText(true);
    code.setMinHeight(USE_PREF_SIZE);
    code.getStyleClass().add("guide-block");
    return code;
  }

  /** A picture, or what it would show where there is none. */
  private javafx.scene.Node picture(org.commonmark.node.Image named) {
    return Guide.picture(named.getDestination()).<javafx.scene.Node>map(address -> picture(named, new Image(address, true))).orElseGet(() -> instead(words(named)));
  }

  private static Label instead(String words) {
    Label label = new Label(words);
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    label.getStyleClass().add("guide-plain");
    return label;
  }

  /** A picture as wide as it was taken, or as there is room; it comes when it is read. */
  private ImageView picture(org.commonmark.node.Image named, Image image) {
    ImageView picture = new ImageView(image);
    picture.fitWidthProperty().bind(Bindings.createDoubleBinding(() -> Math.min(room(), image.getWidth()), widthProperty(), insetsProperty(), image.widthProperty()));
    picture.setPreserveRatio(true);
    picture.setSmooth(true);
    picture.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    picture.setAccessibleText(words(named));
    return picture;
  }

  private double room() {
    return Math.max(1, getWidth() - snappedLeftInset() - snappedRightInset());
  }

  private static String words(Node of) {
    StringBuilder words = new StringBuilder();
    of.accept(new AbstractVisitor() {
      @Override
      public void visit(Text text) {
        words.append(text.getLiteral());
      }
    });
    return words.toString();
  }
}
