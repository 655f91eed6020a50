package hankbook.desktop;

import java.util.function.Consumer;
import java.util.function.LongConsumer;

/**
 * Ways from one screen to a thing on another.
 *
 * @param skein to the skein with a code, on the shelf
 * @param plan to the plan of a name
 * @param entry to the entry with a number, in the journal
 */
record Opens(Consumer<String> skein, Consumer<String> plan, LongConsumer entry) {}
