package org.bellowscribe.solver.search;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.List;

/** The same integer problem for OR-Tools CP-SAT: a boolean for each move and each pair, an integer for each place. */
public final class CpSatOracle {

    /** What the oracle says: a proved cost, {@link Integer#MAX_VALUE} for proved impossible, or -1 for undecided. */
    public static final int UNDECIDED = -1;

    // In CP-SAT's own measure of work, about seconds: the same on every machine, however busy.
    private static final double WORK = 120;

    private final Problem problem;
    private final CpModel model = new CpModel();
    private final LinearExprBuilder cost = LinearExpr.newBuilder();
    private final List<List<BoolVar>> chosen = new ArrayList<>();
    private final IntVar[] before;
    private final IntVar[] after;

    private CpSatOracle(Problem problem) {
        this.problem = problem;
        before = new IntVar[problem.size()];
        after = new IntVar[problem.size()];
        for (int e = 0; e < problem.size(); e++) {
            addEvent(e);
        }
        for (int k = 0; k < problem.edges().size(); k++) {
            addEdge(k);
        }
        IntVar start = before[problem.order().get(0)];
        model.addLinearConstraint(start, problem.startLow(), problem.startHigh());
        if (problem.again()) {
            IntVar end = after[problem.order().get(problem.order().size() - 1)];
            LinearExprBuilder gap = LinearExpr.newBuilder().add(end).addTerm(start, -1);
            model.addLinearConstraint(gap, -problem.margin(), problem.margin());
        }
        model.minimize(cost);
    }

    /** Returns a proved cost, {@link Integer#MAX_VALUE} if there is none, or {@link #UNDECIDED} after some seconds. */
    public static int cost(Problem problem, double seconds) {
        CpSolver solver = solver();
        solver.getParameters().setNumWorkers(8).setMaxTimeInSeconds(seconds);
        return new CpSatOracle(problem).solve(solver);
    }

    /**
     * Returns the least cost, proved, of at most so many points; {@link Integer#MAX_VALUE} if there is none, or {@link
     * #UNDECIDED}. A cost that somebody claims is thus refuted by a lower one and by none at all, with less to prove.
     */
    public static int costUpTo(int most, Problem problem) {
        CpSolver solver = solver();
        solver.getParameters().setNumWorkers(1).setMaxDeterministicTime(WORK);
        CpSatOracle oracle = new CpSatOracle(problem);
        if (most < Integer.MAX_VALUE) {
            oracle.model.addLessOrEqual(oracle.cost, most);
        }
        return oracle.solve(solver);
    }

    private static CpSolver solver() {
        Loader.loadNativeLibraries();
        CpSolver solver = new CpSolver();
        solver.getParameters().setLinearizationLevel(2);
        return solver;
    }

    private int solve(CpSolver solver) {
        CpSolverStatus status = solver.solve(model);
        return switch (status) {
            case OPTIMAL -> (int) Math.round(solver.objectiveValue());
            case INFEASIBLE -> Integer.MAX_VALUE;
            default -> UNDECIDED;
        };
    }

    private void addEvent(int e) {
        before[e] = model.newIntVar(problem.lowest(), problem.highest(), "before" + e);
        after[e] = model.newIntVar(problem.lowest(), problem.highest(), "after" + e);
        List<BoolVar> options = new ArrayList<>();
        LinearExprBuilder low = LinearExpr.newBuilder();
        LinearExprBuilder high = LinearExpr.newBuilder();
        for (Option option : problem.options().get(e)) {
            BoolVar taken = model.newBoolVar("option");
            LinearExprBuilder moves = LinearExpr.newBuilder();
            for (Move move : option.moves()) {
                BoolVar spent = model.newBoolVar("move");
                moves.add(spent);
                cost.addTerm(spent, (long) option.cost() + move.cost());
                low.addTerm(spent, option.sign() > 0 ? move.low() : -move.high());
                high.addTerm(spent, option.sign() > 0 ? move.high() : -move.low());
            }
            model.addEquality(moves, taken);
            options.add(taken);
        }
        model.addExactlyOne(options.toArray(BoolVar[]::new));
        LinearExprBuilder rise = LinearExpr.newBuilder().add(after[e]).addTerm(before[e], -1);
        model.addLessOrEqual(low, rise);
        model.addLessOrEqual(rise, high);
        chosen.add(options);
        addZones(e);
    }

    private void addZones(int e) {
        Zones zones = problem.zones().get(e);
        List<BoolVar> in = new ArrayList<>();
        for (int z = 0; z < zones.from().length; z++) {
            BoolVar here = model.newBoolVar("zone");
            int from = z == 0 ? problem.lowest() : zones.from()[z];
            int to = z + 1 == zones.from().length ? problem.highest() : zones.from()[z + 1] - 1;
            model.addLinearConstraint(after[e], from, Math.max(from, to)).onlyEnforceIf(here);
            cost.addTerm(here, zones.points()[z]);
            in.add(here);
        }
        model.addExactlyOne(in.toArray(BoolVar[]::new));
    }

    private void addEdge(int k) {
        Problem.Edge edge = problem.edges().get(k);
        model.addEquality(after[edge.from()], before[edge.to()]);
        List<BoolVar> from = chosen.get(edge.from());
        List<BoolVar> to = chosen.get(edge.to());
        List<LinearExprBuilder> columns = new ArrayList<>();
        to.forEach(any -> columns.add(LinearExpr.newBuilder()));
        for (int i = 0; i < from.size(); i++) {
            LinearExprBuilder row = LinearExpr.newBuilder();
            for (int j = 0; j < to.size(); j++) {
                BoolVar pair = model.newBoolVar("pair");
                row.add(pair);
                columns.get(j).add(pair);
                cost.addTerm(pair, problem.pairs().get(k)[i][j]);
            }
            model.addEquality(row, from.get(i));
        }
        for (int j = 0; j < to.size(); j++) {
            model.addEquality(columns.get(j), to.get(j));
        }
    }
}
