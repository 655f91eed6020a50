package hankbook.reckon;

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
        times.put(kind, new Found<>(time.dividedBy(done.count()), words(time) + " for " + done.words()));
      }
    });
    return times;
  }

  private record Done(long count, String words) {
    static Done of(boolean counted, long count, String one) {
      return new Done(count, count + " " + one + (count == 1 ? "" : "s") + (counted ? "" : " as planned"));
    }
  }

  private static Done done(WorkKind.Per per, Made made, Making making) {
    WarpAsWound warp = made.actuals().warp();
    ClothAsWoven cloth = made.actuals().cloth();
    return switch (per) {
      case END -> Done.of(warp.ends().isPresent(), making.ends(), "end");
      case PICK -> Done.of(cloth.picks().isPresent(), cloth.picks().orElseGet(making::picks), "pick");
      case PIECE -> cloth.pieces().isEmpty() && made.plan().pieces().isEmpty()
          ? new Done(made.plan().toFinish(), "all of the cloth, since no pieces are planned")
          : Done.of(cloth.pieces().isPresent(), cloth.pieces().orElseGet(made.plan()::toFinish), "piece");
    };
  }

  private static String words(Duration time) {
    return time.toHours() + " h " + time.toMinutesPart() + " min";
  }
}
