package org.bellowscribe.learning;

import java.util.ArrayList;
import java.util.List;

/** Rounds points to whole numbers: the nearest first, then one point up or down as long as the objective falls. */
final class WholePoints {

    private static final int MOST_ROUNDS = 40;
    private static final double GAIN = 1e-9;

    private final Table table;
    private final double price;
    private final List<Planes.Plane> planes = new ArrayList<>();
    private final List<int[]> placeOf = new ArrayList<>();
    private final int[] points;
    private final double[] room;

    private WholePoints(Table table, double price, List<List<Planes.Plane>> places, int[] points) {
        this.table = table;
        this.price = price;
        this.points = points;
        for (List<Planes.Plane> rivals : places) {
            placeOf.add(new int[] {planes.size(), planes.size() + rivals.size()});
            planes.addAll(rivals);
        }
        room = new double[planes.size()];
        for (int k = 0; k < room.length; k++) {
            for (int i = 0; i < points.length; i++) {
                room[k] += planes.get(k).difference()[i] * points[i];
            }
        }
    }

    /**
     * Returns whole points near the best real ones.
     *
     * @param table the cases with the points to start from
     * @param price what a point of violation costs
     * @param places planes by place
     * @param best the best real points
     */
    static int[] near(Table table, double price, List<List<Planes.Plane>> places, double[] best) {
        int[] rounded = new int[best.length];
        for (int i = 0; i < rounded.length; i++) {
            rounded[i] = (int) Math.round(best[i]);
        }
        return new WholePoints(table, price, places, rounded).run();
    }

    private int[] run() {
        double now = objective(0, 0);
        boolean falls = true;
        for (int round = 0; falls && round < MOST_ROUNDS; round++) {
            falls = false;
            for (int i = 0; i < points.length; i++) {
                for (int step = -1; step <= 1 && !table.isHeld(i); step += 2) {
                    double then = mayMove(i, step) ? objective(i, step) : now;
                    if (then < now - GAIN) {
                        move(i, step);
                        now = then;
                        falls = true;
                    }
                }
            }
        }
        return points;
    }

    private boolean mayMove(int i, int step) {
        return points[i] + step >= 0 && points[i] + step <= Table.MOST;
    }

    private void move(int i, int step) {
        points[i] += step;
        for (int k = 0; k < room.length; k++) {
            room[k] += step * planes.get(k).difference()[i];
        }
    }

    private double objective(int i, int step) {
        double violated = 0;
        for (int[] rivals : placeOf) {
            double most = 0;
            for (int k = rivals[0]; k < rivals[1]; k++) {
                most = Math.max(
                        most,
                        planes.get(k).margin() - room[k] - step * planes.get(k).difference()[i]);
            }
            violated += most;
        }
        points[i] += step;
        double change = table.change(points);
        points[i] -= step;
        return change + price * violated;
    }
}
