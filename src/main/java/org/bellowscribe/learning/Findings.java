package org.bellowscribe.learning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bellowscribe.score.Whereabouts;

/** What is to be told about points that were found. */
final class Findings {

    private final Table table;
    private final Planes planes;
    private final int[] points;
    private final List<TaughtTune> tunes;

    Findings(Table table, Planes planes, int[] points, List<TaughtTune> tunes) {
        this.table = table;
        this.planes = planes;
        this.points = points;
        this.tunes = tunes;
    }

    /** A place with the points that a move gives to it. */
    private record Weighed(Place place, double gain) {}

    /** Returns the points that moved. */
    List<Learned.Move> moves() {
        int[] base = table.points();
        List<Learned.Move> moves = new ArrayList<>();
        for (int i = 0; i < points.length; i++) {
            if (points[i] != base[i]) {
                moves.add(new Learned.Move(table.at(i), base[i], points[i], helped(i), harmed(i)));
            }
        }
        return moves;
    }

    private List<String> helped(int index) {
        int[] base = table.points();
        List<Weighed> helped = new ArrayList<>();
        for (Place place : planes.places()) {
            if (!planes.isMet(place, base) && planes.isMet(place, points)) {
                helped.add(new Weighed(place, gain(place, index, base)));
            }
        }
        return named(helped);
    }

    private List<String> harmed(int index) {
        List<Weighed> harmed = new ArrayList<>();
        for (Place place : planes.places()) {
            if (!planes.isMet(place, points)) {
                harmed.add(new Weighed(place, -gain(place, index, points)));
            }
        }
        return named(harmed);
    }

    // By how many points the move lets the cheapest rival there become dearer than what was marked.
    private double gain(Place place, int index, int[] under) {
        Rival worst = planes.at(place).stream()
                .max(Comparator.comparingDouble(rival -> planes.violation(rival, under)))
                .orElseThrow();
        return planes.difference(worst)[index] * (points[index] - table.points()[index]);
    }

    // The tune as a whole is named only where no measure by itself speaks for it.
    private List<String> named(List<Weighed> places) {
        boolean inMeasures = places.stream().anyMatch(each -> !each.place().isWhole() && each.gain() > 0);
        return places.stream()
                .filter(each -> each.place().isWhole() != inMeasures && each.gain() > 0)
                .sorted(Comparator.comparingDouble((Weighed each) -> -each.gain()))
                .map(each -> name(each.place()))
                .toList();
    }

    /** Returns what does not come out. */
    List<Learned.Unmet> unmet() {
        WhyNone why = new WhyNone(table);
        List<Learned.Unmet> unmet = new ArrayList<>();
        for (Place place : planes.places()) {
            if (!place.isWhole() && !planes.isMet(place, points)) {
                int dearer = (int) Math.round(planes.violation(place, points) - 1);
                List<double[]> differences =
                        planes.at(place).stream().map(planes::difference).toList();
                unmet.add(new Learned.Unmet(name(place), dearer, why.of(differences)));
            }
        }
        return unmet;
    }

    private String name(Place place) {
        TaughtTune tune = tunes.get(place.tune());
        if (place.isWhole()) {
            return tune.name() + " as a whole";
        }
        return "%s, measure %s"
                .formatted(
                        tune.name(),
                        new Whereabouts(tune.task().tune()).measures().get(place.measure()));
    }
}
