package org.bellowscribe.drawing;

/** Says what the lines of the curve mean. */
final class CurveLegend {

    static final String HATCHED = "url(#" + BellowsDrawing.ID + "-reserve)";
    static final String COMFORTABLE = "7 4";
    static final String WITHOUT_AIR = "1.5 3";

    /** Height of the legend. */
    static final double HEIGHT = 62;

    private static final double SAMPLE = 30;

    private CurveLegend() {}

    /** Defines the hatching of what is kept in reserve. */
    static void define(Svg svg) {
        svg.begin("defs");
        svg.begin(
                "pattern",
                "id",
                BellowsDrawing.ID + "-reserve",
                "width",
                5,
                "height",
                5,
                "patternUnits",
                "userSpaceOnUse",
                "patternTransform",
                "rotate(45)");
        svg.line(0, 0, 0, 5, "stroke", "currentColor", "stroke-opacity", "0.45");
        svg.end();
        svg.end();
    }

    /** Draws the legend. */
    static void draw(Svg svg, double top) {
        svg.begin("g", "class", "legend");
        double first = top + 14;
        double second = top + 34;
        double third = top + 54;
        sample(svg, first, "1.8", "none");
        svg.words(CurvePaper.PRINT.left() + SAMPLE + 6, first, "opening: up is pulled, down is pushed");
        double right = CurvePaper.PRINT.width() / 2;
        svg.line(
                right + SAMPLE / 2,
                first - 12,
                right + SAMPLE / 2,
                first + 2,
                "stroke",
                "currentColor",
                "stroke-width",
                4.5);
        svg.words(right + SAMPLE + 6, first, "by the air button");
        sample(svg, second, "0.7", COMFORTABLE);
        svg.words(CurvePaper.PRINT.left() + SAMPLE + 6, second, "between these: comfortable");
        svg.rect(right, second - 10, SAMPLE, 12, "fill", HATCHED, "stroke", "currentColor", "stroke-width", "0.5");
        svg.words(right + SAMPLE + 6, second, "kept in reserve");
        sample(svg, third, "1.2", WITHOUT_AIR);
        cross(svg, CurvePaper.PRINT.left() + SAMPLE, third - 4);
        svg.words(
                CurvePaper.PRINT.left() + SAMPLE + 12,
                third,
                "without the air button, to where the bellows could be used no further");
        svg.end();
    }

    /** Draws the cross that stands where the bellows are at their end. */
    static void cross(Svg svg, double x, double y) {
        svg.draw(
                "path",
                "class",
                "end",
                "d",
                "M%s %sl8 8m0 -8l-8 8".formatted(Svg.number(x - 4), Svg.number(y - 4)),
                "stroke",
                "currentColor",
                "stroke-width",
                2);
    }

    private static void sample(Svg svg, double y, String width, String dashes) {
        svg.line(
                CurvePaper.PRINT.left(),
                y - 4,
                CurvePaper.PRINT.left() + SAMPLE,
                y - 4,
                "stroke",
                "currentColor",
                "stroke-width",
                width,
                "stroke-dasharray",
                dashes);
    }
}
