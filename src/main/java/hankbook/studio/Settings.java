package hankbook.studio;

import hankbook.allot.Judgement;
import hankbook.allot.Setting;
import hankbook.measure.Unreadable;
import hankbook.store.Session;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;

/** What the ledger's owner judges by. It is kept in the ledger, so that all who share it judge alike; what it was before stays written there. */
public final class Settings {
  /** Kept for a setting that is not set any more; no setting can be read from it. */
  private static final String NOT_SET = "";

  private final Studio studio;

  public Settings(Studio studio) {
    this.studio = studio;
  }

  /** What holds now. */
  public Judgement judgement() {
    return studio.read(Settings::judgement);
  }

  /**
   * Sets something. Where the content is the default, that is set: it then holds also where earlier plans tell otherwise.
   *
   * @throws Unreadable if the content is of another kind, or outside the range
   */
  public Judgement set(Setting setting, String content) throws NotDone {
    return keep(setting, setting.tidy(content));
  }

  /** Puts the default back: it is as if it had never been set, but for what stays written there. */
  public Judgement unset(Setting setting) throws NotDone {
    return keep(setting, NOT_SET);
  }

  private Judgement keep(Setting setting, String content) throws NotDone {
    return studio.write(session -> {
      if (!content.equals(NOT_SET) || session.settings().all().containsKey(setting.key())) {
        session.settings().set(setting.key(), content, studio.author(), studio.now());
      }
      return judgement(session);
    });
  }

  /** What this program does not know, a later one has set; what is outside the range by now is not used. */
  static Judgement judgement(Session session) {
    Map<String, String> kept = session.settings().all();
    Map<Setting, String> set = new EnumMap<>(Setting.class);
    Arrays.stream(Setting.values()).filter(setting -> kept.containsKey(setting.key()) && isReadable(setting, kept.get(setting.key()))).forEach(
        setting -> set.put(setting, kept.get(setting.key())));
    return new Judgement(set);
  }

  private static boolean isReadable(Setting setting, String content) {
    try {
      return !setting.tidy(content).isEmpty();
    } catch (Unreadable outside) {
      return false;
    }
  }
}
