package org.bellowscribe.drawing;

import org.bellowscribe.decision.DecidedTune;

/**
 * Draws what the bellows do over one playing of a tune: how far open they are at every note of every pass, what the air
 * button adds or takes (upright strokes), and how it would go on without the air button until they are at their end. The
 * rows are those of {@link BellowsRow}, wider, and below each other on one picture for print, with a legend.
 */
public final class BellowsDrawing {

    /** What the ids of the picture begin with. */
    static final String ID = "bellows";

    private static final CurvePaper PAPER = CurvePaper.PRINT;
    private static final double MILLIMETERS = 180;
    private static final double TITLE = 22;

    private BellowsDrawing() {}

    /** Returns the picture: the element {@code svg} and nothing before it. */
    public static String of(DecidedTune tune) {
        Curve curve = new Curve(tune, PAPER);
        double height = TITLE + curve.rows().size() * PAPER.row() + CurveLegend.HEIGHT;
        Svg svg = new Svg(ID, PAPER.width(), height, MILLIMETERS);
        svg.describe(ID, "Bellows: " + tune.tune().title(), BellowsWords.of(tune, curve.performance()));
        CurveLegend.define(svg);
        svg.words(0, 14, tune.tune().title(), "class", "title", "font-size", 15, "font-weight", "bold");
        double y = TITLE;
        for (CurveRows.Row row : curve.rows()) {
            curve.draw(row, svg, y);
            y += PAPER.row();
        }
        CurveLegend.draw(svg, height - CurveLegend.HEIGHT);
        return svg.close();
    }
}
