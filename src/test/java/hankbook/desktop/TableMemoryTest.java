package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableColumn.SortType;
import javafx.scene.control.TableView;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.framework.junit5.ApplicationTest;
import org.testfx.util.WaitForAsyncUtils;

class TableMemoryTest extends ApplicationTest {
  private final Remembered remembered = Remembered.nothing();
  private final StackPane root = new StackPane();

  @Override
  public void start(Stage stage) {
    stage.setScene(new Scene(root, 800, 500));
    stage.show();
  }

  @Test
  void columnsAndSortAreAsTheyWereLeftOnTheNextStart() {
    TableView<String> first = shown();
    interact(() -> {
      first.getColumns().setAll(List.of(first.getColumns().get(2), first.getColumns().get(0), first.getColumns().get(1)));
      first.getColumns().get(1).setPrefWidth(310);
      first.getColumns().get(0).setSortType(SortType.DESCENDING);
      first.getSortOrder().setAll(List.of(first.getColumns().get(0)));
    });
    interact(() -> first.getContextMenu().show(first, 10, 10));
    clickOn("Show “B”");
    List<Double> widths = first.getVisibleLeafColumns().stream().map(TableColumn::getWidth).toList();

    TableView<String> next = shown();
    assertThat(names(next)).containsExactly("C", "A", "B");
    assertThat(next.getColumns().get(2).isVisible()).isFalse();
    assertThat(next.getItems()).containsExactly("three", "two", "one");
    assertThat(next.getSortOrder()).containsExactly(next.getColumns().get(0));
    for (int column = 0; column < widths.size(); column++) {
      assertThat(next.getVisibleLeafColumns().get(column).getWidth()).isCloseTo(widths.get(column), within(2.0));
    }
  }

  @Test
  void aColumnThatIsDraggedWiderIsNoted() {
    TableView<String> table = shown();
    Node head = table.lookup(".column-header-background");
    drag(head.localToScreen(table.getColumns().getFirst().getWidth() - 1, 8)).dropBy(90, 0);
    WaitForAsyncUtils.waitForFxEvents();
    TableLook look = remembered.get("table letters", TableLook.class).orElseThrow();
    assertThat(look.columns().getFirst().width()).isEqualTo((int) Math.round(table.getColumns().getFirst().getWidth())).isGreaterThan(300);
  }

  @Test
  void aColumnThatGivesWayToRoomIsNotCountedAsPutAway() {
    TableView<String> table = shown();
    interact(() -> {
      GivingWay.below(5000, table, table.getColumns().get(1));
      table.getSortOrder().setAll(List.of(table.getColumns().get(0)));
    });
    assertThat(table.getColumns().get(1).isVisible()).isFalse();
    assertThat(remembered.get("table letters", TableLook.class).orElseThrow().columns()).allMatch(TableLook.Column::shown);
  }

  @Test
  void columnsThatAreNewKeepTheirPlacesAndThoseThatAreGoneAreNoFault() {
    TableLook look = new TableLook(List.of(new TableLook.Column("C", 90, true), new TableLook.Column("Gone", 90, true), new TableLook.Column("A", 90, true)), List.of(new TableLook.Sorted("Gone", true)));
    assertThat(look.inOrder(List.of("A", "B", "C"), name -> name)).containsExactly("C", "B", "A");
    remembered.put("table letters", look);
    assertThat(names(shown())).containsExactly("C", "B", "A");
  }

  @Test
  void aTableInWhichEverythingWasPutAwayIsShownWhole() {
    remembered.put("table letters", new TableLook(List.of("A", "B", "C").stream().map(name -> new TableLook.Column(name, 90, false)).toList(), List.of()));
    assertThat(shown().getVisibleLeafColumns()).hasSize(3);
  }

  @Test
  void aLineBetweenTwoPartsStandsWhereItWasDrawn() {
    SplitPane first = split();
    Node line = first.lookup(".split-pane-divider");
    drag(line).dropBy(-120, 0);
    WaitForAsyncUtils.waitForFxEvents();
    double drawn = first.getDividerPositions()[0];
    assertThat(drawn).isLessThan(0.45);
    assertThat(split().getDividerPositions()[0]).isCloseTo(drawn, within(0.01));
  }

  private SplitPane split() {
    SplitPane split = new SplitPane(new StackPane(), new StackPane());
    split.setId("parts");
    split.setDividerPositions(0.5);
    return show(split);
  }

  private TableView<String> shown() {
    TableView<String> table = new TableView<>();
    table.getItems().setAll("one", "two", "three");
    table.setId("letters");
    table.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_ALL_COLUMNS);
    List.of("A", "B", "C").forEach(name -> table.getColumns().add(column(name)));
    return show(table);
  }

  private <N extends Node> N show(N node) {
    interact(() -> {
      new LookMemory(remembered).under(new StackPane(node));
      root.getChildren().setAll(node);
    });
    WaitForAsyncUtils.waitForFxEvents();
    return node;
  }

  /** Sorted by length first. */
  private static TableColumn<String, String> column(String name) {
    TableColumn<String, String> column = new TableColumn<>(name);
    column.setCellValueFactory(cell -> new ReadOnlyObjectWrapper<>(cell.getValue().length() + cell.getValue()));
    column.setMinWidth(50);
    return column;
  }

  private static List<String> names(TableView<String> table) {
    return table.getColumns().stream().map(TableColumn::getText).toList();
  }
}
