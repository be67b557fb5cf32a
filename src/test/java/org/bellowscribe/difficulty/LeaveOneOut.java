package org.bellowscribe.difficulty;

import java.util.ArrayList;
import java.util.List;

/**
 * Places each tune among all others by weights that never saw it: those of 0 or more that bring the grades of the others
 * out with the least squares, drawn to the round weights in use as strongly as one tune draws.
 */
final class LeaveOneOut {

    private static final int ROUNDS = 3000;
    private static final double PULL = 1;

    private LeaveOneOut() {}

    /** Returns for each tune how many of the others are easier by weights found without it. */
    static double[] places(List<double[]> figures, double[] grades, double[] usual) {
        double[] spread = spread(figures);
        double[] places = new double[figures.size()];
        for (int out = 0; out < places.length; out++) {
            double[] weights = fit(figures, grades, usual, new Problem(out, spread));
            double own = sum(figures.get(out), weights);
            for (double[] other : figures) {
                places[out] += sum(other, weights) < own ? 1 : 0;
            }
        }
        return places;
    }

    private record Problem(int out, double[] spread) {}

    // Coordinate descent: one weight after the other, each as good as it can be with the others.
    private static double[] fit(List<double[]> figures, double[] grades, double[] usual, Problem problem) {
        double[] weights = usual.clone();
        for (int round = 0; round < ROUNDS; round++) {
            double constant = constant(figures, grades, weights, problem.out);
            for (int term = 0; term < weights.length; term++) {
                double draw = PULL * problem.spread[term] * problem.spread[term];
                double above = draw * usual[term];
                double below = draw;
                for (int i = 0; i < grades.length; i++) {
                    if (i != problem.out) {
                        double figure = figures.get(i)[term];
                        double rest = grades[i] - constant - sum(figures.get(i), weights) + weights[term] * figure;
                        above += figure * rest;
                        below += figure * figure;
                    }
                }
                weights[term] = below == 0 ? 0 : Math.max(0, above / below);
            }
        }
        return weights;
    }

    private static double constant(List<double[]> figures, double[] grades, double[] weights, int out) {
        double sum = 0;
        for (int i = 0; i < grades.length; i++) {
            sum += i == out ? 0 : grades[i] - sum(figures.get(i), weights);
        }
        return sum / (grades.length - 1);
    }

    private static double[] spread(List<double[]> figures) {
        double[] spread = new double[figures.get(0).length];
        for (int term = 0; term < spread.length; term++) {
            List<Double> values = new ArrayList<>();
            for (double[] each : figures) {
                values.add(each[term]);
            }
            double mean = values.stream().mapToDouble(value -> value).average().orElse(0);
            spread[term] = Math.sqrt(values.stream()
                    .mapToDouble(value -> (value - mean) * (value - mean))
                    .average()
                    .orElse(0));
        }
        return spread;
    }

    private static double sum(double[] figures, double[] weights) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * figures[i];
        }
        return sum;
    }
}
