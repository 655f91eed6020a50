package hankbook.desktop;

import hankbook.allot.Judgement;
import hankbook.allot.Setting;
import hankbook.desktop.say.Say;
import hankbook.measure.Unreadable;
import hankbook.studio.Settings;
import hankbook.studio.Studio;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What checks judge by, and how the owner of the ledger sets it. */
public final class SettingsModel {
  private static final List<Setting> IN_ORDER = List.of(
      Setting.RISK_LIMIT, Setting.REMNANT, Setting.STAND_IN_GRIST, Setting.SETT, Setting.LABEL, Setting.GRIST, Setting.TURNS, Setting.BALANCE, Setting.HOURLY_RATE,
      Setting.OVERHEAD, Setting.PLAN_OVERHEAD);

  private final Settings settings;
  private final Work work;
  private final Status status;
  private final Runnable after;
  private final Latest latest = new Latest();
  private final List<SettingRow> rows = Stream.concat(IN_ORDER.stream(), Stream.of(Setting.values())).distinct().map(SettingRow::new).toList();

  /** @param after what follows once something is set: plans are reckoned anew */
  public SettingsModel(Studio studio, Work work, Status status, Runnable after) {
    this.settings = new Settings(studio);
    this.work = work;
    this.status = status;
    this.after = after;
  }

  List<SettingRow> rows() {
    return rows;
  }

  /** The row of a setting. */
  SettingRow row(Setting setting) {
    return rows.stream().filter(row -> row.setting() == setting).findFirst().orElseThrow();
  }

  /** Asks the ledger anew; what is being typed stays. */
  public void refresh() {
    work.run(settings::judgement, latest.only(this::show), status::wrong);
  }

  private void show(Judgement judgement) {
    rows.forEach(row -> row.holds(judgement.text(row.setting()), isSet(row, judgement)));
  }

  /** Sets what is typed, where it is another thing and can be read; an empty field lets the default hold. */
  void set(SettingRow row) {
    if (row.isTyped()) {
      try {
        String typed = row.textProperty().get();
        put(row, typed.isBlank() ? Optional.empty() : Optional.of(row.setting().tidy(typed)));
      } catch (Unreadable unreadable) {
        row.say(Wording.wanted(unreadable));
      }
    }
  }

  /** Lets the default hold again. */
  void back(SettingRow row) {
    put(row, Optional.empty());
  }

  private void put(SettingRow row, Optional<String> content) {
    String typed = row.textProperty().get();
    work.run(
        () -> content.isPresent() ? settings.set(row.setting(), content.get()) : settings.unset(row.setting()),
        latest.<Judgement>only(judgement -> taken(row, typed, judgement)),
        trouble -> row.say(Status.words(trouble)));
  }

  private static boolean isSet(SettingRow row, Judgement judgement) {
    return judgement.set().containsKey(row.setting());
  }

  private void taken(SettingRow row, String typed, Judgement judgement) {
    String now = judgement.text(row.setting());
    if (row.textProperty().get().equals(typed)) {
      row.taken(now, isSet(row, judgement));
    }
    show(judgement);
    status.done(
        row.setting().isStanding()
            ? Say.text("{0}: {1}. Plans that are begun from now on have it.", SettingWords.name(row.setting()), SettingWords.said(row.setting(), now))
            : Say.text("{0}: {1}. Plans are reckoned anew.", SettingWords.name(row.setting()), SettingWords.said(row.setting(), now)));
    after.run();
  }
}
