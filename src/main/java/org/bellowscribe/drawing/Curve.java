package org.bellowscribe.drawing;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.replay.AirLeftOut;
import org.bellowscribe.replay.Performance;
import org.bellowscribe.replay.PlayedMeasure;
import org.bellowscribe.replay.Sounding;
import org.bellowscribe.replay.WithoutAir;
import org.bellowscribe.solver.AirUse;

/** The curve of one tune on some paper: its rows, drawn one after the other. */
final class Curve {

    private final DecidedTune tune;
    private final CurvePaper paper;
    private final List<Sounding> performance;
    private final List<CurveRows.Row> rows;
    private final List<WithoutAir> courses;
    private final double longest;

    Curve(DecidedTune tune, CurvePaper paper) {
        this.tune = tune;
        this.paper = paper;
        performance = Performance.of(tune.tune(), tune.instrument(), tune.solution());
        rows = CurveRows.of(PlayedMeasure.sections(tune.tune(), performance), paper.measures());
        courses = withoutAir();
        longest = rows.stream().mapToDouble(CurveRows.Row::seconds).max().orElse(1);
    }

    List<Sounding> performance() {
        return performance;
    }

    List<CurveRows.Row> rows() {
        return rows;
    }

    /** Draws a row whose upper edge is at a height. */
    void draw(CurveRows.Row row, Svg svg, double y) {
        double capacity = tune.instrument().bellows().capacity();
        double units = (paper.right() - paper.left()) / longest;
        CurveScale scale = new CurveScale(paper, y + paper.head(), row.first().starts(), units, capacity);
        CurveLine line = new CurveLine(svg, tune, performance);
        svg.begin("g", "class", "row");
        new CurveFrame(svg, tune.instrument().bellows(), scale).draw(row);
        courses.forEach(course -> line.draw(course, row, scale));
        line.draw(row, scale);
        svg.end();
    }

    /**
     * Returns how the bellows would go on without the air button: from the first press to where they are at their end, again
     * from the next press after that, and so on.
     */
    private List<WithoutAir> withoutAir() {
        AirLeftOut leftOut = new AirLeftOut(performance, tune.instrument().bellows(), step -> true);
        List<WithoutAir> all = new ArrayList<>();
        int place = 0;
        while (place < performance.size()) {
            Sounding sounding = performance.get(place);
            if (tune.solution().steps().get(sounding.step()).air() != AirUse.NONE) {
                WithoutAir course = leftOut.follow(place, sounding.openingBefore());
                all.add(course);
                place = course.last();
            }
            place++;
        }
        return all;
    }
}
