package hankbook.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import hankbook.measure.Unreadable;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class LotRowsTest {
  @Test
  void codes_are_numbered_on_from_the_first() {
    assertThat(LotRows.codes("S059", 3)).containsExactly("S059", "S060", "S061");
    assertThat(LotRows.codes(" Quay 9 ", 2)).containsExactly("Quay 9", "Quay 10");
    assertThat(LotRows.codes("A2-999", 2)).containsExactly("A2-999", "A2-1000");
    assertThat(LotRows.codes("Quay", 1)).containsExactly("Quay");
  }

  @Test
  void a_code_without_a_number_is_not_numbered_on() {
    assertThatThrownBy(() -> LotRows.codes("Quay", 2)).isInstanceOf(Unreadable.class).hasMessageContaining("a code that ends in a number");
  }

  @Test
  void what_is_said_once_is_said_of_each() {
    LotRows.Shared shared = LotRows.rows(Map.of("code", "S1", "lot", "K7, left", "length", "100 m"), 2);
    assertThat(shared.rows()).containsExactly(Map.of("code", "S1", "lot", "K7, left", "length", "100 m"), Map.of("code", "S2", "lot", "K7, left", "length", "100 m"));
  }

  @Test
  void weights_are_listed_with_their_units_or_with_one_for_all() {
    for (String text : List.of("102 g, 99 g, 101 g", "102 g; 99 g; 101 g", "102, 99, 101 g", "102 g,99 g,101 g", "102 g, 99 g, 101 g,")) {
      assertThat(LotRows.rows(Map.of("code", "S1", "gross", text), 3).rows()).as(text).extracting(row -> row.get("gross")).containsExactly("102 g", "99 g", "101 g");
    }
    assertThat(LotRows.rows(Map.of("code", "S1", "turns", "120, 118"), 2).rows()).extracting(row -> row.get("turns")).containsExactly("120", "118");
  }

  @Test
  void a_decimal_comma_parts_nothing() {
    assertThat(LotRows.rows(Map.of("code", "S1", "gross", "102,5 g; 99 g"), 2).rows()).extracting(row -> row.get("gross")).containsExactly("102,5 g", "99 g");
    assertThat(LotRows.rows(Map.of("code", "S1", "gross", "102,5 g"), 2).rows()).extracting(row -> row.get("gross")).containsExactly("102,5 g", "102,5 g");
  }

  @Test
  void a_list_of_another_number_is_a_fault_of_its_field() {
    LotRows.Shared shared = LotRows.rows(Map.of("code", "S1", "gross", "102 g, 99 g"), 3);
    assertThat(shared.rows()).isEmpty();
    assertThat(shared.faults()).extracting(CellFault::column, CellFault::wanted).containsExactly(tuple("gross", "one for all of them, or a list with one for each"));
  }

  @Test
  void numbers_parted_by_blanks_alone_are_refused() {
    for (String text : List.of("100 101", "100  99", "102 99 101 g", "102 g, 99 101 g", "100\u00A0101", "100 .5")) {
      LotRows.Shared shared = LotRows.rows(Map.of("code", "S1", "turns", text), 2);
      assertThat(shared.rows()).as(text).isEmpty();
      assertThat(shared.faults()).as(text).extracting(CellFault::found, CellFault::wanted).containsExactly(tuple(text, "one for all of them, or a list with one for each"));
    }
    assertThat(LotRows.rows(Map.of("code", "S1", "length", "2 x 70 m"), 2).rows()).extracting(row -> row.get("length")).containsExactly("2 x 70 m", "2 x 70 m");
  }

  @Test
  void one_skein_is_read_as_it_is_typed() {
    assertThat(LotRows.rows(Map.of("code", "S1", "gross", "102 g, 99 g"), 1).rows()).containsExactly(Map.of("code", "S1", "gross", "102 g, 99 g"));
  }

  @Property
  void codes_are_all_different_and_as_wide_as_the_first(@ForAll @IntRange(max = 9_999) int first, @ForAll @IntRange(min = 1, max = LotRows.MOST) int count) {
    List<String> codes = LotRows.codes(String.format("S%05d", first), count);
    assertThat(codes).doesNotHaveDuplicates().hasSize(count).allMatch(code -> code.length() == 6);
  }
}
