package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.gear.Loom;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.measure.Unreadable;
import hankbook.reckon.Findings;
import hankbook.reckon.Offer;
import hankbook.studio.Learnt;
import hankbook.studio.Looms;
import hankbook.studio.NotDone;
import hankbook.studio.Studio;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Looms as they are typed and shown. A field is judged as a loom itself would judge it, the others being good. */
final class LoomKind implements GearKind<Loom> {
  private static final Loom GOOD = new Loom("loom", Length.metres(1), Length.ZERO, 1);

  private final Looms looms;
  private final Learnt learnt;

  LoomKind(Studio studio) {
    looms = new Looms(studio);
    learnt = new Learnt(studio);
  }

  @Override
  public String words() {
    return Say.text("loom");
  }

  @Override
  public String several() {
    return Say.text("looms");
  }

  @Override
  public String word() {
    return "loom";
  }

  @Override
  public List<GearField> fields() {
    return List.of(
        new GearField("name", Say.text("Name"), Say.text("Window loom")), new GearField("width", Say.text("Weaving width"), "120 cm"),
            new GearField("waste", Say.text("Loom waste"), "70 cm"),
        new GearField("shafts", Say.text("Shafts"), "8"));
  }

  @Override
  public Optional<Loom> read(GearReading reading) {
    Optional<String> name = reading.wanted("name", text -> new Loom(text, GOOD.width(), GOOD.waste(), GOOD.shafts()).name());
    Optional<Length> width = reading.wanted("width", text -> new Loom(GOOD.name(), Length.parse(text), GOOD.waste(), GOOD.shafts()).width());
    Optional<Length> waste = reading.wanted("waste", text -> new Loom(GOOD.name(), GOOD.width(), Length.parse(text), GOOD.shafts()).waste());
    Optional<Integer> shafts = reading.wanted("shafts", text -> new Loom(GOOD.name(), GOOD.width(), GOOD.waste(), shafts(text)).shafts());
    return name.flatMap(named -> width.flatMap(wide -> waste.flatMap(lost -> shafts.map(many -> new Loom(named, wide, lost, many)))));
  }

  private static int shafts(String text) {
    if (!text.matches("\\d{1,3}")) {
      throw new Unreadable(text, "a number of shafts such as 8");
    }
    return Integer.parseInt(text);
  }

  @Override
  public Map<String, String> texts(Loom loom) {
    return Map.of("name", loom.name(), "width", loom.width().toString(), "waste", loom.waste().print(LengthUnit.CENTIMETRE, 2), "shafts", Integer.toString(loom.shafts()));
  }

  @Override
  public List<Loom> all() {
    return looms.all();
  }

  @Override
  public String learntCaption() {
    return Say.text("Waste as learnt");
  }

  @Override
  public List<GearRow<Loom>> rows() {
    Findings findings = learnt.all();
    return all().stream().map(loom -> row(loom, Learnt.waste(findings, loom.name()).map(Offer::new))).toList();
  }

  private GearRow<Loom> row(Loom loom, Optional<Offer> wasted) {
    String words = wasted.map(offer -> Say.count(offer.finding().count(), "{1} from {0} plan", "{1} from {0} plans", Wording.phrase(offer.which().unit().inFull(offer.value())))).orElse("");
    Optional<Loom> other = wasted.map(offer -> new Loom(loom.name(), loom.width(), Length.parse(offer.text()), loom.shafts())).filter(as -> !as.equals(loom));
    return new GearRow<>(loom, texts(loom), words,
        other.map(as -> new GearRow.AsLearnt<>(as, Say.text("Take {0} over as the waste of {1}", wasted.orElseThrow().words(), loom.name()))));
  }

  @Override
  public void add(Loom loom, boolean replace) throws NotDone {
    looms.add(loom, replace);
  }

  @Override
  public void putAway(String name) throws NotDone {
    looms.putAway(name);
  }
}
