package hankbook.cli;

import hankbook.cost.CostWish;
import hankbook.exchange.BadInput;
import hankbook.exchange.CostFile;
import hankbook.exchange.WhatIfFile;
import hankbook.exchange.WhatIfFile.WhatIf;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.CostPlan;
import hankbook.studio.CostedPlan;
import hankbook.studio.ExpectedBy;
import hankbook.studio.NotDone;
import hankbook.studio.Studio;
import hankbook.studio.TextFile;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What a plan costs. */
@NullUnmarked
@Command(name = "cost", description = "What does the plan cost, in yarn, work and overheads, and what is its price?", mixinStandardHelpOptions = true)
final class CostCommand implements Callable<Integer> {
  @Mixin private PlanAndStock asked;

  @Mixin private CostOptions options;

  @Option(names = "--what-if", paramLabel = "FILE.json", description = "Lay another cost beside it: of another plan, or of a file with other prices, rates, times or price.")
  private Path whatIf;

  @Option(names = "--skeins", description = "Also say what each skein's yarn costs.")
  private boolean skeins;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    CostWish wish = options.wish();
    Optional<WhatIf> other = whatIf == null ? Optional.empty() : Optional.of(WhatIfFile.read(whatIf.toString(), TextFile.read(whatIf)));
    return asked.ask(new PlanAndStock.Asked() {
      @Override
      public int files(Path plan, Path stock) throws BadInput {
        return print(CostPlan.files(plan, stock, wish), other);
      }

      @Override
      public int named(Studio studio, String plan, ExpectedBy by) throws BadInput {
        return print(new CostPlan(studio).named(plan, by, wish), other);
      }
    });
  }

  private int print(CostedPlan now, Optional<WhatIf> other) throws BadInput {
    String page = other.isPresent() ? page(now, now.instead(whatIf.toString(), other.get().plan(), other.get().wish())) : page(now);
    spec.commandLine().getOut().println(page);
    if (!asked.json()) {
      ExpectedReport.counted(now.answer().counted()).forEach(spec.commandLine().getOut()::println);
    }
    return now.answer().check().isShort() ? ExitCode.SHORT : ExitCode.DONE;
  }

  private String page(CostedPlan now) {
    return asked.json() ? CostFile.write(written(now)) : CostReport.of(now, skeins);
  }

  private String page(CostedPlan now, CostedPlan then) throws BadInput {
    return asked.json() ? CostFile.write(written(now), written(then), now.beside(then)) : CostReport.of(now, skeins) + CostsBeside.of(now, then);
  }

  private static CostFile.Costed written(CostedPlan costed) {
    return new CostFile.Costed(costed.cost(), costed.price(), costed.spent());
  }
}
