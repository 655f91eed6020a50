package hankbook.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import hankbook.measure.Arithmetic;
import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;

/** The fields of one JSON object, with the path to them, so that a refusal says where. Unknown keys are refused by name. */
final class JsonFields {
  static final int MOST_DIGITS = 30;

  private final JsonNode node;
  private final String path;

  JsonFields(JsonNode node, String path, Set<String> known) {
    this.node = node;
    this.path = path;
    if (!node.isObject()) {
      throw new Refused(path.isEmpty() ? "the file" : path, new Unreadable(node.toString(), "an object in braces"));
    }
    node.fieldNames()
        .forEachRemaining(
            key -> {
              if (!known.contains(key)) {
                throw new Refused(at(key), new Unreadable(key, Phrase.of("one of {0}", String.join(", ", known.stream().sorted().toList()))));
              }
            });
  }

  /** A field that is not what it should be. */
  static final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Fault fault;

    Refused(String field, Unreadable why) {
      super(field + ": " + why.getMessage(), why);
      this.fault = new Fault(field, why.found(), why.wanted());
    }

    Fault fault() {
      return fault;
    }
  }

  /** A text or number read by a reader, where it is there. */
  <T> Optional<T> read(String key, Function<String, T> reader) {
    JsonNode value = node.get(key);
    if (value == null || value.isNull()) {
      return Optional.empty();
    }
    String text = value.isNumber() ? plain(key, value.decimalValue()) : value.asText();
    if (!value.isValueNode()) {
      throw new Refused(at(key), new Unreadable(value.toString(), "a text or a number"));
    }
    return Optional.of(checked(key, () -> reader.apply(text)));
  }

  /** Written out, a number such as 1e999999999 would fill the memory. */
  private String plain(String key, BigDecimal number) {
    if (number.precision() > MOST_DIGITS || Math.abs(number.scale()) > MOST_DIGITS) {
      throw new Refused(at(key), new Unreadable(number.toString(), Phrase.of("a number of at most {0} digits", MOST_DIGITS)));
    }
    return number.toPlainString();
  }

  <T> T required(String key, String wanted, Function<String, T> reader) {
    return read(key, reader).orElseThrow(() -> new Refused(at(key), new Unreadable("", wanted)));
  }

  int count(String key, int otherwise) {
    return read(key, Arithmetic::count).orElse(otherwise);
  }

  /** Whether there is something under a key. */
  boolean has(String key) {
    return node.hasNonNull(key);
  }

  /** The object under a key; an empty one where it is missing. */
  JsonFields object(String key, Set<String> known) {
    JsonNode value = node.get(key);
    return new JsonFields(value == null ? JsonNodeFactory.instance.objectNode() : value, at(key), known);
  }

  /** The objects of the list under a key; none where it is missing. */
  List<JsonFields> list(String key, Set<String> known) {
    JsonNode value = node.get(key);
    if (value == null) {
      return List.of();
    }
    if (!value.isArray()) {
      throw new Refused(at(key), new Unreadable(value.toString(), "a list in square brackets"));
    }
    List<JsonFields> fields = new ArrayList<>();
    for (int i = 0; i < value.size(); i++) {
      fields.add(new JsonFields(value.get(i), at(key) + "[" + (i + 1) + "]", known));
    }
    return fields;
  }

  /** The texts or numbers of the list under a key; none where it is missing. */
  List<String> texts(String key) {
    JsonNode value = node.get(key);
    if (value == null) {
      return List.of();
    }
    if (!value.isArray() || value.valueStream().anyMatch(item -> !item.isValueNode() || item.isNull())) {
      throw new Refused(at(key), new Unreadable(value.toString(), "a list of texts in square brackets"));
    }
    return value.valueStream().map(JsonNode::asText).toList();
  }

  /** Runs what builds a value of these fields, and says of a refusal where it stood. */
  <T> T built(Supplier<T> builder) {
    return built("plan", builder);
  }

  /** The same, where the file as a whole is something else than a plan. */
  <T> T built(String whole, Supplier<T> builder) {
    try {
      return builder.get();
    } catch (Unreadable unreadable) {
      throw new Refused(path.isEmpty() ? whole : path, unreadable);
    }
  }

  /** Checks a field against others, and says of a refusal that it stood there. */
  void check(String key, Runnable check) {
    checked(key, () -> {
      check.run();
      return key;
    });
  }

  private <T> T checked(String key, Supplier<T> reader) {
    try {
      return reader.get();
    } catch (Unreadable unreadable) {
      throw new Refused(at(key), unreadable);
    }
  }

  private String at(String key) {
    return path.isEmpty() ? key : path + "." + key;
  }
}
