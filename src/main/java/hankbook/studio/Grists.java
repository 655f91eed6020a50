package hankbook.studio;

import hankbook.store.Session;
import hankbook.yarn.GristSample;
import hankbook.yarn.Skein;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The yarns' own grists, by samples that were weighed. A sample makes what is received or recounted by weight from then on surer and better, and what
 * lies there already surer; the metres that the ledger has of it stay until they are recounted.
 */
public final class Grists {
  private final Studio studio;

  public Grists(Studio studio) {
    this.studio = studio;
  }

  /** Of every yarn that ever was in the ledger, by name. */
  public List<YarnGrist> all() {
    return studio.read(Grists::all);
  }

  /**
   * Of one yarn.
   *
   * @throws NotDone if no skein of it ever was in the ledger
   */
  public YarnGrist of(String yarn) throws NotDone {
    return found(studio.read(Grists::all), yarn);
  }

  /**
   * Lets a sample rule from now on.
   *
   * @throws NotDone if no skein of the yarn ever was in the ledger
   */
  public YarnGrist weigh(String yarn, GristSample sample) throws NotDone {
    return rule(yarn, Optional.of(sample));
  }

  /**
   * Lets the yarn number rule again.
   *
   * @throws NotDone if no skein of the yarn ever was in the ledger
   */
  public YarnGrist forget(String yarn) throws NotDone {
    return rule(yarn, Optional.empty());
  }

  private YarnGrist rule(String yarn, Optional<GristSample> sample) throws NotDone {
    return studio.write(session -> {
      YarnGrist before = found(all(session), yarn);
      if (before.sample().equals(sample)) {
        return before;
      }
      session.gristSamples().add(before.yarn(), sample, studio.author(), studio.now());
      return found(all(session), yarn);
    });
  }

  /** A skein with the grist of its yarn as it was weighed, by which its weight is turned into metres. */
  static Skein known(Session session, Skein skein) {
    return skein.withSample(session.gristSamples().of(skein.yarn().yarn()));
  }

  private static YarnGrist found(List<YarnGrist> grists, String yarn) throws NotDone {
    return grists.stream()
        .filter(grist -> grist.yarn().equals(yarn.strip()))
        .findFirst()
        .orElseThrow(() -> NotDone.because("There is no skein of the yarn {0} in the ledger; give the yarn's name alone, as shelf shows it, without the colour.", yarn.strip()));
  }

  private static List<YarnGrist> all(Session session) {
    Map<String, GristSample> samples = session.gristSamples().all();
    Map<String, List<ShelfSkein>> byYarn =
        Shelf.everySkein(session).stream().collect(Collectors.groupingBy(held -> held.skein().yarn().yarn(), TreeMap::new, Collectors.toList()));
    return byYarn.entrySet().stream().map(of -> grist(of.getKey(), Optional.ofNullable(samples.get(of.getKey())), of.getValue())).toList();
  }

  private static YarnGrist grist(String yarn, Optional<GristSample> sample, List<ShelfSkein> skeins) {
    List<Skein> toRecount = skeins.stream().filter(held -> !held.isUsedUp()).map(ShelfSkein::skein).filter(Skein::gristDisagrees).toList();
    List<Skein> unmeasured = skeins.stream().map(ShelfSkein::skein).filter(skein -> !skein.isMeasured()).map(skein -> skein.withSample(sample)).filter(Skein::isMeasured).toList();
    return new YarnGrist(yarn, skeins.stream().flatMap(held -> held.skein().grist().stream()).distinct().toList(), sample, toRecount, unmeasured);
  }
}
