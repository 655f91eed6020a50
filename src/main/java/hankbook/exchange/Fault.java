package hankbook.exchange;

/**
 * One field that cannot be taken as it is, in parts, so that a screen can say it beside the field.
 *
 * @param field the path to it, {@code pieces[1].length}
 * @param found the rejected text as it was written
 * @param wanted what would have been accepted, as a noun phrase
 */
public record Fault(String field, String found, String wanted) {}
