package hankbook.cli;

import hankbook.allot.Judgement;
import hankbook.allot.Setting;
import hankbook.exchange.BadInput;
import hankbook.measure.Unreadable;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.Settings;
import org.jspecify.annotations.NullUnmarked;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** By what the ledger's checks judge. */
@NullUnmarked
@Command(name = "settings", description = "What checks judge by, and what work costs: all settings, or one, or set one. They are kept in the ledger.", mixinStandardHelpOptions = true)
final class SettingsCommand extends LedgerCommand {
  @Parameters(index = "0", arity = "0..1", paramLabel = "KEY", description = "Which, such as riskLimit.")
  private String key;

  @Parameters(index = "1", arity = "0..1", paramLabel = "VALUE", description = "What it is to be, such as '2 %%'; default puts it back.")
  private String value;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    Optional<Setting> setting = key == null ? Optional.empty() : Optional.of(Typed.read("KEY", key, Setting::named));
    return ledger().inExisting(studio -> {
      Settings settings = new Settings(studio);
      Judgement judgement = setting.isPresent() && value != null ? set(settings, setting.get()) : settings.judgement();
      out().println(
          ledger().json() ? CertaintyJson.settings(judgement) : setting.map(one -> CertaintyReport.setting(one, judgement)).orElseGet(() -> CertaintyReport.settings(judgement)));
      return ExitCode.DONE;
    });
  }

  private Judgement set(Settings settings, Setting setting) throws BadInput, NotDone {
    try {
      return value.equals("default") ? settings.unset(setting) : settings.set(setting, value);
    } catch (Unreadable unreadable) {
      throw new BadInput(key + ": " + unreadable.getMessage());
    }
  }
}
