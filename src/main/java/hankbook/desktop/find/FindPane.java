package hankbook.desktop.find;

import hankbook.desktop.say.Say;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javafx.beans.binding.Bindings;
import javafx.css.PseudoClass;
import javafx.geometry.Bounds;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** The field for finding anything, and under it what answers, by sort. The keyboard stays in the field. */
public final class FindPane extends VBox {
  private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");
  private static final double WIDTH = 560;
  private static final double MOST_HIGH = 430;

  private final FindModel model;
  private final TextField field = new TextField();
  private final VBox list = new VBox();
  private final ScrollPane scroll = new ScrollPane(list);
  private final List<Node> lines = new ArrayList<>();
  private @Nullable Node before;

  public FindPane(FindModel model) {
    this.model = model;
    setId("find-pane");
    getStyleClass().add("find-pane");
    getStylesheets().add(Objects.requireNonNull(FindPane.class.getResource("/hankbook/desktop/find.css")).toExternalForm());
    setMaxSize(WIDTH, USE_PREF_SIZE);
    field.setId("find-anything");
    field.setPromptText(Say.text("A skein, a yarn, a plan, a screen, something to do, the number of an entry"));
    field.setAccessibleText(Say.text("Find anything"));
    field.textProperty().bindBidirectional(model.typedProperty());
    field.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    field.focusedProperty().subscribe(now -> closeUnless(now));
    list.getStyleClass().add("find-list");
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.setFocusTraversable(false);
    scroll.setMaxHeight(MOST_HIGH);
    scroll.getStyleClass().add("find-scroll");
    Label trouble = new Label();
    trouble.getStyleClass().add("fault");
    trouble.textProperty().bind(model.troubleProperty());
    trouble.managedProperty().bind(Bindings.isNotEmpty(trouble.textProperty()));
    getChildren().addAll(field, trouble, scroll);
    visibleProperty().bind(model.openProperty());
    managedProperty().bind(visibleProperty());
    model.foundProperty().subscribe(this::show);
    model.chosenProperty().subscribe(now -> choose(now.intValue()));
    model.openProperty().subscribe(this::turn);
  }

  private void turn(boolean open) {
    if (getScene() == null) {
      return;
    }
    if (open) {
      before = getScene().getFocusOwner();
      field.requestFocus();
    } else if (field.isFocused() && before != null) {
      before.requestFocus();
    }
  }

  /** Whoever clicks elsewhere has looked enough. */
  private void closeUnless(boolean focused) {
    if (!focused && model.openProperty().get() && getScene() != null && getScene().getWindow() != null && getScene().getWindow().isFocused()) {
      model.close();
    }
  }

  private void pressed(KeyEvent event) {
    boolean meant = true;
    switch (event.getCode()) {
      case DOWN -> model.move(1);
      case UP -> model.move(-1);
      case ENTER -> model.go();
      case ESCAPE -> model.close();
      default -> meant = false;
    }
    if (meant) {
      event.consume();
    }
  }

  private void show(List<Thing> found) {
    list.getChildren().clear();
    lines.clear();
    for (int place = 0; place < found.size(); place++) {
      Thing thing = found.get(place);
      if (place == 0 || found.get(place - 1).sort() != thing.sort()) {
        Label sort = new Label(thing.sort().words());
        sort.getStyleClass().add("find-sort");
        list.getChildren().add(sort);
      }
      Node line = line(thing);
      lines.add(line);
      list.getChildren().add(line);
    }
    if (found.isEmpty() && !model.typedProperty().get().isBlank()) {
      Label none = new Label(Say.text("Nothing answers to that."));
      none.getStyleClass().add("find-none");
      list.getChildren().add(none);
    }
    scroll.setVvalue(0);
  }

  private Node line(Thing thing) {
    Label title = new Label(thing.title());
    title.getStyleClass().add("find-title");
    title.setMinWidth(Region.USE_PREF_SIZE);
    Label detail = new Label(thing.detail());
    detail.getStyleClass().add("quiet");
    HBox.setHgrow(detail, Priority.ALWAYS);
    HBox line = new HBox(title, detail);
    line.getStyleClass().add("find-line");
    line.setAccessibleRole(AccessibleRole.LIST_ITEM);
    line.setAccessibleText(thing.title() + ", " + thing.detail());
    line.setOnMousePressed(press -> {
      press.consume();
      model.go(thing);
    });
    return line;
  }

  private void choose(int now) {
    for (int place = 0; place < lines.size(); place++) {
      lines.get(place).pseudoClassStateChanged(CHOSEN, place == now);
    }
    if (now >= 0 && now < lines.size()) {
      bringIntoView(lines.get(now));
      field.setAccessibleHelp(lines.get(now).getAccessibleText());
    }
  }

  private void bringIntoView(Node line) {
    Bounds bounds = line.getBoundsInParent();
    double room = list.getHeight() - scroll.getViewportBounds().getHeight();
    if (room > 0) {
      double top = scroll.getVvalue() * room;
      double wanted = Math.clamp(top, bounds.getMaxY() - scroll.getViewportBounds().getHeight(), Math.max(bounds.getMinY() - 24, bounds.getMaxY() - scroll.getViewportBounds().getHeight()));
      scroll.setVvalue(Math.clamp(wanted / room, 0, 1));
    }
  }
}
