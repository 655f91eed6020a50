package hankbook.desktop;

import java.io.File;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;

/** Lets the file of a draft be dropped anywhere on the plans; while it hovers above them they show that they take it. */
final class DraftDrop {
  private static final PseudoClass TAKING = PseudoClass.getPseudoClass("taking");

  private DraftDrop() {}

  /** Reads what is dropped on a node. */
  static void offer(Node target, Consumer<Path> read) {
    target.setOnDragOver(drag -> {
      if (dropped(drag).isPresent()) {
        drag.acceptTransferModes(TransferMode.COPY);
        target.pseudoClassStateChanged(TAKING, true);
      }
      drag.consume();
    });
    target.setOnDragExited(_ -> target.pseudoClassStateChanged(TAKING, false));
    target.setOnDragDropped(drag -> {
      Optional<Path> file = dropped(drag);
      file.ifPresent(read);
      target.pseudoClassStateChanged(TAKING, false);
      drag.setDropCompleted(file.isPresent());
      drag.consume();
    });
  }

  private static Optional<Path> dropped(DragEvent drag) {
    return drag.getDragboard().getFiles().stream().map(File::toPath).filter(file -> file.toString().toLowerCase(Locale.ROOT).endsWith(".wif")).findFirst();
  }
}
