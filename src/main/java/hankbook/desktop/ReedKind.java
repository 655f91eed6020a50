package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.gear.Reed;
import hankbook.measure.Length;
import hankbook.measure.Sett;
import hankbook.studio.NotDone;
import hankbook.studio.Reeds;
import hankbook.studio.Studio;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reeds as they are typed and shown. A field is judged as a reed itself would judge it, the others being good. */
final class ReedKind implements GearKind<Reed> {
  private static final Reed GOOD = new Reed("reed", Reed.dents("10/in"), Optional.empty());

  private final Reeds reeds;

  ReedKind(Studio studio) {
    reeds = new Reeds(studio);
  }

  @Override
  public String words() {
    return Say.text("reed");
  }

  @Override
  public String several() {
    return Say.text("reeds");
  }

  @Override
  public String word() {
    return "reed";
  }

  @Override
  public List<GearField> fields() {
    return List.of(new GearField("name", Say.text("Name"), Say.text("its dents")), new GearField("dents", Say.text("Dents"), "12/in"), new GearField("width", Say.text("Width"), "any"));
  }

  /** A reed without a name of its own is called by its dents. */
  @Override
  public Optional<Reed> read(GearReading reading) {
    Optional<Sett> dents = reading.wanted("dents", text -> new Reed(GOOD.name(), Reed.dents(text), GOOD.width()).dents());
    Optional<String> name = reading.perhaps("name", text -> new Reed(text, GOOD.dents(), GOOD.width()).name()).or(() -> dents.map(Sett::toString));
    Optional<Length> width = reading.perhaps("width", text -> new Reed(GOOD.name(), GOOD.dents(), Optional.of(Length.parse(text))).width().orElseThrow());
    boolean read = reading.whyNot().isEmpty();
    return dents.flatMap(count -> name.map(named -> new Reed(named, count, width))).filter(_ -> read);
  }

  @Override
  public Map<String, String> texts(Reed reed) {
    return Map.of("name", reed.name(), "dents", reed.dents().toString(), "width", reed.width().map(Length::toString).orElse(""));
  }

  @Override
  public List<Reed> all() {
    return reeds.all();
  }

  @Override
  public void add(Reed reed, boolean replace) throws NotDone {
    reeds.add(reed, replace);
  }

  @Override
  public void putAway(String name) throws NotDone {
    reeds.putAway(name);
  }
}
