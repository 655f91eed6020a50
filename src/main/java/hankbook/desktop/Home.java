package hankbook.desktop;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;

/** Everything in the window for one open ledger: its models, its screens, and what they tell each other. */
public final class Home {
  private final LedgerDesk desk;
  private final Work work;
  private final Status status;
  private final ShelfModel shelf;
  private final JournalModel journal;
  private final ShelfView shelfView;
  private final Screen shelfScreen;
  private final MainWindow window;

  /**
   * @param plans the screen of the plans
   * @param refreshPlans asks the ledger anew for that screen
   * @param ledger which ledger is open, in a word or two
   */
  public Home(LedgerDesk desk, Work work, Status status, Node plans, Runnable refreshPlans, String ledger) {
    this.desk = desk;
    this.work = work;
    this.status = status;
    shelf = new ShelfModel(desk, work, status);
    journal = new JournalModel(desk, work, status);
    shelfView = shelfView();
    JournalView journalView = new JournalView(journal, new TakingBack(desk, work, status, journal::refresh));
    shelfScreen = new Screen("Shelf", "shelf-mark", Chord.SHELF, shelfView, shelf::refresh, shelfView::search);
    Screen plansScreen = new Screen("Plans", "plans-mark", Chord.PLANS, plans, refreshPlans, plans::requestFocus);
    Screen journalScreen = new Screen("Journal", "journal-mark", Chord.JOURNAL, journalView, journal::refresh, journalView::search);
    window = new MainWindow(List.of(shelfScreen, plansScreen, journalScreen), status, ledger);
  }

  /** What stands in the scene. */
  public Parent node() {
    return window;
  }

  /** Begins with the shelf, or with the welcome where the book is blank. */
  public void begin(Scene scene) {
    begin(scene, WelcomeView.fileChooser(window));
  }

  void begin(Scene scene, Supplier<Optional<Path>> chooser) {
    window.listenTo(scene, this::receive);
    work.run(desk::isBlank, blank -> begin(blank, chooser), status::wrong);
  }

  private void begin(boolean blank, Supplier<Optional<Path>> chooser) {
    if (blank) {
      window.showInstead(new WelcomeView(new WelcomeModel(desk, work, status, this::toShelf), chooser));
    } else {
      toShelf();
    }
  }

  private void toShelf() {
    window.turnTo(shelfScreen);
  }

  private void receive() {
    toShelf();
    shelfView.receive();
  }

  private ShelfView shelfView() {
    return new ShelfView(
        shelf, new SkeinPageModel(desk, work, status), new Recounting(desk, work, status, shelf::refresh),
        new Parting(desk, work, status, shelf::refresh),
        new ReceiveModel(desk, work, status, () -> shelf.all().stream().map(SkeinRow::skein).toList(), shelf::refresh));
  }
}
