package hankbook.desktop;

import hankbook.desktop.fault.FaultPane;
import hankbook.desktop.fault.Faults;
import hankbook.desktop.find.FindModel;
import hankbook.desktop.find.FindPane;
import hankbook.desktop.find.Sort;
import hankbook.desktop.find.Thing;
import hankbook.desktop.guide.GuideWindow;
import hankbook.desktop.say.Say;
import hankbook.gear.Loom;
import hankbook.gear.Reed;
import hankbook.store.LedgerAddress;
import hankbook.studio.Studio;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.layout.StackPane;
import javafx.util.Subscription;

/** Everything in the window for one open ledger: its models, its screens, and what they tell each other. */
public final class Home {
  private final Studio studio;
  private final Work work;
  private final Status status;
  private final ShelfModel shelf;
  private final PlansModel plans;
  private final JournalModel journal;
  private final AheadModel ahead;
  private final OnOrderModel onOrder;
  private final PurchasesModel purchases;
  private final AfterModel after;
  private final ShelfView shelfView;
  private final PlansView plansView;
  private final ReceiveModel receiving;
  private final SkeinDeeds deeds;
  private final TakingBack takingBack;
  private final Typing typing = new Typing();
  private final Screen shelfScreen;
  private final Screen plansScreen;
  private final Screen costsScreen;
  private final Screen journalScreen;
  private final JournalView journalView;
  private final List<Screen> screens;
  private final FindModel finding;
  private final UndoModel undo;
  private final News news;
  private final LastPlan lastPlan;
  private final RememberedSwitch counting;
  private final MainWindow window;
  private final Enlarged whole;
  private final YouGroup you;
  private final GuideWindow guide;
  private Consumer<Runnable> otherwise = _ -> {};
  private Consumer<String> out = _ -> {};
  private String focus = "";
  private Subscription hears = () -> {};
  private Supplier<Optional<Path>> chooser = Optional::empty;
  private Supplier<Optional<Path>> draftChooser = Optional::empty;
  private Function<String, Optional<Path>> recordChooser = _ -> Optional.empty();

  /**
   * @param work on the ledger, in the order in which the user acted
   * @param reckoning of plans, which may take longer and is not to hold up the rest
   * @param remembered how the window was left
   */
  public Home(Studio studio, Work work, Work reckoning, Status status, Remembered remembered) {
    this.studio = studio;
    this.work = work;
    this.status = status;
    you = new YouGroup(new YouModel(remembered, change -> otherwise.accept(change)), remembered);
    shelf = new ShelfModel(studio, work, status);
    journal = new JournalModel(studio, work, reckoning, status);
    plans = new PlansModel(new StudioPlanDesk(studio), reckoning, this::yarnMoved);
    ahead = new AheadModel(studio, reckoning, status);
    onOrder = new OnOrderModel(studio, work, status, this::orderMoved);
    purchases = new PurchasesModel(studio, work, status, this::costsMoved);
    after = new AfterModel(studio, work, reckoning, status, this::clothFinished);
    lastPlan = new LastPlan(remembered, studio.address().text(), plans);
    counting = new RememberedSwitch(remembered, "count on order", ahead.countingProperty());
    receiving = new ReceiveModel(studio, work, status, shelf);
    deeds = SkeinDeeds.of(studio, work, status, shelf);
    takingBack = new TakingBack(studio, work, status, journal::refresh);
    shelfView = shelfView(reckoning, remembered);
    plansView = new PlansView(plans);
    plansView.opensEntries(this::openEntry);
    plansView.offer(new DraftModel(studio, work, plans::names, plans::open), () -> draftChooser.get());
    journalView = new JournalView(journal, takingBack, new Opens(this::openSkein, this::open, this::openEntry));
    shelfScreen = new Screen(Say.text("Shelf"), "shelf-mark", Chord.SHELF, shelfView, shelf::refresh, shelfView::search);
    plansScreen = new Screen(Say.text("Plans"), "plans-mark", Chord.PLANS, plansView, this::lookAtPlans, plansView::search);
    journalScreen = new Screen(Say.text("Journal"), "journal-mark", Chord.JOURNAL, journalView, journal::refresh, journalView::search);
    costsScreen = costsScreen(reckoning);
    Screen gearScreen = gearScreen();
    screens = List.of(shelfScreen, plansScreen, journalScreen, aheadScreen(), afterScreen(), costsScreen, gearScreen, settingsScreen());
    window = new MainWindow(screens, status, name(studio.address()), studio.address().text(), remembered);
    news = new News(studio, work, status, window::refresh);
    undo = new UndoModel(studio, work, status, this::takenBack);
    Anything anything = new Anything(studio, new Opens(this::openSkein, this::open, this::openEntry), () -> window.turnTo(gearScreen), this::openPurchase);
    finding = new FindModel(this::waysAndActs, anything::kept, anything::named, reckoning::run, reckoning.away(), reckoning.here());
    window.offer(new FindPane(finding), finding::open, new UndoBar(undo));
    whole = new Enlarged(window, window.enlargement());
    guide = new GuideWindow(beside -> SameLook.put(whole.getScene(), beside, window.enlargement()), address -> out.accept(address));
    window.offerGuide(guide::show);
    typing.add("receive", receiving::typed, receiving::type);
    typing.add("purchase", purchases.another()::typed, purchases.another()::type);
    you.offer(window.enlargement());
  }

