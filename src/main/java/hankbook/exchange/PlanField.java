package hankbook.exchange;

import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One field of a plan, or a whole row of fields. Its text form is the path that a refusal of the plan names: {@code pieces[1].length}.
 *
 * @param part the group it stands in
 * @param row which row of the group, counted from 1; always 1 where the group is no list
 * @param key the field; empty for the whole row
 */
public record PlanField(PlanPart part, int row, String key) {
  private static final String WHOLE_PLAN = "plan";
  private static final Pattern ROW = Pattern.compile("([a-z.]+)\\[(\\d{1,6})](?:\\.(\\w+))?");

  public PlanField {
    if (row < 1 || (!part.isList() && row != 1)) {
      throw new IllegalArgumentException("row of " + part + " is " + row + ", wanted " + (part.isList() ? "one counted from 1" : "1"));
    }
    if (!key.isEmpty() && !part.keys().contains(key)) {
      throw new IllegalArgumentException("key in " + part + " is \"" + key + "\", wanted one of " + String.join(", ", part.keys()));
    }
  }

  /** A field of a group that is no list. */
  public static PlanField of(PlanPart part, String key) {
    return new PlanField(part, 1, key);
  }

  /** Reads a path; empty where it leads to nothing that can be typed. */
  public static Optional<PlanField> parse(String path) {
    if (path.equals(WHOLE_PLAN)) {
      return Optional.of(of(PlanPart.PLAN, ""));
    }
    Matcher matcher = ROW.matcher(path);
    if (matcher.matches()) {
      String key = matcher.group(3) == null ? "" : matcher.group(3);
      return part(matcher.group(1), true).filter(part -> takes(part, key)).map(part -> new PlanField(part, Integer.parseInt(matcher.group(2)), key));
    }
    int dot = path.lastIndexOf('.');
    String group = dot < 0 ? "" : path.substring(0, dot);
    String key = path.substring(dot + 1);
    Optional<PlanField> field = part(group, false).filter(part -> part.keys().contains(key)).map(part -> of(part, key));
    return field.or(() -> part(path, false).map(part -> of(part, "")));
  }

  private static boolean takes(PlanPart part, String key) {
    return key.isEmpty() || part.keys().contains(key);
  }

  private static Optional<PlanPart> part(String path, boolean list) {
    return Arrays.stream(PlanPart.values()).filter(part -> part.path().equals(path) && part.isList() == list).findFirst();
  }

  /** The path, as refusals write it. */
  @Override
  public String toString() {
    String group = part.isList() ? part.path() + "[" + row + "]" : part.path();
    if (group.isEmpty()) {
      return key.isEmpty() ? WHOLE_PLAN : key;
    }
    return key.isEmpty() ? group : group + "." + key;
  }
}
