package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.score.BarPlaces;
import org.bellowscribe.score.DanceTempo;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Harmony;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.ModeGuess;
import org.bellowscribe.score.PlayOrder;
import org.bellowscribe.score.PlayOrderFinder;
import org.bellowscribe.score.RoadRemark;
import org.bellowscribe.score.RoadSigns;
import org.bellowscribe.score.Tempo;
import org.bellowscribe.score.TimeSignature;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.Mode;
import org.bellowscribe.theory.Pitch;
import org.jspecify.annotations.Nullable;

/** Puts a tune together from the parts of a score. */
final class TuneBuilder {

    private final List<PartContent> parts;
    private final MelodyLine line;
    private final PartContent part;
    private final List<RoadSigns> signs;
    private final List<Diagnostic> remarks = new ArrayList<>();

    TuneBuilder(List<PartContent> parts, MelodyLine line, RoadMap road) {
        this.parts = parts;
        this.line = line;
        part = parts.get(line.part());
        signs = road.signs(part.measures().size());
    }

    void remark(Diagnostic remark) {
        remarks.add(remark);
    }

    Tune build(String title, String headWords, @Nullable Double tempo) throws DiagnosedException {
        OddValue bad = part.bad();
        if (bad != null) {
            throw new DiagnosedException(bad.refusal());
        }
        PlayOrder order = playOrder();
        List<TimeSignature> times = times();
        List<Fraction> lengths = new MeasureLengths(parts, line.part(), times).lengths();
        List<Event> events = new EventBuilder(line, lengths, order).build(part.measures());
        List<Measure> measures = measures(lengths, times, order, events);
        remarkNeverPlayed(order);
        return new Tune(
                title,
                part.id(),
                measures,
                events,
                harmonies(measures),
                tempo(tempo, title + "\n" + headWords, times.get(0)),
                order,
                remarks);
    }

    private PlayOrder playOrder() {
        PlayOrderFinder.Found found = PlayOrderFinder.find(signs);
        for (RoadRemark remark : found.remarks()) {
            remarks.add(Diagnostic.note(DiagnosticCode.PLAY_ORDER, place(remark.measure()), remark.text()));
        }
        return found.order();
    }

    private Place place(int measure) {
        return Place.measure(measure + 1, part.measures().get(measure).number(), part.id());
    }

    private List<TimeSignature> times() {
        List<TimeSignature> times = new ArrayList<>();
        TimeSignature last = part.measures().stream()
                .map(MeasureContent::time)
                .filter(time -> time != null)
                .findFirst()
                .orElse(null);
        if (last == null) {
            last = new TimeSignature(4, 4);
            remarks.add(Diagnostic.note(
                    DiagnosticCode.ASSUMED, Place.FILE, "The score has no time signature; it is read as 4/4."));
        }
        for (MeasureContent measure : part.measures()) {
            TimeSignature own = measure.time();
            last = own == null ? last : own;
            times.add(last);
        }
        return times;
    }

    private List<Measure> measures(
            List<Fraction> lengths, List<TimeSignature> times, PlayOrder order, List<Event> events) {
        List<BarPlaces.Written> written = new ArrayList<>();
        for (int i = 0; i < lengths.size(); i++) {
            boolean free = part.measures().get(i).free();
            Fraction full = free ? lengths.get(i) : times.get(i).measureLength();
            RoadSigns before = i == 0 ? RoadSigns.NONE : signs.get(i - 1);
            boolean section = signs.get(i).repeatStart()
                    || before.repeatEnd() != null && signs.get(i).endingStart() == null;
            written.add(new BarPlaces.Written(lengths.get(i), full, section));
        }
        List<Fraction> places = BarPlaces.find(written, order);
        List<Measure> measures = new ArrayList<>();
        Key key = firstKey(events);
        for (int i = 0; i < lengths.size(); i++) {
            MeasureContent content = part.measures().get(i);
            KeySignature own = content.key();
            key = own == null ? key : key(own, events);
            measures.add(new Measure(i, content.number(), lengths.get(i), places.get(i), times.get(i), key));
        }
        return measures;
    }

    private static Key firstKey(List<Event> events) {
        return key(new KeySignature(0, null), events);
    }

    private static Key key(KeySignature signature, List<Event> events) {
        Mode mode = signature.mode();
        if (mode == null) {
            Pitch last = events.stream()
                    .filter(event -> !event.isRest())
                    .reduce((first, second) -> second)
                    .map(event -> event.pitches().get(0))
                    .orElse(null);
            mode = last == null ? Mode.MAJOR : ModeGuess.of(signature.fifths(), last.pitchClass());
        }
        return new Key(signature.fifths(), mode);
    }

    private List<Harmony> harmonies(List<Measure> measures) throws DiagnosedException {
        return new HarmonyCollector(parts, line.part(), measures, remarks).collect();
    }

    private Tempo tempo(@Nullable Double stated, String words, TimeSignature time) {
        if (stated != null) {
            return new Tempo(stated, true);
        }
        DanceTempo dance = DanceTempo.of(words, time);
        remarks.add(Diagnostic.note(
                DiagnosticCode.ASSUMED,
                Place.FILE,
                "The score states no tempo; it is read at %d quarter notes a minute, usual for a %s in %s."
                        .formatted(Math.round(dance.quartersPerMinute()), dance.name(), time)));
        return new Tempo(dance.quartersPerMinute(), false);
    }

    private void remarkNeverPlayed(PlayOrder order) {
        Set<Integer> played = new HashSet<>(order.measures());
        List<Integer> silent = new ArrayList<>();
        for (int i = 0; i < part.measures().size(); i++) {
            if (!played.contains(i)) {
                silent.add(i);
            }
        }
        if (!silent.isEmpty()) {
            remarks.add(Diagnostic.warning(
                    DiagnosticCode.NEVER_PLAYED,
                    place(silent.get(0)),
                    "The order of play never reaches measure %s; nothing is marked there."
                            .formatted(new PlayOrder(silent).shortForm()),
                    "Maybe a repeat or an ending is missing."));
        }
    }
}
