package hankbook.desktop;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.Control;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Spinner;
import javafx.scene.control.TextInputControl;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The whole window: the navigation, the screen turned to, and the status line. */
final class MainWindow extends BorderPane {
  private static final String KEY = "screen";

  /** Below this the words of the navigation would take room that the screens need. */
  private static final double NARROW = Framed.LEAST_WIDTH + 128;

  private final List<Screen> screens;
  private final Navigation navigation;
  private final Remembered remembered;
  private final Enlargement enlargement;
  private final VBox below = new VBox();
  private final StatusLine line;
  private final Framed framed = new Framed();
  private final StackPane centre = new StackPane(framed);
  private Runnable find = () -> {};
  private Consumer<String> guide = _ -> {};
  private Screen turnedTo;
  private Optional<Node> instead = Optional.empty();

  /**
   * @param screens at least one
   * @param ledger which ledger is open, in a word or two
   * @param whole its whole address
   * @param remembered how the window was left
   */
  MainWindow(List<Screen> screens, Status status, String ledger, String whole, Remembered remembered) {
    this.screens = List.copyOf(screens);
    this.remembered = remembered;
    enlargement = new Enlargement(remembered);
    turnedTo = screens.getFirst();
    navigation = new Navigation(screens, this::turnTo, () -> find.run(), this::otherTheme, this::showGuide, this::showKeys);
    getStyleClass().add("window");
    setLeft(beside(navigation));
    widthProperty().subscribe(width -> navigation.narrow(width.doubleValue() < NARROW));
    setCenter(centre);
    line = new StatusLine(status, ledger, whole);
    below.getChildren().add(line);
    setBottom(below);
    LookMemory looks = new LookMemory(remembered);
    screens.forEach(screen -> looks.under(screen.node()));
    screens.forEach(screen -> screen.node().lookupAll(".search").forEach(MainWindow::tipOfSearch));
  }

  /** A low window must not push the status line out of itself. */
  private static ScrollPane beside(Navigation navigation) {
    ScrollPane scroll = new ScrollPane(navigation);
    scroll.getStyleClass().addAll("edge-to-edge", "navigation-scroll");
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.setFitToWidth(true);
    scroll.setFitToHeight(true);
    scroll.setMinHeight(0);
    scroll.setFocusTraversable(false);
    return scroll;
  }

  private static void tipOfSearch(Node node) {
    if (node instanceof Control field && field.getTooltip() == null && field.getAccessibleText() != null) {
      field.setTooltip(Chord.SEARCH.tip(field.getAccessibleText()));
    }
  }

  private void showKeys() {
    KeysPage page = new KeysPage(() -> turnTo(turnedTo));
    showInstead(page);
    page.begin();
  }

  /** Shows above the status line what is said of a fault, or nothing any more. */
  void showFault(Optional<? extends Node> said) {
    below.getChildren().removeIf(node -> !(node instanceof StatusLine || node instanceof UndoBar));
    said.ifPresent(node -> below.getChildren().addFirst(node));
  }

  /**
   * Lets anything be found, and the last thing be taken back.
   *
   * @param pane lies over the screen while something is looked for
   * @param bar stands above the status line while it is asked whether something is to be taken back
   */
  void offer(Node pane, Runnable opening, Node bar) {
    find = opening;
    StackPane.setAlignment(pane, Pos.TOP_LEFT);
    centre.getChildren().add(pane);
    centre.setMinSize(0, 0);
    below.getChildren().addFirst(bar);
  }

  /** @param opening opens the guide at the page of a file */
  void offerGuide(Consumer<String> opening) {
    guide = opening;
  }

  /** Opens the guide at the page that speaks of what is shown. */
  void showGuide() {
    guide.accept(instead.map(GuideWay::insteadOfScreen).orElseGet(() -> GuideWay.of(turnedTo)));
  }

  /** How large all of it is shown. */
  Enlargement enlargement() {
    return enlargement;
  }

  /** Lets the keys work once the window stands in a scene. */
  void listenTo(Scene scene, Runnable receive, Runnable undo) {
    Map<Chord, Runnable> acts = new EnumMap<>(Chord.class);
    screens.forEach(screen -> acts.put(screen.chord(), () -> turnTo(screen)));
    acts.put(Chord.SEARCH, () -> turnedTo.search().run());
    acts.put(Chord.OTHER_THEME, this::otherTheme);
    acts.put(Chord.RECEIVE, receive);
    acts.put(Chord.FIND_ANYTHING, () -> find.run());
    acts.put(Chord.UNDO, () -> unlessTyping(undo));
    acts.put(Chord.LARGER, enlargement::larger);
    acts.put(Chord.SMALLER, enlargement::smaller);
    acts.put(Chord.OWN_SIZE, enlargement::ownSize);
    acts.put(Chord.GUIDE, this::showGuide);
    acts.put(Chord.KEYS, this::showKeys);
    Chord.on(scene, acts);
  }

  /** Hears no more of what outlives the window's contents. */
  void leave() {
    line.leave();
  }

  /** Turns to the screen that was shown last, or else to the first. */
  void turnToLast() {
    String last = remembered.get(KEY, String.class).orElse("");
    turnTo(screens.stream().filter(screen -> screen.chord().name().equalsIgnoreCase(last)).findFirst().orElseGet(screens::getFirst));
  }

  /** Turns to a screen, which asks the ledger anew, and puts the keyboard where its things are looked for. */
  void turnTo(Screen screen) {
    turnedTo = screen;
    remembered.put(KEY, screen.chord().name());
    instead = Optional.empty();
    framed.show(screen.node());
    navigation.mark(screen);
    screen.refresh().run();
    screen.search().run();
  }

  /** Puts the keyboard into the node of an id, where there is one. */
  void focus(String id) {
    Node found = id.isEmpty() ? null : lookup("#" + id);
    if (found != null) {
      found.requestFocus();
    }
  }

  /** Lets the screen that is shown ask the ledger anew. */
  void refresh() {
    if (instead.isEmpty()) {
      turnedTo.refresh().run();
    }
  }

  /** Shows something in place of a screen. */
  void showInstead(Node node) {
    instead = Optional.of(node);
    framed.show(node);
    navigation.markNone();
  }

  /** Whether a screen is shown, rather than something in its place. */
  boolean showsScreen() {
    return instead.isEmpty();
  }

  /** In a field the same keys undo what was typed there. */
  private void unlessTyping(Runnable undo) {
    Node at = getScene().getFocusOwner();
    boolean typing = (at instanceof TextInputControl text && text.isEditable()) || (at instanceof ComboBoxBase<?> box && box.isEditable()) || at instanceof Spinner<?>;
    if (!typing) {
      undo.run();
    }
  }

  void otherTheme() {
    Theme theme = Theme.in(remembered).other();
    theme.on(getScene());
    theme.remember(remembered);
  }
}
