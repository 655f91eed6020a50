package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.studio.Expect;
import hankbook.studio.ExpectedSkein;
import hankbook.studio.Studio;
import java.time.LocalDate;
import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** The yarn that is ordered and has not come: it comes, it is expected on another day, or it is given up. */
public final class OnOrderModel {
  private final Studio studio;
  private final Expect expect;
  private final Work work;
  private final Status status;
  private final Runnable after;
  private final Latest latest = new Latest();
  private final Act arrive;
  private final Act put;
  private final Act cancel;
  private final TypedDay day = new TypedDay();
  private final StringProperty reason = new SimpleStringProperty("");
  private final ObservableList<ExpectedRow> rows = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<List<ExpectedRow>> chosen = new ReadOnlyObjectWrapper<>(List.of());

  /** @param after what follows whatever was written down */
  public OnOrderModel(Studio studio, Work work, Status status, Runnable after) {
    this.studio = studio;
    this.expect = new Expect(studio);
    this.work = work;
    this.status = status;
    this.after = after;
    arrive = new Act(work);
    put = new Act(work);
    cancel = new Act(work);
    day.textProperty().subscribe(_ -> judge());
    reason.subscribe(_ -> judge());
  }

  /** What is on order, the earliest first. */
  ObservableList<ExpectedRow> rows() {
    return FXCollections.unmodifiableObservableList(rows);
  }

  ReadOnlyObjectProperty<List<ExpectedRow>> chosenProperty() {
    return chosen.getReadOnlyProperty();
  }

  /** Another day for what is chosen. */
  TypedDay day() {
    return day;
  }

  /** Why what is chosen will not come. */
  StringProperty reasonProperty() {
    return reason;
  }

  Act arriveAct() {
    return arrive;
  }

  Act putAct() {
    return put;
  }

  Act cancelAct() {
    return cancel;
  }

  /** Asks the ledger anew. */
  public void refresh() {
    work.run(this::asked, latest.only(rows::setAll), status::wrong);
  }

  private List<ExpectedRow> asked() {
    LocalDate today = studio.today();
    List<ExpectedSkein> all = expect.all();
    return all.stream().map(expected -> ExpectedRow.of(expected, today)).toList();
  }

  /** Chooses skeins; what is asked is another thing then. */
  void choose(List<ExpectedRow> now) {
    if (!now.equals(chosen.get())) {
      chosen.set(List.copyOf(now));
      arrive.renew();
    }
    judge();
  }

  private List<String> codes() {
    return chosen.get().stream().map(ExpectedRow::code).toList();
  }

  /** Takes what is chosen onto the shelf. */
  void arrive() {
    if (arrive.isPossible()) {
      List<String> codes = codes();
      arrive.attempt(id -> expect.arrived(id, codes), () -> {}, () -> done(Say.count(codes.size(), "{1} is on the shelf.", "{1} are on the shelf.", words(codes))), status::wrong);
    }
  }

  /** Expects what is chosen on the day that was typed. */
  void put() {
    if (put.isPossible()) {
      List<String> codes = codes();
      LocalDate due = day.day().orElseThrow();
      String said = Say.count(codes.size(), "{1} is expected on {2} now.", "{1} are expected on {2} now.", words(codes), due);
      put.attempt(_ -> expect.due(codes, due), () -> day.textProperty().set(""), () -> done(said), status::wrong);
    }
  }

  /** Gives up what is chosen. */
  void cancel() {
    if (cancel.isPossible()) {
      List<String> codes = codes();
      String why = reason.get().strip();
      cancel.attempt(_ -> expect.cancel(codes, why), () -> reason.set(""), () -> done(Say.text("{0} will not come.", words(codes))), status::wrong);
    }
  }

  private void done(String what) {
    status.done(what);
    refresh();
    after.run();
  }

  private static String words(List<String> codes) {
    return codes.size() <= 3 ? String.join(", ", codes) : Say.count(codes.size(), "{0} skein", "{0} skeins");
  }

  private void judge() {
    String none = chosen.get().isEmpty() ? Say.text("Choose what it is about.") : "";
    arrive.judge(none);
    put.judge(none.isEmpty() ? whyNoDay() : none);
    cancel.judge(none.isEmpty() && reason.get().isBlank() ? Say.text("Say why it will not come.") : none);
  }

  private String whyNoDay() {
    String unread = day.textProperty().get().isBlank() ? Say.text("Type the day.") : day.messageProperty().get();
    return day.day().map(due -> due.isBefore(studio.today()) ? Say.text("That day is past.") : "").orElse(unread);
  }
}
