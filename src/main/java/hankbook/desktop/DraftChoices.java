package hankbook.desktop;

import hankbook.exchange.WeaveUse;
import hankbook.plan.Need.Role;
import hankbook.studio.DraftColour;
import hankbook.studio.DraftPreview;
import hankbook.yarn.NearestYarn;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** The yarns for the colours of a draft: what is proposed for each, and what the weaver took. */
final class DraftChoices {
  private final Runnable changed;
  private final ObservableList<DraftChoice> all = FXCollections.observableArrayList();
  private final ObservableList<DraftChoice> seen = FXCollections.unmodifiableObservableList(all);

  /** @param changed is run whenever a yarn is taken or another is chosen */
  DraftChoices(Runnable changed) {
    this.changed = changed;
  }

  /** One for each colour on each side. */
  ObservableList<DraftChoice> all() {
    return seen;
  }

  void clear() {
    all.clear();
  }

  /** Takes every yarn that is proposed. */
  void takeAll() {
    all.forEach(DraftChoice::take);
  }

  /** For how many colours a yarn is only proposed. */
  long open() {
    return all.stream().filter(choice -> !choice.takenProperty().get()).count();
  }

  /** The yarn for each, taken or proposed. */
  Map<WeaveUse, YarnColour> yarns() {
    Map<WeaveUse, YarnColour> yarns = new HashMap<>();
    all.forEach(choice -> yarns.put(choice.use(), choice.yarnProperty().get().yarn()));
    return yarns;
  }

  /**
   * Proposes anew. What was taken stays so, as long as it is among what is proposed from.
   *
   * @param only skeins of this yarn come into question, where it is given
   */
  void propose(DraftPreview preview, List<Skein> shelf, Optional<String> only) {
    Map<WeaveUse, DraftYarn> before = new HashMap<>();
    all.stream().filter(choice -> choice.takenProperty().get()).forEach(choice -> before.put(choice.use(), choice.yarnProperty().get()));
    List<Skein> offered = shelf.stream().filter(skein -> only.filter(yarn -> !yarn.equals(skein.yarn().yarn())).isEmpty()).toList();
    List<DraftChoice> proposed = preview.uses().stream().map(use -> choice(use, preview.colour(use), offered)).toList();
    for (DraftChoice choice : proposed) {
      Optional.ofNullable(before.get(choice.use())).filter(choice.yarns()::contains).ifPresent(choice::choose);
      choice.takenProperty().subscribe(_ -> changed.run());
      choice.yarnProperty().subscribe(_ -> changed.run());
    }
    all.setAll(proposed);
  }

  /** The nearest first, then those of which the colour is not known, then none. */
  private static DraftChoice choice(WeaveUse use, DraftColour colour, List<Skein> offered) {
    List<DraftYarn> yarns = new ArrayList<>(colour.nearest().stream().map(DraftYarn::of).toList());
    Set<YarnColour> seen = new LinkedHashSet<>(colour.nearest().stream().map(NearestYarn::yarn).toList());
    offered.stream().filter(skein -> seen.add(skein.yarn())).forEach(skein -> yarns.add(DraftYarn.unseen(skein)));
    yarns.add(DraftYarn.later(colour.mark()));
    return new DraftChoice(colour.mark(), use, use.role() == Role.WARP ? colour.ends() : colour.picks(), yarns);
  }
}