  private Screen aheadScreen() {
    OrderingModel ordering = new OrderingModel(studio, work, status, shelf::everySkein, this::orderMoved);
    typing.add("order", ordering::typed, ordering::type);
    AheadView view = new AheadView(ahead, onOrder, ordering, this::open);
    return new Screen(Say.text("Ahead"), "ahead-mark", Chord.AHEAD, view, this::lookAhead, view::search);
  }

  private Screen afterScreen() {
    AfterView view = new AfterView(after);
    view.offer(name -> recordChooser.apply(name));
    return new Screen(Say.text("After"), "after-mark", Chord.AFTER, view, after::refresh, view::search);
  }

  private void clothFinished() {
    yarnMoved();
    plans.refresh();
  }

  private Screen gearScreen() {
    GearModel<Loom> looms = new GearModel<>(new LoomKind(studio), work, status, plans::refresh);
    GearModel<Reed> reeds = new GearModel<>(new ReedKind(studio), work, status, plans::refresh);
    typing.add("loom", looms::typed, looms::type);
    typing.add("reed", reeds::typed, reeds::type);
    GearView view = new GearView(looms, reeds);
    Runnable refresh = () -> {
      looms.refresh();
      reeds.refresh();
    };
    return new Screen(Say.text("Looms"), "looms-mark", Chord.LOOMS, view, refresh, view::search);
  }

  private Screen costsScreen(Work reckoning) {
    CostsView view = new CostsView(purchases, new ValueModel(studio, reckoning, status));
    return new Screen(Say.text("Costs"), "costs-mark", Chord.COSTS, view, view::refresh, view::search);
  }

  private Screen settingsScreen() {
    SettingsModel settings = new SettingsModel(studio, work, status, plans::refresh);
    SettingsView view = new SettingsView(settings, you);
    return new Screen(Say.text("Settings"), "settings-mark", Chord.SETTINGS, view, settings::refresh, view::search);
  }

  private void lookAtPlans() {
    plans.refresh();
    lastPlan.reopen();
  }

  private void lookAhead() {
    counting.restore();
    ahead.refresh();
    onOrder.refresh();
  }

  /** Turns to a plan. */
  void open(String name) {
    window.turnTo(plansScreen);
    plans.open(name);
  }

  /** Turns to a skein on the shelf. */
  void openSkein(String code) {
    window.turnTo(shelfScreen);
    shelf.open(code);
  }

  /** Turns to an entry of the journal. */
  void openEntry(long number) {
    window.turnTo(journalScreen);
    journalView.open(number);
  }

  /** Turns to the purchase with a number. */
  void openPurchase(int number) {
    window.turnTo(costsScreen);
    purchases.open(number);
  }

  private List<Thing> waysAndActs() {
    Stream<Thing> ways = screens.stream().map(screen -> Thing.of(Sort.SCREEN, screen.name(), screen.chord().words(), () -> window.turnTo(screen)));
    Stream<Thing> acts = Stream.of(
        Thing.of(Sort.ACT, Say.text("Receive a skein"), Chord.RECEIVE.words(), this::receive),
        Thing.of(Sort.ACT, Say.text("Take back the last thing done"), Chord.UNDO.words(), undo::ask),
        Thing.of(Sort.ACT, Say.text("Other theme"), Say.text("light or dark, {0}", Chord.OTHER_THEME.words()), window::otherTheme),
        Thing.of(Sort.ACT, Say.text("Show everything larger"), Chord.LARGER.words(), window.enlargement()::larger),
        Thing.of(Sort.ACT, Say.text("Show everything smaller"), Chord.SMALLER.words(), window.enlargement()::smaller),
        Thing.of(Sort.ACT, Say.text("Open the guide"), Chord.GUIDE.words(), window::showGuide));
    return Stream.concat(acts, ways).toList();
  }

  private void takenBack() {
    window.refresh();
    yarnMoved();
    plans.refresh();
  }

  private void costsMoved() {
    shelf.refresh();
    plans.refresh();
  }

  private void orderMoved() {
    lookAhead();
    yarnMoved();
    plans.refresh();
  }

  /** Asks whether anything was written since, by whomever, and shows it. */
  public void lookForNews() {
    news.look();
  }

  private void yarnMoved() {
    shelf.refresh();
    journal.refresh();
  }

  /** Puts into the ledger what was typed and not kept yet, then tells whether all of it is there; for when the window closes. */
  public void keep(Consumer<Boolean> then) {
    boolean named = plansView.commit();
    boolean halfTyped = purchases.halfTyped().get();
    if (halfTyped) {
      window.turnTo(costsScreen);
    }
    plans.keep(kept -> after.keep(found -> then.accept(kept && named && found && !halfTyped)));
  }

