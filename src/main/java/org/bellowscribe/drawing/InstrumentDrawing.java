package org.bellowscribe.drawing;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.instrument.Instrument;

/**
 * Draws the buttons of both hands with what they sound, and how often each is struck in one playing of a tune: above its line
 * on the push, below it on the pull. The more often, the darker.
 *
 * <p>What a page may take hold of: the melody button {@code 2.5} is a group with the id {@code button-2-5}, a left-hand button
 * {@code 1.3} one with the id {@code bass-1-3}, both of the class {@code used} or {@code unused}; in it stand two halves of the
 * classes {@code push} and {@code pull}.
 */
public final class InstrumentDrawing {

    /** What the ids of the picture itself begin with. */
    static final String ID = "instrument";

    private static final double MILLIMETERS_PER_UNIT = 0.25;
    private static final double DARKEST = 0.5;
    private static final double LIGHTEST = 0.1;

    private final Svg svg;
    private final ButtonUse use;
    private final int most;

    private InstrumentDrawing(Svg svg, ButtonUse use) {
        this.svg = svg;
        this.use = use;
        most = Math.max(most(use.melody()), most(use.leftHand()));
    }

    private static int most(Map<String, ButtonUse.Times> times) {
        return times.values().stream().mapToInt(ButtonUse.Times::most).max().orElse(0);
    }

    /** Returns the picture: the element {@code svg} and nothing before it. */
    public static String of(DecidedTune tune) {
        Instrument instrument = tune.instrument();
        KeyboardFaces faces = new KeyboardFaces(instrument);
        // A long title is cut by the edge of the picture, not by us: the description has it in full.
        Svg svg = new Svg(ID, faces.width(), faces.height(), faces.width() * MILLIMETERS_PER_UNIT);
        InstrumentDrawing drawing = new InstrumentDrawing(svg, ButtonUse.of(tune));
        svg.describe(ID, "Buttons: " + tune.tune().title(), drawing.words(instrument));
        svg.words(0, 15, tune.tune().title(), "class", "title", "font-size", 15, "font-weight", "bold");
        svg.words(0, 33, instrument.name(), "class", "title");
        faces.headings()
                .forEach(heading -> svg.words(heading.x(), heading.y(), heading.words(), "text-anchor", "middle"));
        faces.faces().forEach(drawing::draw);
        double foot = faces.height() - 24;
        svg.words(0, foot, "Upper half: pushed, lower half: pulled.");
        svg.words(0, foot + 17, "Beside it: how often in one playing; the oftener, the darker.");
        return svg.close();
    }

    private void draw(KeyboardFaces.Face face) {
        ButtonUse.Times times =
                (face.melody() ? use.melody() : use.leftHand()).getOrDefault(face.id(), ButtonUse.Times.NONE);
        boolean used = times.sum() > 0;
        svg.begin(
                "g",
                "id",
                (face.melody() ? "button-" : "bass-") + face.id().replace('.', '-'),
                "class",
                used ? "used" : "unused");
        half(face, "push", times.push());
        half(face, "pull", times.pull());
        outline(face, used ? "2" : "0.6");
        number(face);
        svg.end();
    }

    private void outline(KeyboardFaces.Face face, String width) {
        double radius = KeyboardFaces.RADIUS;
        svg.draw(
                "circle",
                "cx",
                face.x(),
                "cy",
                face.y(),
                "r",
                radius,
                "fill",
                "none",
                "stroke",
                "currentColor",
                "stroke-width",
                width);
        svg.line(
                face.x() - radius,
                face.y(),
                face.x() + radius,
                face.y(),
                "stroke",
                "currentColor",
                "stroke-width",
                "0.6");
    }

    private void number(KeyboardFaces.Face face) {
        double radius = KeyboardFaces.RADIUS;
        svg.words(
                face.above() ? face.x() : face.x() - radius - 4,
                face.above() ? face.y() - radius - 5 : face.y() + 4,
                String.valueOf(face.number()),
                "class",
                "number",
                "text-anchor",
                face.above() ? "middle" : "end");
    }

    private void half(KeyboardFaces.Face face, String way, int times) {
        boolean push = way.equals("push");
        double radius = KeyboardFaces.RADIUS;
        double opacity = times == 0 ? 0 : LIGHTEST + (DARKEST - LIGHTEST) * times / most;
        svg.draw(
                "path",
                "class",
                way,
                "d",
                "M%s %sa%3$s %3$s 0 0 %4$d %5$s 0z"
                        .formatted(
                                Svg.number(face.x() - radius),
                                Svg.number(face.y()),
                                Svg.number(radius),
                                push ? 1 : 0,
                                Svg.number(2 * radius)),
                "fill-opacity",
                String.format(Locale.ROOT, "%.2f", opacity));
        svg.words(
                face.x(),
                face.y() + (push ? -4 : 12),
                push ? face.push() : face.pull(),
                "class",
                way,
                "font-size",
                10,
                "text-anchor",
                "middle");
        if (times > 0) {
            svg.words(face.x() + radius + 4, face.y() + (push ? -3 : 13), times + "×", "class", way);
        }
    }

    private String words(Instrument instrument) {
        String melody = used(use.melody(), instrument.buttons().size(), "melody buttons");
        String leftHand = used(use.leftHand(), instrument.leftHand().size(), "buttons of the left hand");
        return "%s. %s%s"
                .formatted(instrument.name(), melody, instrument.leftHand().isEmpty() ? "" : " " + leftHand);
    }

    private static String used(Map<String, ButtonUse.Times> times, int all, String what) {
        if (times.isEmpty()) {
            return "None of the %d %s is used.".formatted(all, what);
        }
        List<String> oftenest = times.entrySet().stream()
                .sorted(Comparator.comparingInt((Map.Entry<String, ButtonUse.Times> entry) ->
                                -entry.getValue().sum())
                        .thenComparing(Map.Entry::getKey))
                .limit(3)
                .map(entry -> "%s (%d times pushed, %d pulled)"
                        .formatted(
                                entry.getKey(),
                                entry.getValue().push(),
                                entry.getValue().pull()))
                .toList();
        return "%d of %d %s are used; most often %s.".formatted(times.size(), all, what, String.join(", ", oftenest));
    }
}
