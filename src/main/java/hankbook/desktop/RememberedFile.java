package hankbook.desktop;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import net.harawata.appdirs.AppDirsFactory;

/**
 * The file in which the window's looks lie between two starts. No trouble with it is ever told: without it the window opens as on the first day, and nothing of the
 * ledger hangs on it.
 *
 * @param file where it lies; its folder need not be there yet
 */
record RememberedFile(Path file) {
  /** The file in the folder where this user's programs keep their settings on this machine. */
  static RememberedFile standard() {
    return new RememberedFile(Path.of(AppDirsFactory.getInstance().getUserConfigDir("hankbook", null, null), "window.json"));
  }

  /** What is remembered. A broken file is put aside, in the place of one that was put aside before. */
  Remembered read() {
    try {
      Optional<Remembered> found = Remembered.of(Files.readString(file));
      if (found.isEmpty()) {
        putAside();
      }
      return found.orElseGet(Remembered::nothing);
    } catch (CharacterCodingException _) {
      putAside();
      return Remembered.nothing();
    } catch (IOException _) {
      return Remembered.nothing();
    }
  }

  /** Where a broken file is put. */
  Path aside() {
    return file.resolveSibling(file.getFileName() + ".broken");
  }

  private void putAside() {
    try {
      Files.move(file, aside(), StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException _) {
      // It stays where it is and is written over.
    }
  }

  /** Writes a new file and puts it in the place of the old one, so that a whole one is there at every moment; tells whether that went well. */
  boolean write(String json) {
    try {
      Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
      Files.createDirectories(target.resolveSibling(""));
      Path written = Files.createTempFile(target.resolveSibling(""), "window", ".new");
      try {
        Files.writeString(written, json, StandardOpenOption.SYNC);
        Files.move(written, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
      } finally {
        Files.deleteIfExists(written);
      }
      return true;
    } catch (IOException _) {
      return false;
    }
  }
}
