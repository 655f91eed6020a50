package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.ExpectedBy;
import hankbook.studio.NotDone;
import hankbook.studio.PlanMove;
import hankbook.studio.PlanQueue;
import hankbook.studio.QueuePlans;
import hankbook.studio.Studio;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** All plans together. */
@NullUnmarked
@Command(
    name = "queue",
    description = "All plans against all yarns, each from what the plans before it leave: what each lacks if they are made in this order.",
    mixinStandardHelpOptions = true)
final class PlanQueueCommand extends LedgerCommand {
  @Option(names = "--move", paramLabel = "PLAN", description = "Let this plan take its yarn sooner or later, and show what that changes.")
  private String moved;

  @Option(names = "--before", paramLabel = "OTHER", description = "With --move: just before this plan.")
  private String before;

  @Option(names = "--after", paramLabel = "OTHER", description = "With --move: just after this plan.")
  private String after;

  @Option(names = "--try", description = "With --move: show what it would change and keep the order as it is.")
  private boolean tried;

  @Mixin private CountExpected expected;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    ExpectedBy by = expected.expectedBy();
    Optional<PlanMove> move = move();
    return ledger().inExisting(studio -> move.isPresent() ? compare(studio, move.get(), by) : print(new QueuePlans(studio).all(by), Optional.empty()));
  }

  private Optional<PlanMove> move() throws BadInput {
    boolean one = (before == null) != (after == null);
    if (moved == null && (before != null || after != null || tried)) {
      throw new BadInput("plan queue: found --before, --after or --try without --move, wanted the plan to move, too");
    }
    if (moved != null && !one) {
      throw new BadInput("plan queue: found --move with " + (before == null ? "neither --before nor --after" : "both --before and --after") + ", wanted one of them");
    }
    return Optional.ofNullable(moved).map(plan -> new PlanMove(plan.strip(), (before == null ? after : before).strip(), before != null));
  }

  private int compare(Studio studio, PlanMove move, ExpectedBy by) throws NotDone {
    QueuePlans queue = new QueuePlans(studio);
    QueuePlans.Compared compared = tried ? queue.tried(move, by) : queue.moved(move, by);
    return print(compared.after(), Optional.of(compared.changes()));
  }

  private int print(PlanQueue queue, Optional<List<PlanQueue.Change>> changes) {
    out().println(ledger().json() ? QueueJson.of(queue, changes, !tried) : QueueReport.of(queue, changes, !tried));
    return queue.isShort() ? ExitCode.SHORT : ExitCode.DONE;
  }
}
