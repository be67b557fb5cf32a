package org.bellowscribe.instrument;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.jspecify.annotations.Nullable;

/**
 * Turns timings into the figures of bellows and reeds. Air moved is flow times time, and every timing moves the whole
 * bellows: so the capacity is the flow of the held note, known from the model of the reeds, times its time; any other
 * flow is the capacity by its time, less the note that sounds with it.
 */
public final class Calibration {

    /** A stop-watch in one hand is good to half a second. */
    private static final double WATCH = 0.5;

    /** Figures that differ more than so many times from those of the library are doubted. */
    private static final double DOUBTFUL = 4;

    private static final double LEAST = 0.01;
    private static final double MOST = 1000;

    private final Instrument instrument;
    private final Timings timings;
    private final List<Figure> figures = new ArrayList<>();
    private final List<Diagnostic> remarks = new ArrayList<>();

    /**
     * A figure that a timing gives.
     *
     * @param element where it stands in an instrument file: the element, such as {@code bellows}
     * @param name its own element, such as {@code capacity}
     * @param before what it was
     * @param after what it is now
     * @param least what it would be had the watch been stopped half a second later
     * @param most what it would be had the watch been stopped half a second sooner; infinite if that is no time at all
     * @param why the timing in words
     */
    public record Figure(
            String element, String name, double before, double after, double least, double most, String why) {}

    private Calibration(Instrument instrument, Timings timings) {
        this.instrument = instrument;
        this.timings = timings;
    }

    /** Works the timings out. */
    public static Calibration of(Instrument instrument, Timings timings) {
        Calibration calibration = new Calibration(instrument, timings);
        calibration.checkPitch();
        if (calibration.remarks.isEmpty()) {
            calibration.work();
            calibration.check();
        }
        return calibration;
    }

    /** Returns what is to be changed, in the order of an instrument file; meaningless if a remark is an error. */
    public List<Figure> figures() {
        return List.copyOf(figures);
    }

    /** Returns errors for timings that cannot be, and warnings for those that are hard to believe. */
    public List<Diagnostic> remarks() {
        return List.copyOf(remarks);
    }

    private void checkPitch() {
        boolean there = instrument.buttons().stream()
                .flatMap(button -> Stream.of(button.push(), button.pull()).filter(Objects::nonNull))
                .anyMatch(timings.pitch()::equals);
        if (!there) {
            error(
                    "No button of %s gives %s.".formatted(instrument.name(), timings.pitch()),
                    "Maybe name the note that you held with --pitch.");
        }
        if (instrument.leftHand().isEmpty() && (timings.bass() != null || timings.chord() != null)) {
            error(
                    "%s has no bass side to time.".formatted(instrument.name()),
                    "Maybe leave out --with-bass and --with-chord.");
        }
        shorter("--with-bass", timings.bass());
        shorter("--with-chord", timings.chord());
        shorter("--air", timings.air());
        if (timings.air() != null && timings.lightAir() != null && timings.lightAir() < timings.air()) {
            error(
                    "--light-air (%s s) is shorter than --air (%s s), but a lightly pressed button lets less air through."
                            .formatted(seconds(timings.lightAir()), seconds(timings.air())),
                    "Maybe the two are exchanged.");
        }
    }

    private void shorter(String option, @Nullable Double time) {
        if (time != null && time >= timings.note()) {
            error(
                    "%s (%s s) must be shorter than --note (%s s): more air goes the same way."
                            .formatted(option, seconds(time), seconds(timings.note())),
                    "Maybe time both again from the same opening and equally loud.");
        }
    }

    private void work() {
        AirModel air = instrument.air();
        Bellows bellows = instrument.bellows();
        double flow = air.flow(timings.pitch());
        figures.add(new Figure(
                "bellows",
                "capacity",
                bellows.capacity(),
                flow * timings.note(),
                flow * Math.max(0, timings.note() - WATCH),
                flow * (timings.note() + WATCH),
                "%s alone lasted %s s".formatted(timings.pitch(), seconds(timings.note()))));
        add(
                "air-button",
                "light-flow",
                bellows.lightAirFlow(),
                timings.lightAir(),
                0,
                "the lightly pressed air button");
        add("air-button", "full-flow", bellows.fullAirFlow(), timings.air(), 0, "the air button");
        add("reeds", "bass-flow", air.bassFlow(), timings.bass(), flow, timings.pitch() + " with a bass");
        chord(air, flow);
    }

    /** Where chords have no thirds, that is what was timed; else the chord without its third changes in proportion. */
    private void chord(AirModel air, double flow) {
        if (timings.chord() == null) {
            return;
        }
        boolean thirdless = instrument.leftHand().stream()
                .flatMap(button -> Stream.of(button.push(), button.pull()).filter(Objects::nonNull))
                .filter(sound -> sound != null && sound.kind() == LeftHandKind.CHORD)
                .allMatch(sound -> sound != null && sound.third() == Third.NONE);
        String words = timings.pitch() + " with a chord";
        if (thirdless) {
            add("reeds", "chord-without-third-flow", air.chordWithoutThirdFlow(), timings.chord(), flow, words);
            return;
        }
        add("reeds", "chord-flow", air.chordFlow(), timings.chord(), flow, words);
        Figure chord = figures.get(figures.size() - 1);
        double share = air.chordFlow() == 0 ? 0 : air.chordWithoutThirdFlow() / air.chordFlow();
        figures.add(new Figure(
                "reeds",
                "chord-without-third-flow",
                air.chordWithoutThirdFlow(),
                chord.after() * share,
                chord.least() * share,
                chord.most() * share,
                "in proportion to the chord with its third"));
    }

    private void add(String element, String name, double before, @Nullable Double time, double beside, String words) {
        if (time != null) {
            double capacity = figures.get(0).after();
            figures.add(new Figure(
                    element,
                    name,
                    before,
                    capacity / time - beside,
                    Math.max(0, capacity / (time + WATCH) - beside),
                    time > WATCH ? capacity / (time - WATCH) - beside : Double.POSITIVE_INFINITY,
                    "%s lasted %s s".formatted(words, seconds(time))));
        }
    }

    private void check() {
        for (Figure figure : figures) {
            if (figure.after() < LEAST || figure.after() > MOST) {
                error(
                        "The %s comes out at %.1f, and an instrument may have %.2f to %.0f."
                                .formatted(figure.name(), figure.after(), LEAST, MOST),
                        "Maybe a timing is mistyped.");
            } else if (figure.before() > 0
                    && (figure.after() > DOUBTFUL * figure.before() || figure.after() * DOUBTFUL < figure.before())) {
                remarks.add(Diagnostic.warning(
                        DiagnosticCode.ODD_VALUE,
                        Place.FILE,
                        "The %s comes out at %.1f, which is far from %.1f."
                                .formatted(figure.name(), figure.after(), figure.before()),
                        "Maybe time it again: from fully open to closed, at usual loudness, without force."));
            }
        }
    }

    private static String seconds(double time) {
        return time == Math.rint(time) ? String.valueOf((long) time) : String.valueOf(time);
    }

    private void error(String text, String advice) {
        remarks.add(Diagnostic.error(DiagnosticCode.BAD_VALUE, Place.FILE, text, advice));
    }
}
