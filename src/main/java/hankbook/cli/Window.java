package hankbook.cli;

import java.util.Optional;

/** Opens the desktop for the command that asks for it. */
public interface Window {
  /**
   * Opens it and stays until it is closed.
   *
   * @param ledger the ledger's address, or an empty text for the standard one
   * @param author who writes in it
   * @return why no window could be opened, or nothing once it is closed
   */
  Optional<String> open(String ledger, String author);
}
