package org.bellowscribe.drawing;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.instrument.Bellows;
import org.bellowscribe.replay.AirLeftOut;
import org.bellowscribe.replay.Performance;
import org.bellowscribe.replay.Sounding;
import org.bellowscribe.replay.WithoutAir;
import org.bellowscribe.score.Whereabouts;
import org.bellowscribe.solver.AirUse;

/**
 * Draws what the bellows do over one playing of a tune: how far open they are at every note of every pass, what the air
 * button adds or takes (upright strokes), and how it would go on without the air button until they are at their end.
 *
 * <p>What a page may take hold of: what is drawn for place {@code n} of the performance, from 0, has the id {@code bellows-n}
 * and the class {@code push} or {@code pull}, its upright stroke the class {@code air}; each row is a group of the class
 * {@code row} that tells its places ({@code data-first}, {@code data-last}); how it would go on has the class {@code
 * without-air}, where it comes to its end {@code end}; the background of every other playing of a section {@code later-pass}.
 */
public final class BellowsDrawing {

    /** What the ids of the picture begin with. */
    static final String ID = "bellows";

    private static final double MILLIMETERS = 180;
    private static final double TITLE = 22;
    private static final double ROW = CurveScale.HEAD + CurveScale.PLOT + CurveScale.FOOT;

    private BellowsDrawing() {}

    /** Returns the picture: the element {@code svg} and nothing before it. */
    public static String of(DecidedTune tune) {
        List<Sounding> performance = Performance.of(tune.tune(), tune.instrument(), tune.solution());
        List<CurveRows.Row> rows = CurveRows.of(PlayedMeasure.sections(tune.tune(), performance));
        double height = TITLE + rows.size() * ROW + CurveLegend.HEIGHT;
        Svg svg = new Svg(ID, CurveScale.WIDTH, height, MILLIMETERS);
        svg.describe(ID, "Bellows: " + tune.tune().title(), BellowsWords.of(tune, performance));
        CurveLegend.define(svg);
        svg.words(0, 14, tune.tune().title(), "class", "title", "font-size", 15, "font-weight", "bold");
        draw(svg, tune, performance, rows);
        CurveLegend.draw(svg, height - CurveLegend.HEIGHT);
        return svg.close();
    }

    private static void draw(Svg svg, DecidedTune tune, List<Sounding> performance, List<CurveRows.Row> rows) {
        Bellows bellows = tune.instrument().bellows();
        CurveFrame frame = new CurveFrame(svg, bellows, new Whereabouts(tune.tune()));
        CurveLine line = new CurveLine(svg, tune, performance);
        List<WithoutAir> courses = withoutAir(tune, performance);
        double longest = rows.stream().mapToDouble(CurveRows.Row::seconds).max().orElse(1);
        double y = TITLE;
        for (CurveRows.Row row : rows) {
            CurveScale scale = CurveScale.of(row, y, longest, bellows.capacity());
            svg.begin(
                    "g",
                    "class",
                    "row",
                    "data-first",
                    row.first().first(),
                    "data-last",
                    row.last().end() - 1);
            frame.draw(row, scale);
            courses.forEach(course -> line.draw(course, row, scale));
            line.draw(row, scale);
            svg.end();
            y += ROW;
        }
    }

    /**
     * Returns how the bellows would go on without the air button: from the first press to where they are at their end, again
     * from the next press after that, and so on.
     */
    private static List<WithoutAir> withoutAir(DecidedTune tune, List<Sounding> performance) {
        AirLeftOut leftOut = new AirLeftOut(performance, tune.instrument().bellows(), step -> true);
        List<WithoutAir> courses = new ArrayList<>();
        int place = 0;
        while (place < performance.size()) {
            Sounding sounding = performance.get(place);
            if (tune.solution().steps().get(sounding.step()).air() != AirUse.NONE) {
                WithoutAir course = leftOut.follow(place, sounding.openingBefore());
                courses.add(course);
                place = course.last();
            }
            place++;
        }
        return courses;
    }
}
