package hankbook.studio;

import hankbook.measure.Length;
import hankbook.yarn.Skein;
import java.util.Map;

/**
 * A skein and where its yarn is.
 *
 * @param skein as it was received
 * @param free on the shelf, promised to nothing
 * @param reserved set aside, by plan
 * @param onLoom on a loom, by plan
 */
public record ShelfSkein(Skein skein, Length free, Map<String, Length> reserved, Map<String, Length> onLoom) {}
