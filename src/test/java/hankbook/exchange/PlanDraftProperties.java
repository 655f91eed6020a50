package hankbook.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class PlanDraftProperties {
  @Property(tries = 300)
  void nothingTypedIsLostInTheFile(@ForAll("drafts") PlanDraft draft) {
    assertThat(PlanDraft.of(draft.json())).isEqualTo(draft);
  }

  @Property(tries = 300)
  void aRefusalOfADraftNamesAFieldThatTheDraftHas(@ForAll("drafts") PlanDraft draft) {
    try {
      PlanFile.read("draft", draft.json());
    } catch (BadInput refused) {
      PlanField field = PlanField.parse(refused.field().orElseThrow().field()).orElseThrow();
      assertThat(draft.rows(field.part())).hasSizeGreaterThanOrEqualTo(field.row());
    }
  }

  @Property
  void theTextOfAFieldReadsBack(@ForAll("fields") PlanField field) {
    assertThat(PlanField.parse(field.toString())).contains(field);
  }

  @Provide
  Arbitrary<PlanField> fields() {
    return Arbitraries.of(PlanPart.values())
        .flatMap(
            part ->
                Arbitraries.of(part.keys()).flatMap(
                    key -> Arbitraries.integers().between(1, part.isList() ? 40 : 1).flatMap(
                        row -> Arbitraries.of(new PlanField(part, row, key), new PlanField(part, row, "")))));
  }

  @Provide
  Arbitrary<PlanDraft> drafts() {
    Map<PlanPart, Arbitrary<List<DraftRow>>> parts = new HashMap<>();
    for (PlanPart part : PlanPart.values()) {
      parts.put(part, part.isList() ? rows(part).list().ofMaxSize(3) : rows(part).list().ofSize(1));
    }
    Arbitrary<Map<PlanPart, List<DraftRow>>> all = Arbitraries.just(Map.of());
    for (Map.Entry<PlanPart, Arbitrary<List<DraftRow>>> part : parts.entrySet()) {
      all = all.flatMap(so -> part.getValue().map(rows -> with(so, part.getKey(), rows)));
    }
    return all.map(PlanDraft::new);
  }

  private static <K, V> Map<K, V> with(Map<K, V> map, K key, V value) {
    Map<K, V> more = new HashMap<>(map);
    more.put(key, value);
    return more;
  }

  private static Arbitrary<DraftRow> rows(PlanPart part) {
    Arbitrary<String> readable = Arbitraries.of("4", "0.8", "70 cm", "10/cm", "8 % of yarn", "Gorse", "2 x 3", " ");
    Arbitrary<String> texts = Arbitraries.oneOf(Arbitraries.strings().ofMaxLength(12), readable, readable);
    return Arbitraries.maps(Arbitraries.of(part.keys()), texts).ofMaxSize(part.keys().size()).map(DraftRow::new);
  }
}
