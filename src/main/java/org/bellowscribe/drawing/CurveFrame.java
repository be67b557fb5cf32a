package org.bellowscribe.drawing;

import java.util.List;
import org.bellowscribe.instrument.Bellows;
import org.bellowscribe.score.Whereabouts;
import org.bellowscribe.solver.OpeningRule;

/** Draws what the curve is seen against: the limits of the bellows, the sections over it, the measures under it. */
final class CurveFrame {

    private static final double PERCENT = 100;
    private static final double LETTER = 7;

    private final Svg svg;
    private final Bellows bellows;
    private final List<String> measures;

    CurveFrame(Svg svg, Bellows bellows, Whereabouts places) {
        this.svg = svg;
        this.bellows = bellows;
        measures = places.measures();
    }

    /** Draws the frame of a row. */
    void draw(CurveRows.Row row, CurveScale scale) {
        double right = scale.x(row.last().ends());
        row.sections().forEach(section -> tint(section, scale));
        reserve(bellows.capacity(), bellows.highest(), right, scale);
        reserve(bellows.lowest(), 0, right, scale);
        svg.begin("g", "class", "frame", "fill", "none", "stroke", "currentColor");
        svg.rect(CurveScale.LEFT, scale.top(), right - CurveScale.LEFT, CurveScale.PLOT);
        comfort(right, scale);
        row.sections().forEach(section -> bars(section, scale));
        svg.end();
        labels(scale);
        double free = 0;
        for (List<PlayedMeasure> section : row.sections()) {
            title(section, scale);
            free = numbers(section, scale, free);
        }
    }

    // Every other playing of a section lies on a tint; its title tells it too.
    private void tint(List<PlayedMeasure> section, CurveScale scale) {
        double x = scale.x(section.get(0).starts());
        double width = scale.x(section.get(section.size() - 1).ends()) - x;
        if (section.get(0).pass() % 2 == 0) {
            svg.rect(x, scale.top(), width, CurveScale.PLOT, "class", "later-pass", "fill-opacity", "0.1");
        }
    }

    private void reserve(double from, double to, double right, CurveScale scale) {
        double height = scale.y(to) - scale.y(from);
        svg.rect(
                CurveScale.LEFT,
                scale.y(from),
                right - CurveScale.LEFT,
                height,
                "class",
                "reserve",
                "fill",
                CurveLegend.HATCHED);
    }

    private void comfort(double right, CurveScale scale) {
        svg.begin("g", "class", "comfortable", "stroke-width", "0.7", "stroke-dasharray", CurveLegend.COMFORTABLE);
        for (int percent : List.of(OpeningRule.COMFORTABLE_FROM, OpeningRule.COMFORTABLE_TO)) {
            double y = scale.y(bellows.capacity() * percent / PERCENT);
            svg.line(CurveScale.LEFT, y, right, y);
        }
        svg.end();
    }

    private void bars(List<PlayedMeasure> section, CurveScale scale) {
        double start = scale.x(section.get(0).starts());
        svg.line(start, scale.top() - 18, start, scale.bottom(), "class", "section", "stroke-width", 1.6);
        for (PlayedMeasure measure : section) {
            double x = scale.x(measure.starts());
            svg.line(x, scale.bottom(), x, scale.bottom() + 4);
        }
    }

    private void labels(CurveScale scale) {
        svg.begin("g", "class", "openings", "text-anchor", "end");
        svg.words(CurveScale.LEFT - 5, scale.top() + 4, "wide open");
        svg.words(CurveScale.LEFT - 5, scale.y(bellows.capacity() / 2) + 4, "half open");
        svg.words(CurveScale.LEFT - 5, scale.bottom() + 4, "closed");
        svg.end();
    }

    private void title(List<PlayedMeasure> section, CurveScale scale) {
        double x = scale.x(section.get(0).starts());
        double width = scale.x(section.get(section.size() - 1).ends()) - x - 8;
        String from = measures.get(section.get(0).measure());
        String to = measures.get(section.get(section.size() - 1).measure());
        String range = from.equals(to) ? from : from + "-" + to;
        int pass = section.get(0).pass();
        String words = "%s, playing %d".formatted(range, pass);
        String shown = LETTER * words.length() <= width ? words : "%s (%d)".formatted(range, pass);
        if (LETTER * shown.length() <= width + LETTER) {
            svg.words(x + 4, scale.top() - 7, shown, "class", "section", "font-weight", "bold");
        }
    }

    /** Writes the numbers that have room, and returns where the next has room. */
    private double numbers(List<PlayedMeasure> section, CurveScale scale, double free) {
        double next = free;
        for (PlayedMeasure measure : section) {
            String number = measures.get(measure.measure());
            double x = scale.x(measure.starts()) + 1;
            if (x >= next && measure.seconds() > 0) {
                svg.words(x, scale.bottom() + 15, number, "class", "measure");
                next = x + LETTER * (number.length() + 1);
            }
        }
        return next;
    }
}
