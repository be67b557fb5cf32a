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

    // Half of the longest word, in letters.
    private static final double WORD = 3.7;

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

    /** Draws the places of a row: what is pushed or pulled without a turn as one line. */
    void draw(CurveRows.Row row, CurveScale scale) {
        int first = row.first().first();
        int end = row.last().end();
        svg.begin(
                "g",
                "class",
                "opening",
                "fill",
                "none",
                "stroke",
                "currentColor",
                "stroke-width",
                1.8,
                "stroke-linejoin",
                "round");
        for (int place = first, next; place < end; place = next) {
            next = turn(place, end);
            stroke(place, next, scale);
        }
        svg.end();
        for (int place = first; place < end; place++) {
            if (step(place).air() != AirUse.NONE) {
                air(place, scale);
            }
        }
    }

    /** Returns the place after the last that is played in one direction with another. */
    private int turn(int first, int end) {
        int next = first + 1;
        while (next < end && step(next).direction() == step(first).direction()) {
            next++;
        }
        return next;
    }

    private void stroke(int first, int end, CurveScale scale) {
        Way way = new Way(scale.x(times[first]), scale.y(performance.get(first).openingBefore()));
        for (int place = first; place < end; place++) {
            if (step(place).air() != AirUse.NONE) {
                way.to(scale.x(middle(place)), scale.y(beforeAir(place)));
                way.to(scale.x(middle(place)), scale.y(afterAir(place)));
            }
            way.to(scale.x(times[place + 1]), scale.y(performance.get(place).openingAfter()));
        }
        svg.draw("path", "class", step(first).direction().label(), "d", way);
    }

    private double middle(int place) {
        return (times[place] + times[place + 1]) / 2;
    }

    // The reeds take half of their air before the stroke of air and half after it.
    private double beforeAir(int place) {
        return performance.get(place).openingBefore() + reeds(place) / 2;
    }

    private double afterAir(int place) {
        return performance.get(place).openingAfter() - reeds(place) / 2;
    }

    private double reeds(int place) {
        Sounding sounding = performance.get(place);
        return sounding.openingAfter() - sounding.openingBefore() - sounding.airMoved();
    }

    private void air(int place, CurveScale scale) {
        double x = scale.x(middle(place));
        svg.line(
                x,
                scale.y(beforeAir(place)),
                x,
                scale.y(afterAir(place)),
                "class",
                "air",
                "stroke",
                "currentColor",
                "stroke-width",
                4.5);
        word(place, scale);
    }

    // At the end of the stroke where the curve does not go on; beside it where the frame is too near.
    private void word(int place, CurveScale scale) {
        Sounding sounding = performance.get(place);
        CurvePaper paper = scale.paper();
        double word = WORD * paper.letter();
        double upper = scale.y(Math.max(sounding.openingBefore(), sounding.openingAfter()));
        double lower = scale.y(Math.min(sounding.openingBefore(), sounding.openingAfter()));
        double y = sounding.airMoved() > 0 ? upper - 6 : lower + 15;
        double x = scale.x(middle(place));
        // Between two presses in a row there is no room either.
        boolean pressedNext = place + 1 < performance.size() && step(place + 1).air() != AirUse.NONE;
        boolean beside = pressedNext || y < scale.top() + 12 || y > scale.bottom() - 4;
        double within = Math.max(paper.left() + word, Math.min(paper.right() - word, x));
        svg.words(
                beside ? Math.max(paper.left() + 2 * word, x - 5) : within,
                beside ? (upper + lower) / 2 : y,
                step(place).air() == AirUse.FULL ? "air" : "light air",
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
        Way way = new Way(scale.x(times[first]), scale.y(opening(course, first)));
        boolean ends = end == course.last() + 1 && course.end() != WithoutAir.End.LASTS;
        for (int place = first; place < (ends ? end - 1 : end); place++) {
            way.to(scale.x(times[place + 1]), scale.y(opening(course, place + 1)));
        }
        if (ends) {
            way.to(scale.x(endTime(course)), scale.y(limit(course.end())));
        }
        svg.draw(
                "path",
                "class",
                "without-air",
                "d",
                way,
                "fill",
                "none",
                "stroke",
                "currentColor",
                "stroke-width",
                1.2,
                "stroke-dasharray",
                CurveLegend.WITHOUT_AIR);
        if (ends) {
            cross(scale.x(endTime(course)), course.end(), scale);
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

    private void cross(double x, WithoutAir.End end, CurveScale scale) {
        double y = scale.y(limit(end));
        CurveLegend.cross(svg, x, y);
        boolean room = x + 3 * WORD * scale.paper().letter() < scale.paper().right();
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

    private Step step(int place) {
        return tune.solution().steps().get(performance.get(place).step());
    }
}
