package org.bellowscribe.page;

import java.util.List;

/**
 * Draws how far the bellows are open during a strip: time to the right, fully open at the top. Falling lines are pushed,
 * rising ones pulled; an upright step is air through the air button. The broken line is the same without the air button,
 * as long as it lasts.
 */
final class StripDrawing {

    /** Units of the drawing across, and from the left to where time begins and ends; the script knows them too. */
    static final int WIDTH = 360;

    static final int LEFT = 30;
    static final int RIGHT = 356;
    private static final int HEIGHT = 104;
    private static final int LETTER = 6;
    private static final int TOP = 6;
    private static final int BOTTOM = 86;

    private final Openings openings;
    private final Strip strip;
    private final int runsOut;
    private final double start;
    private final double seconds;
    private final StringBuilder svg = new StringBuilder();

    private StripDrawing(Openings openings, Strip strip) {
        this.openings = openings;
        this.strip = strip;
        runsOut = openings.runsOut();
        start = openings.moments().get(strip.first()).start();
        seconds = openings.moments().get(strip.end() - 1).end() - start;
    }

    /** Returns the drawing as a figure with its caption. */
    static String of(Openings openings, Strip strip) {
        StripDrawing drawing = new StripDrawing(openings, strip);
        drawing.draw();
        return """
                <figure class="strip" data-a="%d" data-z="%d"><figcaption>%s</figcaption>
                <svg viewBox="0 0 %d %d" role="img" aria-label="%s">%s</svg></figure>
                """.formatted(
                        strip.first(),
                        strip.end(),
                        Html.text(strip.name()),
                        WIDTH,
                        HEIGHT,
                        Html.text(drawing.words()),
                        drawing.svg);
    }

    private void draw() {
        ground();
        bars();
        if (openings.usesAir()) {
            path("dry", without());
        }
        path("way", way());
        presses();
        end();
    }

    private void ground() {
        box("calm", Openings.CALM_HIGH, Openings.CALM_LOW);
        box("end", 100, openings.high());
        box("end", openings.low(), 0);
        for (double at : new double[] {openings.high(), openings.low()}) {
            svg.append("<path class=\"limit\" d=\"M%d %sH%d\"/>".formatted(LEFT, Html.length(y(at)), RIGHT));
            label(LEFT - 3, y(at) + 3.5, "e", Math.round(at) + "%");
        }
        label(LEFT - 3, y(50) + 3.5, "e", "50");
    }

    private void bars() {
        double free = 0;
        for (PlayedMeasure measure : strip.measures()) {
            if (measure.events() > 0) {
                double x = x(openings.moments().get(measure.first()).start());
                upright("bar", x, 100, 0);
                // A pick-up may be too short for its number.
                if (x >= free) {
                    label(x + 2, HEIGHT - 6, "n", measure.number());
                    free = x + LETTER * (measure.number().length() + 1);
                }
            }
        }
    }

    private String way() {
        StringBuilder way = new StringBuilder();
        for (Openings.Moment moment : moments()) {
            point(way, moment.start(), moment.before());
            point(way, moment.end(), moment.after() - moment.air());
            if (moment.air() != 0) {
                point(way, moment.end(), moment.after());
            }
        }
        return way.toString();
    }

    private String without() {
        StringBuilder way = new StringBuilder();
        int last = runsOut < 0 ? strip.end() : Math.min(strip.end(), runsOut + 1);
        for (int i = strip.first(); i < last; i++) {
            Openings.Moment moment = openings.moments().get(i);
            point(way, moment.start(), moment.withoutBefore());
            point(way, moment.end(), moment.withoutAfter());
        }
        return way.toString();
    }

    private void presses() {
        for (Openings.Moment moment : moments()) {
            if (moment.air() != 0) {
                double x = x(moment.end());
                upright("air", x, moment.after() - moment.air(), moment.after());
                double top = y(Math.max(moment.after(), moment.after() - moment.air()));
                label(Math.min(x, RIGHT - 12), Math.max(top - 3, TOP + 8), "a", "air");
            }
        }
    }

    private void end() {
        if (runsOut >= strip.first() && runsOut < strip.end()) {
            Openings.Moment moment = openings.moments().get(runsOut);
            double x = x(moment.end());
            double y = y(moment.withoutAfter());
            svg.append("<path class=\"out\" d=\"M%s %sl8 8m0-8l-8 8\"/>"
                    .formatted(Html.length(x - 4), Html.length(y - 4)));
        }
    }

    private String words() {
        List<Openings.Moment> all = moments();
        double low = all.stream().mapToDouble(Openings.Moment::after).min().orElse(0);
        double high = all.stream().mapToDouble(Openings.Moment::after).max().orElse(0);
        long presses = all.stream().filter(moment -> moment.air() != 0).count();
        return "%s: from %d to %d percent open, between %d and %d%s"
                .formatted(
                        strip.name(),
                        Math.round(all.get(0).before()),
                        Math.round(all.get(all.size() - 1).after()),
                        Math.round(Math.min(low, all.get(0).before())),
                        Math.round(Math.max(high, all.get(0).before())),
                        presses == 0
                                ? ""
                                : presses == 1 ? ", air pressed once" : ", air pressed %d times".formatted(presses));
    }

    private List<Openings.Moment> moments() {
        return openings.moments().subList(strip.first(), strip.end());
    }

    private void box(String kind, double from, double to) {
        svg.append("<rect class=\"%s\" x=\"%d\" y=\"%s\" width=\"%d\" height=\"%s\"/>"
                .formatted(kind, LEFT, Html.length(y(from)), RIGHT - LEFT, Html.length(y(to) - y(from))));
    }

    private void upright(String kind, double x, double from, double to) {
        svg.append("<path class=\"%s\" d=\"M%s %sV%s\"/>"
                .formatted(kind, Html.length(x), Html.length(y(from)), Html.length(y(to))));
    }

    private void label(double x, double y, String kind, String words) {
        svg.append("<text class=\"%s\" x=\"%s\" y=\"%s\">%s</text>"
                .formatted(kind, Html.length(x), Html.length(y), Html.text(words)));
    }

    private void path(String kind, String points) {
        if (!points.isEmpty()) {
            svg.append("<path class=\"%s\" d=\"M%s\"/>".formatted(kind, points.substring(1)));
        }
    }

    private void point(StringBuilder way, double time, double opening) {
        String point = "L%s %s".formatted(Html.length(x(time)), Html.length(y(opening)));
        // The end of one note is the beginning of the next.
        if (!way.toString().endsWith(point)) {
            way.append(point);
        }
    }

    private double x(double time) {
        return LEFT + (RIGHT - LEFT) * (time - start) / seconds;
    }

    private static double y(double opening) {
        return BOTTOM - (BOTTOM - TOP) * Math.max(-4, Math.min(104, opening)) / 100;
    }
}
