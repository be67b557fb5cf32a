package org.bellowscribe.solver.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.search.Move;
import org.bellowscribe.solver.search.Option;
import org.bellowscribe.solver.search.Problem;
import org.bellowscribe.solver.search.Zones;

/**
 * Which of several marks of equal points is taken: those with the fewest parts of a point, which are given for what a
 * player would not do without a reason. All parts of a tune together stay below one point, so they never outweigh a rule: a
 * point is made so large, in whole numbers, that there is room for them ({@link Problem#unit()}).
 *
 * <p>Calm bellows come first, then a hand kept still, then the row of the key (all common practice, no source); then the
 * push, on which two published fingerings for the concertina lie where nothing else decides (the calibration's {@code B c d
 * e} and {@code down from G across the rows}); then the lower finger, so that no index finger lies idle, but not for
 * strapped hands, which cannot lie elsewhere. Air is taken early rather than late (common practice, no source).
 */
final class SecondOrder {

    private static final int UNLIKE_MEASURE = 6;
    private static final int REVERSAL = 4;
    private static final int HAND_MOVED = 3;
    private static final int OFF_HOME_ROW = 2;
    private static final int PULLED = 1;
    private static final int EACH_HIGHER_FINGER = 1;
    private static final int AIR_PRESS = 1;
    // A press in the last quarter of the sheet has so many parts more than one in the first, less one.
    private static final int QUARTERS = 4;

    private final List<List<Choice>> choices;
    private final List<Map<BellowsDirection, List<Action>>> actions;
    /** For each event and choice its parts, those that no choice of the event is without taken off. */
    private final List<int[]> ofChoices = new ArrayList<>();

    /** What all parts of the tune together can be at most, but for those between events. */
    private final long most;

    /**
     * Looks at what could be played.
     *
     * @param moments the events
     * @param choices for each event its choices
     * @param actions for each event its actions by direction
     * @param measures how many measures the tune has
     */
    SecondOrder(
            List<Moment> moments,
            List<List<Choice>> choices,
            List<Map<BellowsDirection, List<Action>>> actions,
            int measures) {
        this.choices = choices;
        this.actions = actions;
        long sum = (long) UNLIKE_MEASURE * measures;
        for (int e = 0; e < choices.size(); e++) {
            Moment moment = moments.get(e);
            int[] parts = choices.get(e).stream()
                    .mapToInt(choice -> parts(moment, choice))
                    .toArray();
            int least = Arrays.stream(parts).min().orElse(0);
            int[] above = Arrays.stream(parts).map(each -> each - least).toArray();
            ofChoices.add(above);
            sum += Arrays.stream(above).max().orElse(0) + parts(e, AirUse.FULL);
        }
        most = sum;
    }

    private static int parts(Moment moment, Choice choice) {
        if (moment.isRest()) {
            return 0;
        }
        boolean away = moment.homeRow() != Moment.NO_ROW
                && choice.buttons().stream().anyMatch(button -> button.row() != moment.homeRow());
        int higher = choice.grip().strapped()
                ? 0
                : choice.fingers().stream().mapToInt(finger -> finger - 1).sum();
        return (away ? OFF_HOME_ROW : 0)
                + (choice.direction() == BellowsDirection.PULL ? PULLED : 0)
                + EACH_HIGHER_FINGER * higher;
    }

    private static int parts(Choice from, Choice to) {
        return (from.direction() != to.direction() ? REVERSAL : 0) + (from.halves() != to.halves() ? HAND_MOVED : 0);
    }

    private int parts(int event, AirUse air) {
        return air == AirUse.NONE ? 0 : AIR_PRESS + QUARTERS * event / choices.size();
    }

    /** Returns what a measure costs that is played otherwise than its equals: its points, and parts if it has points. */
    static int ofUnlikeMeasure(int points, int unit) {
        return unit == 1 || points == 0 ? points : points * unit + UNLIKE_MEASURE;
    }

    /**
     * Returns a problem with the parts in it; the same problem where whole numbers have no room for them (a tune of some
     * hundred notes).
     *
     * @param inPoints the problem of the model
     */
    Problem within(Problem inPoints) {
        long unit = 1 + most + (long) (REVERSAL + HAND_MOVED) * inPoints.edges().size();
        if (unit * (mostPoints(inPoints) + 1) >= Problem.NEVER) {
            return inPoints;
        }
        int scale = (int) unit;
        List<List<Option>> options = new ArrayList<>();
        for (int e = 0; e < inPoints.size(); e++) {
            options.add(options(e, inPoints.options().get(e), scale));
        }
        List<int[][]> pairs = new ArrayList<>();
        for (int k = 0; k < inPoints.edges().size(); k++) {
            pairs.add(pairs(inPoints.edges().get(k), inPoints.pairs().get(k), scale));
        }
        List<Zones> zones =
                inPoints.zones().stream().map(each -> each.times(scale)).toList();
        return inPoints.with(options, pairs, zones).withUnit(scale);
    }

    private List<Option> options(int e, List<Option> given, int scale) {
        List<Option> options = new ArrayList<>();
        for (int c = 0; c < given.size(); c++) {
            Option option = given.get(c);
            BellowsDirection direction = choices.get(e).get(c).direction();
            List<Move> moves = new ArrayList<>();
            for (Action action : actions.get(e).getOrDefault(direction, List.of())) {
                Move move = action.move();
                moves.add(new Move(move.cost() * scale + parts(e, action.air()), move.low(), move.high()));
            }
            options.add(
                    new Option(option.sign(), option.cost() * scale + ofChoices.get(e)[c], moves));
        }
        return options;
    }

    private int[][] pairs(Problem.Edge edge, int[][] points, int scale) {
        List<Choice> from = choices.get(edge.from());
        List<Choice> to = choices.get(edge.to());
        int[][] costs = new int[points.length][];
        for (int i = 0; i < points.length; i++) {
            costs[i] = new int[points[i].length];
            for (int j = 0; j < points[i].length; j++) {
                costs[i][j] = points[i][j] * scale + parts(from.get(i), to.get(j));
            }
        }
        return costs;
    }

    // What the dearest marks could cost.
    private static long mostPoints(Problem problem) {
        long sum = 0;
        for (int e = 0; e < problem.size(); e++) {
            sum += problem.options().get(e).stream()
                    .flatMapToInt(option -> option.moves().stream().mapToInt(move -> option.cost() + move.cost()))
                    .max()
                    .orElse(0);
            sum += Arrays.stream(problem.zones().get(e).points()).max().orElse(0);
        }
        for (int[][] pairs : problem.pairs()) {
            sum += Arrays.stream(pairs).flatMapToInt(Arrays::stream).max().orElse(0);
        }
        return sum;
    }
}
