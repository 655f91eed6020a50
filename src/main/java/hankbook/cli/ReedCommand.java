package hankbook.cli;

import picocli.CommandLine.Command;

/** The commands on the reeds of the studio. */
@Command(
    name = "reed",
    description = "The reeds of the studio.",
    mixinStandardHelpOptions = true,
    synopsisSubcommandLabel = "COMMAND",
    subcommands = {ReedAddCommand.class, ReedListCommand.class, ReedPutAwayCommand.class})
final class ReedCommand {}
