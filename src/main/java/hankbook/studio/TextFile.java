package hankbook.studio;

import hankbook.exchange.BadInput;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A file someone named, as text. */
public final class TextFile {
  private TextFile() {}

  /**
   * Reads it, without the mark that some programs put before a text in UTF-8.
   *
   * @throws BadInput if it is not there, or no text in UTF-8
   */
  public static String read(Path file) throws BadInput {
    try {
      String text = Files.readString(file, StandardCharsets.UTF_8);
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException notText) {
      throw new BadInput(file + ": found bytes that are not UTF-8, wanted a text file in UTF-8");
    } catch (IOException missing) {
      throw unread(file);
    }
  }

  /** Why a file could not be read. */
  static BadInput unread(Path file) {
    String found = Files.isDirectory(file) ? "a folder" : Files.exists(file) ? "a file that cannot be read" : "no such file";
    return new BadInput(file + ": found " + found + ", wanted a file to read");
  }
}
