package hankbook.studio;

import hankbook.exchange.BadInput;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** A file that is not there yet. */
final class FreshFile {
  private FreshFile() {}

  /**
   * Writes it.
   *
   * @throws BadInput if there is such a file already, which is kept, or none can be written there
   */
  static void write(Path file, byte[] content) throws BadInput {
    try {
      Files.write(file, content, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    } catch (FileAlreadyExistsException taken) {
      throw new BadInput(file + ": found a file here already, wanted a name that is free");
    } catch (IOException problem) {
      throw new BadInput(file + ": found no way to write here, wanted a folder that takes a file");
    }
  }
}
