package hankbook.reckon;

import hankbook.measure.Phrase;
import hankbook.plan.Making;
import hankbook.plan.WorkKind;
import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;

/** What each kind of work took for one end, pick or piece. */
final class TimesTaken {
  private TimesTaken() {}

  static Map<WorkKind, Found<Duration>> of(Made made, Making making) {
    Map<WorkKind, Found<Duration>> times = new EnumMap<>(WorkKind.class);
    made.actuals().times().forEach((kind, time) -> {
      Done done = done(kind.per(), made, making);
      if (done.count() > 0) {
        times.put(kind, new Found<>(time.dividedBy(done.count()), Phrase.of("{0} for {1}", words(time), done.words())));
      }
    });
    return times;
  }

  private record Done(long count, Phrase words) {
    static Done of(boolean counted, Phrase done) {
      return new Done((long) done.values().getFirst(), counted ? done : Phrase.of("{0} as planned", done));
    }
  }

  private static Done done(WorkKind.Per per, Made made, Making making) {
    WarpAsWound warp = made.actuals().warp();
    ClothAsWoven cloth = made.actuals().cloth();
    return switch (per) {
      case END -> Done.of(warp.ends().isPresent(), Phrase.count(making.ends(), "{0} end", "{0} ends"));
      case PICK -> Done.of(cloth.picks().isPresent(), Phrase.count(cloth.picks().orElseGet(making::picks), "{0} pick", "{0} picks"));
      case PIECE -> cloth.pieces().isEmpty() && made.plan().pieces().isEmpty()
          ? new Done(made.plan().toFinish(), Phrase.of("all of the cloth, since no pieces are planned"))
          : Done.of(cloth.pieces().isPresent(), Phrase.count(cloth.pieces().orElseGet(made.plan()::toFinish), "{0} piece", "{0} pieces"));
    };
  }

  private static String words(Duration time) {
    return time.toHours() + " h " + time.toMinutesPart() + " min";
  }
}
