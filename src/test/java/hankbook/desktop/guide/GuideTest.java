package hankbook.desktop.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.CustomBlock;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.junit.jupiter.api.Test;

class GuideTest {
  private final List<GuidePage> pages = Guide.read().pages();

  @Test
  void the_first_page_leads_to_every_page_in_the_folder() throws IOException {
    assertThat(pages.stream().map(GuidePage::file)).containsExactlyInAnyOrderElementsOf(files(".md"));
  }

  @Test
  void every_page_has_a_title_of_its_own() {
    assertThat(pages.stream().map(GuidePage::title)).doesNotHaveDuplicates().allMatch(title -> !title.isBlank());
  }

  @Test
  void every_link_leads_to_a_page() {
    assertThat(destinations(true)).allMatch(file -> pages.stream().anyMatch(page -> page.file().equals(file)));
  }

  @Test
  void every_picture_that_is_named_lies_in_the_folder_and_every_one_there_is_named() throws IOException {
    assertThat(destinations(false)).containsExactlyInAnyOrderElementsOf(files(".png"));
  }

  @Test
  void nothing_is_written_that_the_window_would_not_show() {
    pages.forEach(page -> page.text().accept(new AbstractVisitor() {
      @Override
      public void visit(HtmlBlock block) {
        throw new AssertionError(page.file() + " has " + block.getLiteral());
      }

      @Override
      public void visit(HtmlInline inline) {
        throw new AssertionError(page.file() + " has " + inline.getLiteral());
      }

      @Override
      public void visit(CustomBlock block) {
        throw new AssertionError(page.file() + " has a block that is no CommonMark");
      }
    }));
  }

  private Set<String> destinations(boolean links) {
    Set<String> found = new TreeSet<>();
    pages.forEach(page -> page.text().accept(new AbstractVisitor() {
      @Override
      public void visit(Link link) {
        add(links, link.getDestination(), link);
      }

      @Override
      public void visit(Image image) {
        add(!links, image.getDestination(), image);
      }

      private void add(boolean wanted, String destination, Node node) {
        if (wanted) {
          found.add(destination);
        }
        visitChildren(node);
      }
    }));
    return found;
  }

  private static Set<String> files(String ending) throws IOException {
    Path folder = Path.of("docs/guide");
    try (Stream<Path> files = Files.walk(folder)) {
      return files.map(file -> folder.relativize(file).toString().replace('\\', '/')).filter(file -> file.endsWith(ending)).collect(Collectors.toCollection(TreeSet::new));
    }
  }
}
