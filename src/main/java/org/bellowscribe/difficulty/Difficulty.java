package org.bellowscribe.difficulty;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.difficulty.grading.Grade;
import org.bellowscribe.difficulty.grading.Grading;
import org.bellowscribe.difficulty.grading.GradingLibrary;
import org.bellowscribe.difficulty.grading.Term;

/**
 * How difficult a decided tune is on its box, at its tempo.
 *
 * @param grading id of the grading
 * @param terms all terms, in their usual order
 * @param grade the grade
 */
public record Difficulty(String grading, List<TermPoints> terms, Grade grade) {

    /** So many terms tell why. */
    private static final int REASONS = 3;

    /** What adds less is no reason. */
    private static final double LEAST = 0.05;

    /** Copies the list. */
    public Difficulty {
        terms = List.copyOf(terms);
    }

    /** Returns the difficulty by the usual grading. */
    public static Difficulty of(DecidedTune decided) {
        return of(decided, GradingLibrary.usual());
    }

    /** Returns the difficulty by a grading. */
    public static Difficulty of(DecidedTune decided, Grading grading) {
        Playing playing = Playing.of(decided);
        RightHand right = new RightHand(decided.instrument(), playing);
        LeftHand left = new LeftHand(playing);
        Map<Term, Figure> easiest = new EasiestWay(decided.instrument(), playing.notes(), grading).figures();
        List<TermPoints> terms = Arrays.stream(Term.values())
                .map(term -> {
                    Figure figure = easiest.getOrDefault(term, figure(term, right, left));
                    return new TermPoints(term, figure.value(), grading.weight(term), figure.event());
                })
                .toList();
        return new Difficulty(grading.id(), terms, grading.grade(sum(terms)));
    }

    private static Figure figure(Term term, RightHand right, LeftHand left) {
        return switch (term) {
            case NOTES -> right.notes();
            case OFF_PUSH -> right.offPush();
            case ONE_WAY -> right.oneWay();
            case LEAPS -> right.leaps();
            case RANGE -> right.range();
            case RUN -> right.run();
            case LEFT_HAND_BETWEEN -> left.between();
            case TWIN_BASSES -> left.twins();
            case DRIFT -> right.drift();
            case AIR -> left.air();
            default -> Figure.NONE;
        };
    }

    /** Returns the sum of all terms. */
    public double points() {
        return sum(terms);
    }

    /** Returns the terms that add most, the greatest first; three at the most. */
    public List<TermPoints> reasons() {
        return terms.stream()
                .filter(term -> term.points() >= LEAST)
                .sorted(Comparator.comparingDouble(TermPoints::points).reversed())
                .limit(REASONS)
                .toList();
    }

    private static double sum(List<TermPoints> terms) {
        return terms.stream().mapToDouble(TermPoints::points).sum();
    }
}
