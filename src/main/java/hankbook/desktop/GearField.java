package hankbook.desktop;

/**
 * One field of a loom or a reed.
 *
 * @param key by which it is found
 * @param caption above it
 * @param example of what may be typed
 */
record GearField(String key, String caption, String example) {}
