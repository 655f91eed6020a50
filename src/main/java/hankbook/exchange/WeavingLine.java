package hankbook.exchange;

/**
 * One line of a weaving file that says something.
 *
 * @param number of the line, the first being 1
 * @param section it stands in, in small letters
 * @param key in small letters
 * @param value as it was written, without the blanks around it
 */
record WeavingLine(int number, String section, String key, String value) {}
