package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.score.BarPlaces;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Harmony;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.PlayOrder;
import org.bellowscribe.score.PlayOrderFinder;
import org.bellowscribe.score.RoadRemark;
import org.bellowscribe.score.RoadSigns;
import org.bellowscribe.score.TimeSignature;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.PitchClass;
import org.jspecify.annotations.Nullable;

/** Puts a tune together from the parts of a score. */
final class TuneBuilder {

    /** More than any tune of the shared corpora by a factor of ten. */
    private static final int MAX_EVENTS = 5_000;
    /** Sixty-four measures of 4/4. */
    private static final Fraction LONGEST = Fraction.of(256, 1);

    private final List<PartContent> parts;
    private final MelodyLine line;
    private final PartContent part;
    private final RoadMap road;
    private final List<Diagnostic> remarks;

    /**
     * Creates a builder.
     *
     * @param remarks takes the remarks
     */
    TuneBuilder(List<PartContent> parts, MelodyLine line, RoadMap road, List<Diagnostic> remarks) {
        this.parts = parts;
        this.line = line;
        part = parts.get(line.part());
        this.road = road;
        this.remarks = remarks;
    }

    /**
     * Returns the tune.
     *
     * @param title its title
     * @param tempos finds its tempo
     */
    Tune build(String title, TempoFinder tempos) throws DiagnosedException {
        requireReadable();
        List<TimeSignature> times = new TimeFinder(part.measures()).times(remarks);
        List<RoadSigns> signs = road.signs(times.size());
        PlayOrder order = playOrder(signs);
        List<Fraction> lengths = new MeasureLengths(parts, line.part(), times).lengths();
        List<Event> events = new EventBuilder(line, lengths, order).build(part.measures());
        requireShort(events);
        requireUsualLengths(events);
        CommonTick.check(events, lengths);
        KeyFinder keys = new KeyFinder(part.measures(), lastNote(events, order));
        List<BarPlaces.Written> bars = bars(lengths, times, signs);
        List<Fraction> places = BarPlaces.find(bars, order);
        List<Measure> measures = new ArrayList<>();
        List<Key> keyOf = keys.keys();
        for (int i = 0; i < times.size(); i++) {
            String number = part.measures().get(i).number();
            measures.add(new Measure(i, number, lengths.get(i), places.get(i), times.get(i), keyOf.get(i)));
        }
        List<Harmony> harmonies = harmonies(measures, bars, keys);
        remarkUnplayed(order);
        return new Tune(
                title, part.id(), measures, events, harmonies, tempos.tempo(times.get(0), remarks), order, remarks);
    }

    private void requireReadable() throws DiagnosedException {
        OddValue bad = part.bad();
        if (bad != null) {
            throw new DiagnosedException(bad.refusal());
        }
        if (part.assumption() != null) {
            remarks.add(part.assumption());
        }
    }

    private List<Harmony> harmonies(List<Measure> measures, List<BarPlaces.Written> bars, KeyFinder keys)
            throws DiagnosedException {
        List<Integer> sections = IntStream.range(0, bars.size())
                .filter(i -> bars.get(i).section())
                .boxed()
                .toList();
        List<Harmony> written = new HarmonyCollector(parts, line.part(), measures, remarks).collect();
        List<Harmony> harmonies = new HarmonyGaps(written, measures, sections).marked(remarks);
        if (harmonies.isEmpty()) {
            keys.remark(remarks);
        }
        return harmonies;
    }

    private static void requireShort(List<Event> events) throws DiagnosedException {
        if (events.size() > MAX_EVENTS) {
            throw new DiagnosedException(Diagnostic.error(
                    DiagnosticCode.NOT_MUSICXML,
                    Place.FILE,
                    "The melody has %d notes and rests, and a tune may have %d.".formatted(events.size(), MAX_EVENTS),
                    "Maybe cut the score into its tunes."));
        }
    }

    private void requireUsualLengths(List<Event> events) throws DiagnosedException {
        for (Event event : events) {
            if (event.duration().compareTo(LONGEST) > 0) {
                throw new DiagnosedException(Diagnostic.error(
                        DiagnosticCode.BAD_VALUE,
                        place(event.measure()),
                        "A note or rest lasts %.0f quarter notes, and one may last %.0f."
                                .formatted(event.duration().toDouble(), LONGEST.toDouble()),
                        "Maybe a duration or the divisions are wrong; export the tune again."));
            }
        }
    }

