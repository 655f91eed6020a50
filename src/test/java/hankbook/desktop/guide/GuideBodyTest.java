package hankbook.desktop.guide;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.control.Label;
import org.commonmark.parser.Parser;
import org.junit.jupiter.api.Test;
import org.testfx.framework.junit5.ApplicationTest;

class GuideBodyTest extends ApplicationTest {
  @Test
  void a_picture_that_is_missing_says_what_it_would_show() {
    interact(() -> {
      GuideBody body = new GuideBody(Parser.builder().build().parse("![A loom with its warp](no-such.png)"), _ -> {});
      assertThat(body.getChildren()).singleElement().isInstanceOfSatisfying(Label.class, label -> assertThat(label.getText()).isEqualTo("A loom with its warp"));
    });
  }
}
