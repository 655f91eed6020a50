package hankbook.desktop.fault;

import hankbook.desktop.say.Say;
import java.nio.file.Path;
import java.util.function.Consumer;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** What the window says of a fault of its own: that the ledger is whole, where what was typed and where the log lies. It bars nothing else. */
public final class FaultPane extends VBox {
  private final Faults.Told told;

  /**
   * The words on a fault.
   *
   * @param open shows a folder in whatever the machine shows folders with
   * @param putAway is run once it was read
   */
  public FaultPane(Faults.Told told, Consumer<Path> open, Runnable putAway) {
    this.told = told;
    setId("fault-pane");
    getStyleClass().add("fault-pane");
    setAccessibleRole(AccessibleRole.PARENT);
    setAccessibleText(Say.text("Something went wrong inside Hankbook"));
    Button copy = button("copy-fault", Say.text("Copy the report"), this::copy);
    FlowPane acts = new FlowPane(
        button("open-log", Say.text("Show the log"), () -> open.accept(told.log().toAbsolutePath().resolveSibling(""))), copy,
        button("put-fault-away", Say.text("Go on"), putAway));
    acts.getStyleClass().add("fault-acts");
    getChildren().addAll(heading(), words(lost()), words(typed()), words(log()), acts);
  }

  private static Label heading() {
    Label heading = words(Say.text("Something went wrong inside Hankbook"));
    heading.getStyleClass().add("part-heading");
    return heading;
  }

  private static String lost() {
    return Say.text("What stands in the ledger is whole: each entry is written fully or not at all. If an act of yours was under way, the journal shows whether it was written.");
  }

  private String typed() {
    return told.typed()
        .map(file -> Say.text("What you had typed and not entered yet is put by in {0} and comes back into its forms at the next start.", file))
        .orElseGet(() -> Say.text("No form held anything that is not in the ledger."));
  }

  private String log() {
    String where = Say.text("What happened stands in the log {0}; the report is the same for whoever can mend it.", told.log());
    return told.times() == 1 ? where : Say.text("{0} It happened {1} times since Hankbook was started; close the window and open it again if it goes on.", where, told.times());
  }

  private void copy() {
    ClipboardContent report = new ClipboardContent();
    report.putString(told.report());
    Clipboard.getSystemClipboard().setContent(report);
  }

  private static Button button(String id, String words, Runnable act) {
    Button button = new Button(words);
    button.setId(id);
    button.setOnAction(_ -> act.run());
    return button;
  }

  private static Label words(String text) {
    Label label = new Label(text);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    return label;
  }
}
