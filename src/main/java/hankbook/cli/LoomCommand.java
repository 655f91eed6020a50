package hankbook.cli;

import picocli.CommandLine.Command;

/** The commands on the looms of the studio. */
@Command(
    name = "loom",
    description = "The looms of the studio.",
    mixinStandardHelpOptions = true,
    synopsisSubcommandLabel = "COMMAND",
    subcommands = {LoomAddCommand.class, LoomListCommand.class, LoomPutAwayCommand.class})
final class LoomCommand {}
