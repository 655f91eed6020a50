package hankbook.studio;

import hankbook.exchange.BadInput;
import hankbook.exchange.PlanFile;
import hankbook.measure.Length;
import hankbook.measure.Phrase;
import hankbook.store.PlanVersion;
import hankbook.store.Session;
import hankbook.yarn.OneLine;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** The plans that are kept in the ledger. Every version that was ever kept stays there. */
public final class Plans {
  /** The version of a plan that was put away. */
  private static final String PUT_AWAY = "";

  private final Studio studio;

  public Plans(Studio studio) {
    this.studio = studio;
  }

  /** The plans' names, in order. */
  public List<String> names() {
    return List.copyOf(studio.read(Plans::texts).keySet());
  }

  /** A plan as it was last kept, as the text of a plan file. */
  public Optional<String> text(String name) {
    return studio.read(session -> text(session, name));
  }

  /** A plan as it was last kept, and which version of it that is; empty where it was put away or never there. */
  public Optional<KeptPlan> kept(String name) {
    return studio.read(session -> kept(session, name));
  }

  /** Keeps a plan as it is now, finished or not. */
  public void keep(String name, String text) throws NotDone {
    String plan = named(name);
    studio.write(session -> keep(session, plan, text));
  }

  /**
   * Keeps a plan as it is now, finished or not, unless someone else changed it meanwhile.
   *
   * @param expected the version it was made from, 0 for a new plan
   * @return the version it is now
   * @throws NotDone if another version is the newest
   */
  public int keep(String name, String text, int expected) throws NotDone {
    String plan = named(name);
    return studio.write(session -> {
      refuseUnlessNewest(session, plan, expected);
      return keep(session, plan, text);
    });
  }

  /**
   * Takes a plan from a file into the ledger.
   *
   * @param replace whether it may take the place of another of its name
   * @return its name
   * @throws BadInput if the file holds no plan
   * @throws NotDone if there is another plan of its name, and it may not be replaced
   */
  public String add(String file, String text, boolean replace) throws BadInput, NotDone {
    String name = PlanFile.read(file, text).name();
    return studio.write(session -> {
      if (!replace && text(session, name).filter(kept -> !kept.equals(text)).isPresent()) {
        throw NotDone.because("There is a plan {0} already that says something else; replace it outright, or give this one another name.", name);
      }
      keep(session, name, text);
      return name;
    });
  }

  /**
   * Gives a plan another name.
   *
   * @param text the plan under its new name
   * @throws NotDone if the new name is taken, or yarn moves in the ledger under the old one
   */
  public void rename(String from, String to, String text) throws NotDone {
    String name = named(to);
    studio.write(session -> {
      if (text(session, name).isPresent()) {
        throw NotDone.because("There is a plan {0} already; choose another name.", name);
      }
      refuseIfItHasYarn(session, from, Phrase.of("The journal has yarn under {0}, so it keeps its name.", from));
      keep(session, from, PUT_AWAY);
      return keep(session, name, text);
    });
  }

  /**
   * Takes a plan off the list.
   *
   * @throws NotDone if yarn is reserved for it or on its loom
   */
  public void putAway(String name) throws NotDone {
    studio.write(session -> {
      refuseIfItHasYarn(session, name, Phrase.of("The journal has yarn under {0}, so it stays on the list.", name));
      return keep(session, name, PUT_AWAY);
    });
  }

  static String named(String name) throws NotDone {
    String plan = OneLine.of(name);
    if (plan.isEmpty()) {
      throw NotDone.because("A plan needs a name before it can be kept.");
    }
    return plan;
  }

  private static void refuseIfItHasYarn(Session session, String name, Phrase why) throws NotDone {
    if (session.balances().ofPlan(name).lengths().values().stream().anyMatch(Length::isPositive)) {
      throw NotDone.because(why);
    }
  }

  static void refuseUnlessNewest(Session session, String name, int expected) throws NotDone {
    Optional<PlanVersion> newest = session.plans().newest(name);
    int number = newest.map(PlanVersion::number).orElse(0);
    boolean absent = newest.filter(version -> !version.body().equals(PUT_AWAY)).isEmpty();
    if (number != expected && !(absent && expected == 0)) {
      throw NotDone.because(changed(name, newest.map(PlanVersion::author), absent));
    }
  }

  private static Phrase changed(String name, Optional<String> author, boolean absent) {
    if (author.isEmpty()) {
      return absent
          ? Phrase.of("{0} was put away or given another name meanwhile; nothing of it was changed now.", name)
          : Phrase.of("{0} was changed meanwhile; nothing of it was changed now.", name);
    }
    return absent
        ? Phrase.of("{0} was put away or given another name meanwhile, by {1}; nothing of it was changed now.", name, author.get())
        : Phrase.of("{0} was changed meanwhile, by {1}; nothing of it was changed now.", name, author.get());
  }

  int keep(Session session, String name, String text) {
    return session.plans().keep(name, text, studio.author(), studio.now());
  }

  static Optional<String> text(Session session, String name) {
    return kept(session, name).map(KeptPlan::text);
  }

  /** Every plan on the list as it was last kept, by name. */
  static SortedMap<String, String> texts(Session session) {
    SortedMap<String, String> texts = new TreeMap<>();
    session.plans().allNewest().forEach((name, version) -> texts.put(name, version.body()));
    texts.values().removeIf(PUT_AWAY::equals);
    return texts;
  }

  private static Optional<KeptPlan> kept(Session session, String name) {
    return session.plans().newest(name)
        .filter(version -> !version.body().equals(PUT_AWAY))
        .map(version -> new KeptPlan(name, version.body(), version.number(), version.author()));
  }
}
