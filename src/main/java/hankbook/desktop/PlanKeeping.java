package hankbook.desktop;

import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import hankbook.studio.NotDone;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/** Puts what was entered into the ledger, and holds on to what the ledger would not take, so that nothing typed is lost. */
final class PlanKeeping {
  private static final PlanField NAME = PlanField.of(PlanPart.PLAN, "name");

  private final PlanDesk desk;
  private final Work work;
  private final Consumer<Exception> wrong;
  private final Map<KeptCopy, PlanDraft> held = new LinkedHashMap<>();
  private final ReadOnlyStringWrapper conflict = new ReadOnlyStringWrapper("");
  private Optional<KeptCopy> open = Optional.empty();
  private PlanDraft sent = PlanDraft.BLANK;
  private int underWay;

  PlanKeeping(PlanDesk desk, Work work, Consumer<Exception> wrong) {
    this.desk = desk;
    this.work = work;
    this.wrong = wrong;
  }

  /** Why the ledger would not take the open plan as it was entered, or empty. */
  ReadOnlyStringProperty conflictProperty() {
    return conflict.getReadOnlyProperty();
  }

  /** What the ledger has of the open plan. */
  Optional<KeptCopy> open() {
    return open;
  }

  /** The plans of which something entered is not in the ledger yet. */
  Set<String> held() {
    return held.keySet().stream().map(KeptCopy::name).collect(Collectors.toSet());
  }

  /** Opens a plan; gives what is held for it, else what is kept. */
  PlanDraft open(KeptCopy fresh) {
    KeptCopy copy = held.keySet().stream().filter(earlier -> earlier.name().equals(fresh.name())).findFirst().orElse(fresh);
    open = Optional.of(copy);
    sent = copy.draft();
    conflict.set("");
    return Optional.ofNullable(held.remove(copy)).orElse(copy.draft());
  }

  /** Opens what is kept, whatever was entered instead. */
  PlanDraft giveIn(KeptCopy fresh) {
    held.keySet().removeIf(earlier -> earlier.name().equals(fresh.name()));
    return open(fresh);
  }

  /** Leaves the open plan; what the ledger would not take of it is held. */
  void leave(PlanDraft entered) {
    Optional<KeptCopy> left = open;
    boolean refused = !conflict.get().isEmpty();
    open = Optional.empty();
    conflict.set("");
    if (refused) {
      left.ifPresent(copy -> held.put(copy, entered));
    } else if (!sent.equals(entered)) {
      left.ifPresent(copy -> send(copy, entered, () -> copy.keep(desk, entered), () -> {}));
    }
  }

  /** Whether something of the open plan is not surely in the ledger. */
  boolean isUnkept(PlanDraft entered) {
    return open.isPresent() && (underWay > 0 || !conflict.get().isEmpty() || !sent.equals(entered));
  }

  /** Whether all that was ever entered is in the ledger. */
  boolean isAllKept(PlanDraft entered) {
    return underWay == 0 && held.isEmpty() && !isUnkept(entered);
  }

  void keep(PlanDraft entered) {
    if (conflict.get().isEmpty() && !sent.equals(entered)) {
      open.ifPresent(copy -> send(copy, entered, () -> copy.keep(desk, entered), () -> {}));
    }
  }

  /** Keeps what was entered in the place of what someone else has kept meanwhile. */
  void keepInstead(PlanDraft entered) {
    conflict.set("");
    open.ifPresent(copy -> send(copy, entered, () -> copy.keepInstead(desk, entered), () -> {}));
  }

  /** Gives the open plan another name; what is kept meanwhile waits until it is decided which. */
  void rename(String to, PlanDraft entered, Consumer<KeptCopy> then) {
    open.ifPresent(copy -> send(copy, entered, () -> renamed(copy, to, entered), () -> {
      if (isOpen(copy)) {
        sent = sent.with(NAME, copy.name());
      }
      then.accept(copy);
    }));
  }

  private int renamed(KeptCopy copy, String to, PlanDraft entered) throws NotDone {
    copy.rename(desk, to, entered);
    return copy.version();
  }

  private void send(KeptCopy copy, PlanDraft entered, Callable<Integer> errand, Runnable then) {
    sent = entered;
    underWay++;
    work.run(
        errand,
        _ -> {
          underWay--;
          held.remove(copy);
          then.run();
        },
        trouble -> notKept(copy, entered, trouble));
  }

  private void notKept(KeptCopy copy, PlanDraft entered, Exception trouble) {
    underWay--;
    boolean lacking = !entered.with(NAME, copy.name()).equals(copy.draft());
    if (isOpen(copy)) {
      sent = copy.draft();
      conflict.set(trouble instanceof NotDone && lacking ? PlanWords.trouble(trouble) : conflict.get());
    } else if (lacking) {
      held.put(copy, entered);
    }
    wrong.accept(trouble);
  }

  private boolean isOpen(KeptCopy copy) {
    return open.filter(now -> now == copy).isPresent();
  }
}
