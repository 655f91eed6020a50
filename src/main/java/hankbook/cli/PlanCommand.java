package hankbook.cli;

import picocli.CommandLine.Command;

/** The commands on the plans of the ledger. */
@Command(
    name = "plan",
    description = "The plans of the ledger.",
    mixinStandardHelpOptions = true,
    synopsisSubcommandLabel = "COMMAND",
    subcommands = {PlanAddCommand.class, PlanDuplicateCommand.class, PlanListCommand.class, PlanQueueCommand.class, PlanShowCommand.class, PlanPutAwayCommand.class})
final class PlanCommand {}
