package hankbook.allot;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The allotment as a constraint programme for the CP-SAT solver of OR-Tools, solved criterion by criterion: each is minimised, then held while
 * the next is. It shares nothing with the search but the words of the criteria.
 */
final class ConstraintProgramme {
  private static final int CRITERIA = 5;

  private final Demand demand;
  private final boolean woundTogether;
  private final CpModel model = new CpModel();
  private final Map<String, BoolVar> serving = new HashMap<>();
  private final List<LinearExprBuilder> endsOf = new ArrayList<>();
  private final LinearExprBuilder weftOf = LinearExpr.newBuilder();
  private final LinearExprBuilder unopened = LinearExpr.newBuilder();
  private final LinearExprBuilder touched = LinearExpr.newBuilder();
  private final List<Literal> keepers = new ArrayList<>();
  private final IntVar remnant;

  private ConstraintProgramme(List<Candidate> skeins, Demand demand, boolean woundTogether) {
    this.demand = demand;
    this.woundTogether = woundTogether;
    remnant = model.newIntVar(0, skeins.stream().mapToLong(skein -> skein.free().tenthsOfMillimetre()).max().orElse(0), "remnant");
    demand.kinds().forEach(_ -> endsOf.add(LinearExpr.newBuilder()));
    skeins.forEach(this::add);
    for (int kind = 0; kind < endsOf.size(); kind++) {
      model.addLessOrEqual(endsOf.get(kind), demand.kinds().get(kind).ends());
    }
    model.addLessOrEqual(weftOf, demand.weft().tenthsOfMillimetre());
    keepToOneLot();
  }

  /** The best score, with empty ages. */
  static NaiveAllotting.Score best(List<Candidate> skeins, Demand demand) {
    Loader.loadNativeLibraries();
    List<Long> any = settled(skeins, demand, false);
    List<Long> wound = settled(skeins, demand, true);
    boolean apart = !any.get(0).equals(wound.get(0));
    List<Long> best = apart ? any : wound;
    return new NaiveAllotting.Score(best.get(0), apart, best.get(1).intValue(), best.get(2).intValue(), best.get(3).intValue(), best.get(4), List.of());
  }

  private static List<Long> settled(List<Candidate> skeins, Demand demand, boolean woundTogether) {
    List<Long> settled = new ArrayList<>();
    while (settled.size() < CRITERIA) {
      settled.add(new ConstraintProgramme(skeins, demand, woundTogether).next(settled));
    }
    return settled;
  }

  private void add(Candidate skein) {
    long free = skein.free().tenthsOfMillimetre();
    String lot = skein.lot().isEmpty() ? "of " + skein.code() : "named " + skein.lot();
    BoolVar takes = model.newBoolVar("takes " + skein.code());
    BoolVar weaves = model.newBoolVar("weaves " + skein.code());
    BoolVar keeps = model.newBoolVar("keeps " + skein.code());
    IntVar weft = model.newIntVar(0, free, "weft " + skein.code());
    LinearExprBuilder warp = LinearExpr.newBuilder();
    for (int kind = 0; kind < endsOf.size(); kind++) {
      warp.addTerm(ends(kind, skein.code(), lot, takes), demand.kinds().get(kind).each().tenthsOfMillimetre());
    }
    model.addEquality(weft, 0).onlyEnforceIf(weaves.not());
    model.addLessThan(LinearExpr.newBuilder().add(warp).add(demand.usefulRemnant().tenthsOfMillimetre()), free).onlyEnforceIf(weaves);
    model.addLessOrEqual(LinearExpr.newBuilder().add(warp).add(weft), free);
    model.addImplication(weaves, takes);
    model.addImplication(weaves, serves("weft " + lot));
    model.addImplication(keeps, takes);
    model.addLessOrEqual(LinearExpr.newBuilder().add(warp).add(weft).add(remnant), free).onlyEnforceIf(keeps);
    weftOf.add(weft);
    touched.add(takes);
    unopened.addTerm(takes, skein.opened() ? 0 : 1);
    keepers.add(keeps);
  }

  private IntVar ends(int kind, String code, String lot, BoolVar takes) {
    EndKind wanted = demand.kinds().get(kind);
    IntVar ends = model.newIntVar(0, woundTogether ? Math.ceilDiv(wanted.ends(), demand.threads()) : wanted.ends(), kind + " " + code);
    model.addEquality(ends, 0).onlyEnforceIf(takes.not());
    model.addEquality(ends, 0).onlyEnforceIf(serves("warp " + lot).not());
    if (wanted.oneLot()) {
      model.addEquality(ends, 0).onlyEnforceIf(serves("kind " + kind + " " + lot).not());
    }
    endsOf.get(kind).add(ends);
    return ends;
  }

  private BoolVar serves(String use) {
    return serving.computeIfAbsent(use, model::newBoolVar);
  }

  private BoolVar[] serving(String use) {
    return serving.keySet().stream().filter(name -> name.startsWith(use)).sorted().map(this::serves).toArray(BoolVar[]::new);
  }

  private void keepToOneLot() {
    for (int kind = 0; kind < endsOf.size(); kind++) {
      model.addLessOrEqual(LinearExpr.sum(serving("kind " + kind + " ")), 1);
    }
    if (demand.weftInOneLot()) {
      model.addLessOrEqual(LinearExpr.sum(serving("weft ")), 1);
    }
  }

  private LinearExpr uncovered() {
    LinearExprBuilder uncovered = LinearExpr.newBuilder().add(demand.weft().tenthsOfMillimetre()).addTerm(weftOf, -1);
    for (int kind = 0; kind < endsOf.size(); kind++) {
      long each = demand.kinds().get(kind).each().tenthsOfMillimetre();
      uncovered.add(each * demand.kinds().get(kind).ends()).addTerm(endsOf.get(kind), -each);
    }
    return uncovered.build();
  }

  /** Holds the criteria that were settled, and minimises the next. */
  private long next(List<Long> settled) {
    LinearExprBuilder lots = LinearExpr.newBuilder().addSum(serving("warp ")).addSum(serving("weft "));
    LinearExpr lessRemnant = LinearExpr.newBuilder().addTerm(remnant, -1).build();
    List<LinearExpr> criteria = List.of(uncovered(), lots.build(), unopened.build(), touched.build(), lessRemnant);
    IntStream.range(0, settled.size()).forEach(i -> model.addLessOrEqual(criteria.get(i), settled.get(i)));
    if (settled.size() == CRITERIA - 1 && settled.getLast() > 0) {
      model.addExactlyOne(keepers);
    } else {
      model.addEquality(remnant, 0);
    }
    model.minimize(criteria.get(settled.size()));
    CpSolver solver = new CpSolver();
    solver.getParameters().setNumWorkers(1).setRandomSeed(1);
    CpSolverStatus status = solver.solve(model);
    if (status != CpSolverStatus.OPTIMAL) {
      throw new IllegalStateException("the solver says " + status + ", wanted an optimum of " + settled.stream().map(String::valueOf).collect(Collectors.joining(", ")));
    }
    return Math.round(solver.objectiveValue());
  }
}
