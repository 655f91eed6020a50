package hankbook.exchange;

import hankbook.measure.Arithmetic;
import hankbook.measure.Length;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

/** The fields of one JSON object in which a blank text counts as nothing said. */
record SaidFields(JsonFields fields) {
  <T> Optional<T> text(String key, Function<String, T> reader) {
    return fields.read(key, text -> text.isBlank() ? Optional.<T>empty() : Optional.of(reader.apply(text))).flatMap(Function.identity());
  }

  boolean says(String key) {
    return text(key, Function.identity()).isPresent();
  }

  Optional<Length> length(String key) {
    return text(key, Length::parse);
  }

  OptionalInt count(String key) {
    Optional<Integer> count = text(key, Arithmetic::count);
    return count.isPresent() ? OptionalInt.of(count.get()) : OptionalInt.empty();
  }
}
