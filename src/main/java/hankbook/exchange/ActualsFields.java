package hankbook.exchange;

import hankbook.measure.Arithmetic;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.Percentage;
import hankbook.measure.Unreadable;
import hankbook.plan.WorkKind;
import hankbook.reckon.Bundle;
import hankbook.reckon.ClothAsWoven;
import hankbook.reckon.Leftover;
import hankbook.reckon.WarpAsWound;
import hankbook.yarn.Turns;
import hankbook.yarn.Weighing;
import hankbook.yarn.YarnColour;
import java.time.Duration;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;

/** Reads the parts of an actuals file. */
record ActualsFields(JsonFields root) {
  private static final String WANTED_LEFT = "what is left: left, or gross and tare, or turns and reel, or usedUp yes; one of them";

  List<Leftover> leftovers() {
    return root.list(ActualsPart.LEFTOVERS.key(), ActualsPart.LEFTOVERS.known()).stream().map(ActualsFields::leftover).toList();
  }

  private static Leftover leftover(JsonFields fields) {
    String skein = fields.required("skein", "the code of a skein", String::strip);
    return fields.built(() -> new Leftover(skein, left(new SaidFields(fields))));
  }

  private static Leftover.Left left(SaidFields said) {
    Optional<Leftover.Left> length = said.length("left").map(Leftover.Left.OfLength::new);
    Optional<Leftover.Left> usedUp = said.text("usedUp", PlanFile::yesOrNo).filter(yes -> yes).map(_ -> new Leftover.Left.UsedUp());
    List<Leftover.Left> ways = List.of(length, weighed(said), counted(said), usedUp).stream().flatMap(Optional::stream).toList();
    if (ways.size() != 1) {
      throw new Unreadable(ways.isEmpty() ? "" : "more than one", WANTED_LEFT);
    }
    return ways.getFirst();
  }

  private static Optional<Leftover.Left> weighed(SaidFields said) {
    Optional<Mass> gross = said.text("gross", Mass::parse);
    Optional<Mass> tare = said.text("tare", Mass::parse);
    Optional<Percentage> regain = said.text("regain", Percentage::parse);
    if (gross.isEmpty() && tare.isEmpty() && regain.isEmpty()) {
      return Optional.empty();
    }
    if (gross.isEmpty() || tare.isEmpty()) {
      throw new Unreadable(gross.isPresent() ? "gross alone" : tare.isPresent() ? "tare alone" : "regain alone", "both gross and tare, the tare 0 g where it is wound on nothing");
    }
    return Optional.of(new Leftover.Left.Weighed(new Weighing(gross.get(), tare.get(), regain)));
  }

  private static Optional<Leftover.Left> counted(SaidFields said) {
    Optional<Integer> turns = said.text("turns", Arithmetic::count);
    Optional<Length> reel = said.length("reel");
    if (turns.isPresent() != reel.isPresent()) {
      throw new Unreadable(turns.isPresent() ? "turns alone" : "reel alone", "both turns and reel");
    }
    return turns.map(count -> new Leftover.Left.Counted(new Turns(count, reel.orElseThrow())));
  }

  List<Bundle> bundles(ActualsPart part) {
    return root.list(part.key(), part.known()).stream().filter(ActualsFields::saysAnything).map(ActualsFields::bundle).toList();
  }

  /** A row of a form that was left as it was. */
  private static boolean saysAnything(JsonFields fields) {
    return ActualsPart.THRUMS.keys().stream().anyMatch(new SaidFields(fields)::says);
  }

  private static Bundle bundle(JsonFields fields) {
    SaidFields said = new SaidFields(fields);
    boolean named = said.says("yarn") || said.says("colour");
    Optional<YarnColour> yarn = named ? Optional.of(PlanFile.yarn(fields)) : Optional.empty();
    Optional<Length> length = said.length("length");
    Optional<Mass> mass = said.text("mass", Mass::parse);
    return fields.built(() -> {
      if (length.isPresent() == mass.isPresent()) {
        throw new Unreadable(length.isPresent() ? "both length and mass" : "", "either length or mass");
      }
      return new Bundle(yarn, length.<Bundle.Amount>map(Bundle.Amount.OfLength::new).orElseGet(() -> new Bundle.Amount.OfMass(mass.orElseThrow())));
    });
  }

  WarpAsWound warp() {
    JsonFields fields = root.object(ActualsPart.WARP.key(), ActualsPart.WARP.known());
    SaidFields said = new SaidFields(fields);
    return fields.built(() -> new WarpAsWound(
        said.length("length"), said.count("ends"), said.count("broken"), said.length("loomWaste"), said.length("sampling"), said.length("widthInReed")));
  }

  ClothAsWoven cloth() {
    JsonFields fields = root.object(ActualsPart.CLOTH.key(), ActualsPart.CLOTH.known());
    SaidFields said = new SaidFields(fields);
    OptionalInt picks = said.count("picks");
    return fields.built(() -> new ClothAsWoven(
        said.length("lengthOnLoom"), said.length("lengthOffLoom"), said.length("lengthFinished"), said.length("widthOnLoom"), said.length("widthOffLoom"),
        said.length("widthFinished"), picks.isPresent() ? OptionalLong.of(picks.getAsInt()) : OptionalLong.empty(), said.count("pieces")));
  }

  Map<WorkKind, Duration> times() {
    SaidFields said = new SaidFields(root.object(ActualsPart.HOURS.key(), ActualsPart.HOURS.known()));
    Map<WorkKind, Duration> times = new EnumMap<>(WorkKind.class);
    for (WorkKind kind : WorkKind.values()) {
      said.text(kind.key(), WorkTime::parse).ifPresent(time -> times.put(kind, time));
    }
    return times;
  }
}
