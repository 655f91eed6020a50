package hankbook.studio;

import hankbook.exchange.BadInput;
import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import hankbook.exchange.WeaveDraft;
import hankbook.exchange.WeavingFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Brings in a draft that was drawn elsewhere as the beginning of a plan. {@link DraftPreview} shows it before. */
public final class BringInDraft {
  private final Studio studio;

  public BringInDraft(Studio studio) {
    this.studio = studio;
  }

  /**
   * Reads a weaving file.
   *
   * @throws BadInput if it is not there, too large, or no such file
   */
  public static WeaveDraft read(Path file) throws BadInput {
    try (InputStream content = Files.newInputStream(file)) {
      return WeavingFile.read(file.toString(), content.readNBytes(WeavingFile.MOST_BYTES + 1));
    } catch (IOException missing) {
      throw TextFile.unread(file);
    }
  }

  /**
   * Keeps a plan that a draft began, finished or not.
   *
   * @return its name
   * @throws NotDone if there is a plan of its name already
   */
  public String keep(PlanDraft plan) throws NotDone {
    String name = Plans.named(plan.text(PlanField.of(PlanPart.PLAN, "name")));
    return studio.write(session -> {
      if (Plans.text(session, name).isPresent()) {
        throw NotDone.because("There is a plan {0} already; give this one another name.", name);
      }
      new Plans(studio).keep(session, name, plan.json());
      return name;
    });
  }

  /**
   * Writes a plan that a draft began into a file of its own.
   *
   * @throws BadInput if there is a file of that name already, or none can be written
   */
  public static void write(PlanDraft plan, Path file) throws BadInput {
    FreshFile.write(file, (plan.json() + System.lineSeparator()).getBytes(StandardCharsets.UTF_8));
  }
}
