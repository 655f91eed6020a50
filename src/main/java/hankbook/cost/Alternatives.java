package hankbook.cost;

import hankbook.allot.Cover;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Plans laid side by side.
 *
 * @param contenders the plans, the one first that the others are held against
 * @param aspects the rows, in the order in which they are read
 */
public record Alternatives(List<Contender> contenders, List<Aspect> aspects) {
  /** The most plans that are laid side by side. */
  public static final int MOST = 4;

  public Alternatives {
    contenders = List.copyOf(contenders);
    aspects = List.copyOf(aspects);
  }

  /**
   * Lays plans side by side.
   *
   * @param contenders from one to {@link #MOST}
   */
  public static Alternatives of(List<Contender> contenders) {
    if (contenders.isEmpty() || contenders.size() > MOST) {
      throw new IllegalArgumentException(contenders.size() + " plans, wanted one to " + MOST + " to lay side by side");
    }
    Rows rows = new Rows(contenders);
    List<YarnColour> yarns = contenders.stream().flatMap(Contender::yarns).distinct().toList();
    rows.add(Trait.VERDICT, plan -> new Figure.Stands(plan.verdict()));
    rows.add(Trait.RISK, plan -> new Figure.Chance(plan.risk()));
    yarns.forEach(yarn -> rows.add(Trait.NEED, yarn, plan -> plan.cover(yarn).map(Cover::need).map(Figure.Metres::new)));
    yarns.forEach(yarn -> rows.add(Trait.LEFT, yarn, plan -> plan.cover(yarn).map(Cover::margin).map(Figure.Metres::new)));
    rows.cloth();
    rows.costs();
    contenders.stream().flatMap(Contender::bought).distinct().forEach(yarn -> rows.add(Trait.PUT_UPS, yarn, plan -> Optional.of(plan.putUps(yarn))));
    rows.add(Trait.SPEND_NOW, Contender::spending);
    return new Alternatives(contenders, rows.aspects);
  }

  private static final class Rows {
    private final List<Contender> contenders;
    private final List<Aspect> aspects = new ArrayList<>();

    Rows(List<Contender> contenders) {
      this.contenders = contenders;
    }

    void cloth() {
      add(Trait.PIECES, plan -> new Figure.Count(plan.check().plan().toFinish()));
      add(Trait.ENDS, plan -> new Figure.Count(plan.check().yardage().width().ends()));
      add(Trait.WIDTH_IN_REED, plan -> new Figure.Across(plan.check().yardage().width().inReed()));
      add(Trait.WIDTH, plan -> new Figure.Across(plan.check().yardage().width().finished(plan.check().plan().allowances())));
      add(Trait.WARP_LENGTH, plan -> new Figure.Metres(plan.check().yardage().warp().total()));
    }

    void costs() {
      boolean costed = contenders.stream().allMatch(Contender::isCosted);
      add(Trait.COST, Optional.empty(), plan -> Optional.of(new Figure.Amount(plan.cost().total().amount())), costed);
      if (contenders.stream().anyMatch(plan -> plan.each().isPresent())) {
        add(Trait.EACH, Optional.empty(), plan -> plan.each().map(Figure.Amount::new), costed);
      }
      add(Trait.TIME, Contender::time);
    }

    void add(Trait trait, Function<Contender, Figure> figure) {
      add(trait, Optional.empty(), plan -> Optional.of(figure.apply(plan)), true);
    }

    void add(Trait trait, YarnColour yarn, Function<Contender, Optional<? extends Figure>> figure) {
      add(trait, Optional.of(yarn), figure, true);
    }

    private void add(Trait trait, Optional<YarnColour> yarn, Function<Contender, Optional<? extends Figure>> figure, boolean comparable) {
      List<Optional<Figure>> figures = contenders.stream().map(plan -> figure.apply(plan).<Figure>map(Function.identity())).toList();
      aspects.add(new Aspect(trait, yarn, figures, comparable));
    }
  }
}
