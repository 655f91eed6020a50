package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.studio.Shelf;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.control.ListView;
import org.junit.jupiter.api.Test;

class WelcomeTest extends ScreenTest {
  private String stock = "";

  @Override
  Optional<Path> file() {
    try {
      return Optional.of(Files.writeString(dir.resolve("mine.csv"), stock));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  @Test
  void theSampleStudioFillsABlankBookAndLeadsToTheShelf() {
    clickOn("#begin-sample");
    settle();
    assertThat(textOf("#shelf-summary")).startsWith("58 skeins, ");
    assertThat(textOf("#status")).isEqualTo("The sample studio is on the shelf.");
  }

  @Test
  void everyFaultOfAStockFileIsListedAndNothingOfItIsTaken() {
    stock = "code,yarn,colour,length\n1,Skerry,Chalk,100 m\n2,,Chalk,\"1,5 m\"\n";
    clickOn("#begin-file");
    settle();
    ListView<?> faults = lookup("#faults").queryListView();
    assertThat(faults.getItems()).hasSize(2);
    assertThat(new Shelf(studio()).everySkein()).isEmpty();
    assertThat(lookup("#begin-blank").query().isVisible()).isTrue();
  }

  @Test
  void aGoodStockFileBecomesTheShelf() {
    stock = "code,yarn,colour,length\n1,Skerry,Chalk,100 m\n2,Skerry,Chalk,50 m\n";
    clickOn("#begin-file");
    settle();
    assertThat(textOf("#shelf-summary")).isEqualTo("2 skeins, 150.0 m free");
    assertThat(textOf("#status")).isEqualTo("Received 2 skeins from mine.csv.");
  }

  @Test
  void aBlankBookBeginsWithAnEmptyShelf() {
    clickOn("#begin-blank");
    settle();
    assertThat(textOf("#shelf-summary")).isEqualTo("0 skeins, 0.0 m free");
  }
}
