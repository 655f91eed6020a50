package hankbook.reckon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * All that finished plans taught.
 *
 * @param lessons in the order in which their cloths were finished
 */
public record Findings(List<Lesson> lessons) {
  /** Nothing was ever finished. */
  public static final Findings NONE = new Findings(List.of());

  private static final int ENOUGH = 2;

  public Findings {
    lessons = List.copyOf(lessons);
  }

  /** What the most telling group with so many plans at least says; empty where none has. */
  public Optional<Finding> telling(Learnable which, Manner manner, int atLeast) {
    return which.groups(manner).stream().flatMap(group -> of(which, group).stream()).filter(finding -> finding.count() >= atLeast).findFirst();
  }

  /** What is proposed for a cloth: by the most telling group with two plans at least, else by the one plan there is. */
  public Optional<Offer> offer(Learnable which, Manner manner) {
    return telling(which, manner, ENOUGH).or(() -> telling(which, manner, 1)).map(Offer::new);
  }

  /** All that is proposed for a cloth. */
  public List<Offer> offers(Manner manner) {
    return Arrays.stream(Learnable.values()).flatMap(which -> offer(which, manner).stream()).toList();
  }

  /** What a group says of one thing; empty where it has no plan. */
  public Optional<Finding> of(Learnable which, Manner group) {
    List<Lesson> of = lessons.stream().filter(lesson -> lesson.which() == which && group.holds(lesson.manner())).toList();
    return of.isEmpty() ? Optional.empty() : Optional.of(new Finding(which, group, of));
  }

  /** Of each thing what each of its most telling groups within a group says, and where that is not all, the whole of the group. */
  public List<Finding> within(Manner group) {
    return Arrays.stream(Learnable.values()).flatMap(which -> within(which, group).stream()).toList();
  }

  private List<Finding> within(Learnable which, Manner group) {
    Set<Telling> tellings = EnumSet.copyOf(which.tellings());
    Set<Manner> groups = new LinkedHashSet<>();
    lessons.stream()
        .filter(lesson -> lesson.which() == which && group.holds(lesson.manner()) && tellings.stream().allMatch(lesson.manner()::says))
        .forEach(lesson -> groups.add(group.and(lesson.manner().only(tellings))));
    List<Finding> findings = new ArrayList<>(groups.stream().sorted(Comparator.comparing(Manner::words)).flatMap(part -> of(which, part).stream()).toList());
    Optional<Finding> whole = of(which, group);
    if (whole.isPresent() && findings.stream().noneMatch(finding -> finding.lessons().equals(whole.get().lessons()))) {
      findings.add(whole.get());
    }
    return findings;
  }
}