  /** Whether something is typed that could not be carried into another window; then the screen is shown on which it is. */
  boolean isBegun() {
    Optional<Screen> at = deeds.isBegun() ? Optional.of(shelfScreen) : plans.beside().isBegun() ? Optional.of(plansScreen)
        : takingBack.isBegun() ? Optional.of(journalScreen) : purchases.isBegun() ? Optional.of(costsScreen) : Optional.empty();
    at.ifPresent(window::turnTo);
    return at.isPresent();
  }

  /** Shows in the settings how the window speaks, where something else was chosen that could not be. */
  void speaksAsBefore() {
    you.showHeld();
  }

  /** How large everything is shown. */
  Enlargement enlargement() {
    return window.enlargement();
  }

  /**
   * Says what goes wrong inside the program, and puts by what is typed then; what was put by at the last fault comes back into its forms.
   *
   * @param open shows a folder
   */
  public void hear(Faults faults, Consumer<Path> open) {
    faults.typedIs(studio.address().text(), this::typed);
    hears.unsubscribe();
    hears = faults.lastProperty().subscribe(told -> window.showFault(told.map(it -> new FaultPane(it, open, () -> putAway(faults)))));
    faults.takeOnce().ifPresent(before -> {
      typing.fill(before.forms());
      status.done(Say.text("What you had typed when Hankbook failed is back in its forms; all of it also lies in {0}.", before.aside()));
    });
  }

  private void putAway(Faults faults) {
    faults.putAway();
    settle(faults);
  }

  /** Puts aside what was put by at a fault, unless a form still holds it; when a fault was read and when the window closes. */
  void settle(Faults faults) {
    faults.settle(typing.isBegun());
  }

  /** What is typed in forms and stands in no ledger. */
  Map<String, Map<String, String>> typed() {
    return typing.texts(window);
  }

  /** Takes the place of another one, which hears no more: what is half typed there is here. */
  void follow(Home before) {
    before.leave();
    typing.fill(before.typed());
    undo.goesOnAfter(before.undo);
  }

  /** Hears no more of what outlives it. */
  private void leave() {
    hears.unsubscribe();
    window.leave();
  }

  /** What stands in the scene, as large as the user likes it. */
  public Parent node() {
    return whole;
  }

  /** Is given the change once the window is to speak another language or in other units: all that stands in it is to be made anew then. */
  void whenOtherwise(Consumer<Runnable> anew) {
    otherwise = anew;
  }

  /** Is given the address of what lies outside of the program, to be shown by the system. */
  void leadsOut(Consumer<String> address) {
    out = address;
  }

  /** Closes the guide, with the window or before there is another one; tells at which page it was open. */
  Optional<String> closeGuide() {
    return guide.close();
  }

  /** Opens the guide at the page of a file. */
  void openGuide(String page) {
    guide.show(page);
  }

  /** Begins as {@link #begin(Scene)} does, then puts the keyboard where it was in the window before. */
  void resume(Scene scene, String at) {
    focus = at;
    begin(scene);
  }

  /** Begins with the screen that was shown last, or with the welcome where the book is blank. */
  public void begin(Scene scene) {
    begin(scene, WelcomeView.fileChooser(window));
    draftChooser = DraftView.fileChooser(window);
    recordChooser = SquaredActs.fileChooser(window);
  }

  void begin(Scene scene, Supplier<Optional<Path>> chooser) {
    this.chooser = chooser;
    draftChooser = chooser;
    recordChooser = _ -> chooser.get();
    window.listenTo(scene, this::receive, undo::ask);
    window.showInstead(new StackPane(Labels.quiet(Say.text("Reading the ledger…"))));
    lookForNews();
    work.run(studio::isBlank, blank -> begin(blank), status::wrong);
  }

  /** Whoever has turned to a screen meanwhile is left there. */
  private void begin(boolean blank) {
    if (blank) {
      showWaysIn();
    } else if (window.showsScreen()) {
      shelf.refresh();
    } else {
      window.turnToLast();
      window.focus(focus);
    }
  }

  private void showWaysIn() {
    WelcomeView welcome = new WelcomeView(new WelcomeModel(studio, work, status, this::toShelf), chooser);
    window.showInstead(welcome);
    welcome.begin();
  }

  private void toShelf() {
    window.turnTo(shelfScreen);
  }

  private void receive() {
    toShelf();
    shelfView.receive();
  }

  /** The end of a long path says most. */
  private static String name(LedgerAddress address) {
    return switch (address) {
      case LedgerAddress.InFile(Path file) -> String.valueOf(file.getFileName());
      case LedgerAddress.AtServer server -> server.text();
    };
  }

  private ShelfView shelfView(Work reckoning, Remembered remembered) {
    return new ShelfView(
        shelf, new SkeinPageModel(studio, work, status), deeds, this::open, receiving, this::showWaysIn, reckoning, remembered);
  }
}
