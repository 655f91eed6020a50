package hankbook.desktop;

import java.util.Collection;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.control.ComboBox;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;

/** One of a few things to choose, each said in words. What is shown is told to nobody; what is chosen is. */
final class Choice<T> extends ComboBox<T> {
  private boolean showing;

  /**
   * @param name what is chosen
   * @param id to be found by
   * @param chosen is told each choice
   */
  Choice(String name, String id, Collection<T> all, Function<T, String> words, Consumer<T> chosen) {
    setId(id);
    setAccessibleText(name);
    setMaxWidth(Double.MAX_VALUE);
    setConverter(new Words<>(words));
    getItems().setAll(all);
    valueProperty().subscribe((_, now) -> {
      if (!showing && now != null) {
        chosen.accept(now);
      }
    });
  }

  /** Shows what holds. */
  void show(@Nullable T now) {
    showing = true;
    setValue(now);
    showing = false;
  }

  /** The box cannot be typed in, so nothing is ever read. */
  private static final class Words<T> extends StringConverter<T> {
    private final Function<T, String> words;

    Words(Function<T, String> words) {
      this.words = words;
    }

    @Override
    public String toString(@Nullable T thing) {
      return thing == null ? "" : words.apply(thing);
    }

    @Override
    public @Nullable T fromString(String text) {
      return null;
    }
  }
}
