package org.bellowscribe.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.replay.PlayedMeasure;
import org.bellowscribe.replay.Sounding;
import org.bellowscribe.solver.AirUse;

/**
 * A row of the curve of a tune as a picture of its own, for pages: narrow enough for a telephone, its colors left to a style
 * sheet. What is pushed has the class {@code push}, what is pulled {@code pull}, the strokes of the air button {@code air}, how
 * it would go on without {@code without-air}, where that comes to its end {@code end}; {@code frame} holds the rectangle of
 * the curve.
 *
 * @param first the first place of the performance in it, from 0
 * @param end the place after the last
 * @param svg the element {@code svg}, in it words for those who cannot see it
 */
public record BellowsRow(int first, int end, String svg) {

    private static final int PERCENT = 100;

    /** Returns the rows of a tune in the order of play. */
    public static List<BellowsRow> of(DecidedTune tune) {
        Curve curve = new Curve(tune, CurvePaper.PAGE);
        List<BellowsRow> rows = new ArrayList<>();
        for (CurveRows.Row row : curve.rows()) {
            if (row.last().end() > row.first().first()) {
                Svg svg = new Svg(CurvePaper.PAGE.width(), CurvePaper.PAGE.row(), words(tune, curve, row));
                curve.draw(row, svg, 0);
                rows.add(new BellowsRow(row.first().first(), row.last().end(), svg.close()));
            }
        }
        return rows;
    }

    private static String words(DecidedTune tune, Curve curve, CurveRows.Row row) {
        List<Sounding> all =
                curve.performance().subList(row.first().first(), row.last().end());
        double percent = PERCENT / tune.instrument().bellows().capacity();
        double begins = all.get(0).openingBefore();
        double low = begins;
        double high = begins;
        int presses = 0;
        for (Sounding sounding : all) {
            low = Math.min(low, sounding.openingAfter());
            high = Math.max(high, sounding.openingAfter());
            presses += tune.solution().steps().get(sounding.step()).air() == AirUse.NONE ? 0 : 1;
        }
        double ends = all.get(all.size() - 1).openingAfter();
        return "Measures %s: from %d to %d percent open, between %d and %d%s"
                .formatted(
                        row.sections().stream().map(BellowsRow::name).collect(Collectors.joining(", then ")),
                        Math.round(begins * percent),
                        Math.round(ends * percent),
                        Math.round(low * percent),
                        Math.round(high * percent),
                        presses == 0
                                ? ""
                                : presses == 1 ? ", air pressed once" : ", air pressed %d times".formatted(presses));
    }

    private static String name(List<PlayedMeasure> section) {
        return CurveFrame.name(section);
    }
}
