package hankbook.desktop.guide;

import org.commonmark.node.Node;

/**
 * One page of the guide, about one task.
 *
 * @param file by which other pages lead to it, such as {@code receive.md}
 * @param title as the list of pages says it
 * @param text what it says
 */
record GuidePage(String file, String title, Node text) {
  /** As the list shows it. */
  @Override
  public String toString() {
    return title;
  }
}
