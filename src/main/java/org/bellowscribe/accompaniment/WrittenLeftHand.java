package org.bellowscribe.accompaniment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Pitch;

/**
 * A left hand that the score has written out: a note alone is a bass, notes together are a chord. A lowest note a fifth or
 * more below a chord is a bass that is struck with it.
 */
public final class WrittenLeftHand {

    /** The notes of a chord in close position lie nearer to one another: common practice, no source. */
    private static final int LEAST_GAP = 7;

    private final Tune tune;
    private final List<WantedSound> wanted = new ArrayList<>();
    /** The first measure and the number of strokes of each chord that is not plain. */
    private final Map<String, List<Measure>> odd = new LinkedHashMap<>();

    private WrittenLeftHand(Tune tune) {
        this.tune = tune;
    }

    /**
     * What the left hand is to sound.
     *
     * @param wanted the sounds in score order, each with the one harmony that is written
     * @param remarks a note for each chord that is no plain one
     */
    public record Found(List<WantedSound> wanted, List<Diagnostic> remarks) {

        /** Copies the lists. */
        public Found {
            wanted = List.copyOf(wanted);
            remarks = List.copyOf(remarks);
        }
    }

    /**
     * Reads a left hand. A stroke sounds no longer than the melody note over it.
     *
     * @param tune the tune
     * @param voices the note groups and rests of each voice of the left hand
     */
    public static Found read(Tune tune, List<List<Event>> voices) {
        WrittenLeftHand reading = new WrittenLeftHand(tune);
        voices.stream()
                .flatMap(List::stream)
                .filter(stroke -> !stroke.isRest())
                .sorted(Comparator.comparingInt(Event::measure)
                        .thenComparing(Event::onset)
                        .thenComparing(stroke -> stroke.pitches().get(0)))
                .forEach(reading::add);
        return new Found(reading.wanted, reading.remarks());
    }

    private void add(Event stroke) {
        Measure measure = tune.measures().get(stroke.measure());
        Sounding sounding = Sounding.at(tune, measure, stroke.onset());
        if (sounding == null) {
            return;
        }
        List<Pitch> pitches = stroke.pitches();
        if (pitches.size() == 1 || hasBassBelow(pitches)) {
            ChordSymbol root = WrittenChord.fifth(pitches.get(0).pitchClass());
            want(sounding, stroke, LeftHandKind.BASS, root);
            pitches = pitches.subList(1, pitches.size());
        }
        if (!pitches.isEmpty()) {
            WrittenChord chord = WrittenChord.of(pitches);
            if (!chord.isPlain()) {
                odd.computeIfAbsent(names(pitches, chord), name -> new ArrayList<>())
                        .add(measure);
            }
            want(sounding, stroke, LeftHandKind.CHORD, chord.chord());
        }
    }

    private static boolean hasBassBelow(List<Pitch> pitches) {
        return pitches.size() > 2
                && pitches.get(1).midiNumber() - pitches.get(0).midiNumber() >= LEAST_GAP
                && WrittenChord.of(pitches.subList(1, pitches.size())).isPlain();
    }

    private void want(Sounding sounding, Event stroke, LeftHandKind kind, ChordSymbol chord) {
        Measure measure = tune.measures().get(stroke.measure());
        boolean firstBeat = stroke.onset().plus(measure.beatOffset()).equals(Fraction.ZERO);
        wanted.add(new WantedSound(
                sounding.event().index(),
                sounding.offset(),
                Fraction.min(stroke.duration(), sounding.left()),
                kind,
                firstBeat,
                List.of(new HarmonyOption(chord, 0))));
    }

    private static String names(List<Pitch> pitches, WrittenChord chord) {
        String notes = pitches.stream().map(Pitch::toString).collect(Collectors.joining(", "));
        return "The left hand's notes %s are no major chord, no minor chord and no open fifth; they are read as %s"
                .formatted(notes, chord.chord());
    }

    private List<Diagnostic> remarks() {
        List<Diagnostic> remarks = new ArrayList<>();
        odd.forEach((text, measures) -> {
            Measure first = measures.get(0);
            String more = measures.size() == 1 ? "" : " (%d times in all)".formatted(measures.size());
            remarks.add(Diagnostic.note(
                    DiagnosticCode.LEFT_HAND, Place.measure(first.index() + 1, first.number(), ""), text + more + "."));
        });
        return remarks;
    }
}
