package org.bellowscribe.drawing;

import java.util.List;
import org.bellowscribe.instrument.Bellows;
import org.bellowscribe.replay.PlayedMeasure;
import org.bellowscribe.solver.OpeningRule;

/** Draws what a row of the curve is seen against: the limits of the bellows, the sections over it, the measures under it. */
final class CurveFrame {

    private static final double PERCENT = 100;
    private static final double TICK = 4;

    private final Svg svg;
    private final Bellows bellows;
    private final CurveScale scale;
    private final CurvePaper paper;

    CurveFrame(Svg svg, Bellows bellows, CurveScale scale) {
        this.svg = svg;
        this.bellows = bellows;
        this.scale = scale;
        paper = scale.paper();
    }

    /** Draws the frame of a row. */
    void draw(CurveRows.Row row) {
        double right = scale.x(row.last().ends());
        row.sections().forEach(this::tint);
        reserve(bellows.capacity(), bellows.highest(), right);
        reserve(bellows.lowest(), 0, right);
        svg.begin("g", "class", "frame", "fill", "none", "stroke", "currentColor");
        svg.rect(paper.left(), scale.top(), right - paper.left(), paper.plot());
        comfort(right);
        row.sections().forEach(this::bars);
        svg.end();
        labels();
        double free = 0;
        for (List<PlayedMeasure> section : row.sections()) {
            title(section);
            free = numbers(section, free);
        }
    }

    // Every other playing of a section lies on a tint; its title tells it too.
    private void tint(List<PlayedMeasure> section) {
        double x = scale.x(section.get(0).starts());
        double width = scale.x(section.get(section.size() - 1).ends()) - x;
        if (section.get(0).pass() % 2 == 0) {
            svg.rect(x, scale.top(), width, paper.plot(), "class", "later-pass", "fill-opacity", "0.1");
        }
    }

    private void reserve(double from, double to, double right) {
        double y = scale.y(from);
        svg.rect(paper.left(), y, right - paper.left(), scale.y(to) - y, "class", "reserve", "fill", paper.reserve());
    }

    private void comfort(double right) {
        svg.begin("g", "class", "comfortable", "stroke-width", "0.7", "stroke-dasharray", CurveLegend.COMFORTABLE);
        for (int percent : List.of(OpeningRule.COMFORTABLE_FROM, OpeningRule.COMFORTABLE_TO)) {
            double y = scale.y(bellows.capacity() * percent / PERCENT);
            svg.line(paper.left(), y, right, y);
        }
        svg.end();
    }

    private void bars(List<PlayedMeasure> section) {
        double start = scale.x(section.get(0).starts());
        svg.line(
                start,
                scale.top() - paper.head() + 2 * TICK,
                start,
                scale.bottom(),
                "class",
                "section",
                "stroke-width",
                1.6);
        StringBuilder ticks = new StringBuilder();
        for (PlayedMeasure measure : section) {
            ticks.append("M%s %sv%s"
                    .formatted(Svg.number(scale.x(measure.starts())), Svg.number(scale.bottom()), Svg.number(TICK)));
        }
        svg.draw("path", "class", "measures", "d", ticks);
    }

    private void labels() {
        double x = paper.left() - 5;
        svg.begin("g", "class", "openings", "text-anchor", "end");
        svg.words(x, scale.top() + 4, paper.openings().get(0));
        svg.words(x, scale.y(bellows.capacity() / 2) + 4, paper.openings().get(1));
        svg.words(x, scale.bottom() + 4, paper.openings().get(2));
        svg.end();
    }

    private void title(List<PlayedMeasure> section) {
        double x = scale.x(section.get(0).starts());
        double width = scale.x(section.get(section.size() - 1).ends()) - x - paper.letter();
        String words = name(section);
        PlayedMeasure first = section.get(0);
        String shown = paper.letter() * words.length() <= width || first.passes() == 1
                ? words
                : "%s (%d)".formatted(range(section), first.pass());
        if (paper.letter() * shown.length() <= width + paper.letter()) {
            svg.words(x + 4, scale.top() - paper.letter(), shown, "class", "section", "font-weight", "bold");
        }
    }

    /** Returns what a section is called, such as {@code 1-8, 2nd time}. */
    static String name(List<PlayedMeasure> section) {
        PlayedMeasure first = section.get(0);
        return first.passes() == 1 ? range(section) : "%s, %s".formatted(range(section), first.time());
    }

    private static String range(List<PlayedMeasure> section) {
        String from = section.get(0).number();
        String to = section.get(section.size() - 1).number();
        return from.equals(to) ? from : from + "-" + to;
    }

    /** Writes the numbers that have room, and returns where the next has room. */
    private double numbers(List<PlayedMeasure> section, double free) {
        double next = free;
        for (PlayedMeasure measure : section) {
            double x = scale.x(measure.starts()) + 1;
            if (x >= next && measure.seconds() > 0) {
                svg.words(x, scale.bottom() + 2 * paper.letter(), measure.number(), "class", "measure");
                next = x + paper.letter() * (measure.number().length() + 1);
            }
        }
        return next;
    }
}
