package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.measure.Length;
import hankbook.studio.Grists;
import hankbook.studio.NotDone;
import hankbook.studio.SampleStudio;
import hankbook.studio.Shelf;
import hankbook.studio.ShelfSkein;
import hankbook.studio.Studio;
import hankbook.yarn.Doubts;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.TitledPane;
import org.junit.jupiter.api.Test;

/** What a weaver does at the shelf with a reel and a balance. S005 came with 54 g of 16/2 cotton, 731.5323 m. */
class MeasuringTest extends ScreenTest {
  @Override
  void fill(Studio blank) throws NotDone {
    SampleStudio.fill(blank);
  }

  @Test
  void aSkeinIsReceivedByItsTurnsAndTheLabelThatDisagreesIsTold() {
    clickOn("#open-receive");
    clickOn("#receive-yarn").write("Tussock").clickOn("#receive-colour").write("Peat").clickOn("#receive-length").write("950 m");
    assertThat(textOf("#reading")).isEqualTo("Counts with 950.0 m, by its label.");
    clickOn("#receive-turns").write("800");
    settle();
    assertThat(lookup("Still wanted: the circumference of the reel that the turns were counted on.").query().isVisible()).isTrue();
    clickOn("#receive-reel").write("1 m");
    settle();
    assertThat(textOf("#reading")).isEqualTo("Counts with 800.0 m, by its turns.");
    assertThat(textOf("#sureness")).isEqualTo("± 8.0 m, as turns are.");
    assertThat(textOf("#disagreement")).isEqualTo("Over a tenth apart: the label says 950.0 m.");
    clickOn("#receive");
    settle();
    assertThat(skein("S059").free()).isEqualTo(Length.metres(800));
    assertThat(skein("S059").uncertainty(Doubts.DEFAULT)).isEqualTo(Length.metres(8));
  }

  @Test
  void aSampleIsWeighedAndTheSkeinWeighedAgainByIt() throws NotDone {
    choose("S005");
    clickOn("#weigh-sample").clickOn("#sample-length").write("10 m").clickOn("#sample-mass").write("0.70 g");
    settle();
    assertThat(textOf("#sample-found")).isEqualTo("70 tex ± 0.65 %");
    assertThat(lookup("#sample-division").queryAs(TextInputControl.class).getPromptText()).isEqualTo("0.01 g");
    assertThat(textOf("#sample-recounts")).contains("S005 Woad: 771.4 m, 39.9 m more than the ledger took it for");
    interact(() -> lookup("#use-grist").queryButton().fire());
    settle();
    assertThat(new Grists(studio()).of("Skerry 16/2").sample()).isPresent();
    assertThat(textOf("#sample-rules")).isEqualTo("Skerry 16/2: 70 tex ± 0.65 %, by 10 m that weighed 0.7 g.");
    assertThat(lookup("By its yarn's own grist it held 39.9 m more than the ledger took it for: weigh it again.").query().isVisible()).isTrue();
    interact(() -> lookup("#measure-again").queryAs(TitledPane.class).setExpanded(true));
    clickOn("#recount-by-weight").clickOn("#recount-gross").write("92 g");
    settle();
    assertThat(lookup("#recount-tare").queryAs(TextInputControl.class).getText()).isEqualTo("38 g");
    assertThat(textOf("#recount-after")).isEqualTo("771.4 m ± 7.7 m");
    assertThat(textOf("#recount-reading")).isEqualTo("39.9 m more than the ledger says. It is known surer then.");
    interact(() -> lookup("#recount").queryButton().fire());
    settle();
    assertThat(skein("S005").free()).isEqualTo(Length.parse("771.4286 m"));
    assertThat(skein("S005").skein().gristDisagrees()).isFalse();
    interact(() -> lookup("#forget-grist").queryButton().fire());
    settle();
    assertThat(new Grists(studio()).of("Skerry 16/2").sample()).isEmpty();
  }

  @Test
  void aSkeinIsCountedAgainOnTheReelAndKnownByThatAfterwards() {
    choose("S001");
    clickOn("#measure-again").clickOn("#recount-by-turns").clickOn("#recount-turns").write("700").clickOn("#recount-reel").write("2 m");
    settle();
    assertThat(textOf("#recount-after")).isEqualTo("1\u202F400.0 m ± 14.0 m");
    interact(() -> lookup("#recount").queryButton().fire());
    settle();
    assertThat(skein("S001").free()).isEqualTo(Length.metres(1400));
    assertThat(lookup("by its turns, 2026-03-14").queryAs(Labeled.class).isVisible()).isTrue();
    assertThat(lookup("1\u202F400.0 m ± 14.0 m").tryQuery()).isPresent();
  }

  private void choose(String code) {
    clickOn("#search-shelf").write(code);
    settle();
    interact(() -> lookup("#skeins").queryTableView().getSelectionModel().selectFirst());
    settle();
  }

  private ShelfSkein skein(String code) {
    return new Shelf(studio()).skein(code).orElseThrow();
  }
}
