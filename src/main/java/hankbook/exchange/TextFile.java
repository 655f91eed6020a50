package hankbook.exchange;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads the text of a file that comes from outside. */
public final class TextFile {
  private TextFile() {}

  /**
   * The whole text of a file in UTF-8.
   *
   * @throws BadInput naming the file and why it cannot be read
   */
  public static String read(Path file) throws BadInput {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (CharacterCodingException notText) {
      throw new BadInput(file + ": found bytes that are not UTF-8, wanted a text file in UTF-8");
    } catch (IOException missing) {
      String found = Files.isDirectory(file) ? "a folder" : Files.exists(file) ? "a file that cannot be read" : "no such file";
      throw new BadInput(file + ": found " + found + ", wanted a file to read");
    }
  }
}
