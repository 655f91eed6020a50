package hankbook.reckon;

import java.time.LocalDate;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * One thing that one finished plan taught.
 *
 * @param plan the plan's name
 * @param date when its cloth was cut off, where that is known
 * @param manner how it was made
 * @param which what it taught
 * @param value in what {@link Learnable#unit} says, exactly: a fraction, tenths of a millimetre or seconds; may be negative, as where cloth grew
 */
public record Lesson(String plan, Optional<LocalDate> date, Manner manner, Learnable which, BigFraction value) {}
