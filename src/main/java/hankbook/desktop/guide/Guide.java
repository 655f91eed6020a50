package hankbook.desktop.guide;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;

/** The guide's pages in the order in which its first page leads to them. */
public final class Guide {
  /** The page with the list of all others. */
  static final String FIRST = "README.md";

  private static final String FOLDER = "/guide/";
  private static final Parser PARSER = Parser.builder().build();

  private final List<GuidePage> pages;

  private Guide(List<GuidePage> pages) {
    this.pages = List.copyOf(pages);
  }

  /**
   * Reads the guide that comes with the program.
   *
   * @throws IllegalStateException if a page that its first one leads to is missing
   */
  public static Guide read() {
    GuidePage first = new GuidePage(FIRST, title(text(FIRST)), text(FIRST));
    List<GuidePage> pages = new ArrayList<>(List.of(first));
    for (String file : leadsTo(first.text())) {
      Node text = text(file);
      pages.add(new GuidePage(file, title(text), text));
    }
    return new Guide(pages);
  }

  List<GuidePage> pages() {
    return pages;
  }

  /** The page of a file. */
  Optional<GuidePage> page(String file) {
    return pages.stream().filter(page -> page.file().equals(file)).findFirst();
  }

  /** Where a picture of the guide lies; empty if there is none of that name. */
  static Optional<String> picture(String file) {
    return Optional.ofNullable(Guide.class.getResource(FOLDER + file)).map(URL::toExternalForm);
  }

  private static Node text(String file) {
    try (InputStream in = Guide.class.getResourceAsStream(FOLDER + file)) {
      if (in == null) {
        throw new IllegalStateException("the guide's page " + file + " is missing from the program");
      }
      return PARSER.parse(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException unread) {
      throw new UncheckedIOException("the guide's page " + file + " cannot be read", unread);
    }
  }

  private static String title(Node page) {
    StringBuilder words = new StringBuilder();
    Objects.requireNonNull(page.getFirstChild(), "a page of the guide is empty").accept(new AbstractVisitor() {
      @Override
      public void visit(Text text) {
        words.append(text.getLiteral());
      }
    });
    return words.toString();
  }

  private static List<String> leadsTo(Node page) {
    List<String> files = new ArrayList<>();
    page.accept(new AbstractVisitor() {
      @Override
      public void visit(Link link) {
        if (link.getDestination().endsWith(".md")) {
          files.add(link.getDestination());
        }
      }
    });
    return files.stream().filter(file -> !file.contains("/")).distinct().toList();
  }
}