    private PlayOrder playOrder(List<RoadSigns> signs) {
        PlayOrderFinder.Found found = PlayOrderFinder.find(signs);
        List<RoadRemark> all = new ArrayList<>(road.remarks());
        all.addAll(found.remarks());
        for (RoadRemark remark : all) {
            if (remark.measure() < signs.size()) {
                remarks.add(Diagnostic.note(DiagnosticCode.PLAY_ORDER, place(remark.measure()), remark.text()));
            }
        }
        return found.order();
    }

    private Place place(int measure) {
        return Place.measure(measure + 1, part.measures().get(measure).number(), part.id());
    }

    private List<BarPlaces.Written> bars(List<Fraction> lengths, List<TimeSignature> times, List<RoadSigns> signs) {
        List<BarPlaces.Written> bars = new ArrayList<>();
        for (int i = 0; i < lengths.size(); i++) {
            boolean free = part.measures().get(i).free();
            RoadSigns before = i == 0 ? RoadSigns.NONE : signs.get(i - 1);
            boolean section = signs.get(i).repeatStart()
                    || (signs.get(i).endingStart() == null && (before.repeatEnd() != null || road.isAfterDoubleBar(i)));
            bars.add(new BarPlaces.Written(
                    lengths.get(i), free ? lengths.get(i) : times.get(i).measureLength(), section));
        }
        return bars;
    }

    /** Returns the last note that sounds: the highest of the last note group in the order of play. */
    private static PitchClass lastNote(List<Event> events, PlayOrder order) throws DiagnosedException {
        Map<Integer, Event> lastOf = new HashMap<>();
        events.stream().filter(event -> !event.isRest()).forEach(event -> lastOf.put(event.measure(), event));
        Event last = null;
        for (int i = order.measures().size() - 1; i >= 0 && last == null; i--) {
            last = lastOf.get(order.measures().get(i));
        }
        if (last == null) {
            throw new DiagnosedException(Diagnostic.error(
                    DiagnosticCode.NO_NOTES, Place.FILE, "The order of play reaches no note of the melody."));
        }
        return last.pitches().get(last.pitches().size() - 1).pitchClass();
    }

    private void remarkUnplayed(PlayOrder order) {
        Set<Integer> played = new HashSet<>(order.measures());
        List<Integer> silent = new ArrayList<>();
        int hidden = 0;
        int slashed = 0;
        @Nullable Integer repeated = null;
        for (int i = 0; i < part.measures().size(); i++) {
            MeasureContent measure = part.measures().get(i);
            if (!played.contains(i) && !line.notes(measure).isEmpty()) {
                silent.add(i);
            }
            hidden += count(measure, WrittenNote.Sort.HIDDEN);
            slashed += count(measure, WrittenNote.Sort.SLASHED);
            boolean empty = line.notes(measure).stream().noneMatch(WrittenNote::isNote);
            repeated = measure.repeatsLast() && empty && repeated == null ? Integer.valueOf(i) : repeated;
        }
        remark(silent, hidden, repeated);
        remarkSlashed(slashed);
    }

    private int count(MeasureContent measure, WrittenNote.Sort sort) {
        return (int)
                line.notes(measure).stream().filter(note -> note.sort() == sort).count();
    }

    private void remarkSlashed(int slashed) {
        if (slashed > 0) {
            remarks.add(Diagnostic.note(
                    DiagnosticCode.ASSUMED,
                    Place.FILE,
                    "%s: they show a rhythm, not a pitch, and are left out."
                            .formatted(
                                    slashed == 1
                                            ? "1 note of the melody has a slash head"
                                            : "%d notes of the melody have slash heads".formatted(slashed))));
        }
    }

    private void remark(List<Integer> silent, int hidden, @Nullable Integer repeated) {
        if (!silent.isEmpty()) {
            remarks.add(Diagnostic.warning(
                    DiagnosticCode.NEVER_PLAYED,
                    place(silent.get(0)),
                    "The order of play never reaches measure %s; nothing is marked there."
                            .formatted(new PlayOrder(silent).shortForm()),
                    "Maybe a repeat or an ending is missing."));
        }
        if (hidden > 0) {
            remarks.add(Diagnostic.note(
                    DiagnosticCode.ASSUMED,
                    Place.FILE,
                    hidden == 1
                            ? "1 note of the melody is hidden; it is read as a rest."
                            : "%d notes of the melody are hidden; they are read as rests.".formatted(hidden)));
        }
        if (repeated != null) {
            remarks.add(Diagnostic.warning(
                    DiagnosticCode.ASSUMED,
                    place(repeated),
                    "A sign that repeats the measure before stands for notes; it is read as a rest.",
                    "Maybe write the notes out, so that they can be marked."));
        }
    }
}
