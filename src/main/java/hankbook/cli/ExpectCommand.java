package hankbook.cli;

import picocli.CommandLine.Command;

/** The commands on yarn that is on order. */
@Command(
    name = "expect",
    description = "Yarn that is ordered and has not come yet.",
    mixinStandardHelpOptions = true,
    synopsisSubcommandLabel = "COMMAND",
    subcommands = {ExpectAddCommand.class, ExpectListCommand.class, ExpectDueCommand.class, ExpectArrivedCommand.class, ExpectCancelCommand.class})
final class ExpectCommand {}
