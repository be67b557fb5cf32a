package org.bellowscribe.drawing;

import java.util.List;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.instrument.Bellows;
import org.bellowscribe.replay.Sounding;
import org.bellowscribe.replay.WithoutAir;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Step;

/** Draws the curve itself: a stroke for every note as it sounds, and what would be without the air button. */
final class CurveLine {

    private static final double WORD = 26;

    private final Svg svg;
    private final DecidedTune tune;
    private final List<Sounding> performance;
    private final double[] times;

    CurveLine(Svg svg, DecidedTune tune, List<Sounding> performance) {
        this.svg = svg;
        this.tune = tune;
        this.performance = performance;
        times = new double[performance.size() + 1];
        for (int place = 0; place < performance.size(); place++) {
            times[place + 1] = times[place] + performance.get(place).seconds();
        }
    }

    /** Draws the places of a row. */
    void draw(CurveRows.Row row, CurveScale scale) {
        int first = row.first().first();
        int end = row.last().end();
        svg.begin("g", "class", "opening", "stroke", "currentColor", "stroke-width", 1.8, "stroke-linecap", "round");
        for (int place = first; place < end; place++) {
            if (step(place).air() == AirUse.NONE) {
                plain(place, scale);
            } else {
                pressed(place, scale);
            }
        }
        svg.end();
        for (int place = first; place < end; place++) {
            word(place, scale);
        }
    }

    private void plain(int place, CurveScale scale) {
        Sounding sounding = performance.get(place);
        svg.line(
                scale.x(times[place]),
                scale.y(sounding.openingBefore()),
                scale.x(times[place + 1]),
                scale.y(sounding.openingAfter()),
                "id",
                BellowsDrawing.ID + "-" + place,
                "class",
                step(place).direction().label());
    }

    // The reeds take half of their air before the stroke of air and half after it.
    private void pressed(int place, CurveScale scale) {
        Sounding sounding = performance.get(place);
        double reeds = sounding.openingAfter() - sounding.openingBefore() - sounding.airMoved();
        double middle = scale.x((times[place] + times[place + 1]) / 2);
        double before = scale.y(sounding.openingBefore() + reeds / 2);
        double after = scale.y(sounding.openingAfter() - reeds / 2);
        svg.begin(
                "g",
                "id",
                BellowsDrawing.ID + "-" + place,
                "class",
                step(place).direction().label());
        svg.line(scale.x(times[place]), scale.y(sounding.openingBefore()), middle, before);
        svg.line(middle, before, middle, after, "class", "air", "stroke-width", 4.5, "stroke-linecap", "butt");
        svg.line(middle, after, scale.x(times[place + 1]), scale.y(sounding.openingAfter()));
        svg.end();
    }

    // At the end of the stroke where the curve does not go on; beside it where the frame is too near.
    private void word(int place, CurveScale scale) {
        Sounding sounding = performance.get(place);
        AirUse air = step(place).air();
        if (air == AirUse.NONE) {
            return;
        }
        double upper = scale.y(Math.max(sounding.openingBefore(), sounding.openingAfter()));
        double lower = scale.y(Math.min(sounding.openingBefore(), sounding.openingAfter()));
        double y = sounding.airMoved() > 0 ? upper - 6 : lower + 15;
        double x = scale.x((times[place] + times[place + 1]) / 2);
        boolean beside = y < scale.top() + 12 || y > scale.bottom() - 4;
        double within = Math.max(CurveScale.LEFT + WORD, Math.min(CurveScale.RIGHT - WORD, x));
        svg.words(
                beside ? Math.max(CurveScale.LEFT + 2 * WORD, x - 5) : within,
                beside ? (upper + lower) / 2 : y,
                air == AirUse.FULL ? "air" : "light air",
                "class",
                "air",
                "text-anchor",
                beside ? "end" : "middle");
    }

    /** Draws as much as lies in a row of how the bellows would go on without the air button. */
    void draw(WithoutAir course, CurveRows.Row row, CurveScale scale) {
        int first = Math.max(row.first().first(), course.from());
        int end = Math.min(row.last().end(), course.last() + 1);
        if (first >= end) {
            return;
        }
        StringBuilder points = new StringBuilder(point(times[first], opening(course, first), scale));
        boolean ends = end == course.last() + 1 && course.end() != WithoutAir.End.LASTS;
        for (int place = first; place < (ends ? end - 1 : end); place++) {
            points.append(' ').append(point(times[place + 1], opening(course, place + 1), scale));
        }
        if (ends) {
            points.append(' ').append(point(endTime(course), limit(course.end()), scale));
        }
        svg.draw(
                "polyline",
                "class",
                "without-air",
                "points",
                points,
                "fill",
                "none",
                "stroke",
                "currentColor",
                "stroke-width",
                1.2,
                "stroke-dasharray",
                CurveLegend.WITHOUT_AIR);
        if (ends) {
            cross(scale.x(endTime(course)), scale.y(limit(course.end())), course.end());
        }
    }

    /** Returns when a course comes to the limit, within its last note. */
    private double endTime(WithoutAir course) {
        double before = opening(course, course.last());
        double share = (limit(course.end()) - before) / (course.lastOpening() - before);
        return times[course.last()] + share * (times[course.last() + 1] - times[course.last()]);
    }

    private double limit(WithoutAir.End end) {
        Bellows bellows = tune.instrument().bellows();
        return end == WithoutAir.End.CLOSED ? bellows.lowest() : bellows.highest();
    }

    private void cross(double x, double y, WithoutAir.End end) {
        CurveLegend.cross(svg, x, y);
        boolean room = x + 3 * WORD < CurveScale.RIGHT;
        svg.words(
                room ? x + 7 : x - 7,
                end == WithoutAir.End.CLOSED ? y - 2 : y + 10,
                end == WithoutAir.End.CLOSED ? "closed" : "wide open",
                "class",
                "end",
                "text-anchor",
                room ? "start" : "end",
                "font-style",
                "italic");
    }

    private double opening(WithoutAir course, int place) {
        return place == course.from()
                ? performance.get(place).openingBefore()
                : course.openings().get(place - course.from() - 1);
    }

    private String point(double time, double opening, CurveScale scale) {
        return Svg.number(scale.x(time)) + "," + Svg.number(scale.y(opening));
    }

    private Step step(int place) {
        return tune.solution().steps().get(performance.get(place).step());
    }
}
