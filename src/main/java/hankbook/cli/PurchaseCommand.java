package hankbook.cli;

import picocli.CommandLine.Command;

/** The commands on what was paid. */
@Command(
    name = "purchase",
    description = "What was paid for yarn, with carriage, duty and discount: what each skein cost by it.",
    mixinStandardHelpOptions = true,
    synopsisSubcommandLabel = "COMMAND",
    subcommands = {PurchaseAddCommand.class, PurchaseListCommand.class, PurchaseShowCommand.class, PurchaseCorrectCommand.class, PurchaseTakeBackCommand.class})
final class PurchaseCommand {}
