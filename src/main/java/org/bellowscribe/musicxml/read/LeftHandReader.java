package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.audiveris.proxymusic.ScorePartwise;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.Fraction;

/** Reads a left hand that a score has written out, beside its melody. */
public final class LeftHandReader {

    private static final String OURS =
            "A part that --written-left-hand added does not count: marks are taken out before a score is read.";

    private final String text;
    private final String called;
    private final Tune tune;

    private LeftHandReader(String text, String called, Tune tune) {
        this.text = text;
        this.called = called;
        this.tune = tune;
    }

    /**
     * Returns the note groups and rests of every voice but the melody on the lowest staff of a part.
     *
     * @param text the decoded text of the score
     * @param part id of the part, or its name, or its place in the score from 1
     * @param tune the tune that was read from the same text
     * @throws DiagnosedException if there is no such part, or nothing in it to play, or a value that cannot be read
     */
    public static List<List<Event>> read(String text, String part, Tune tune) throws DiagnosedException {
        try {
            return new LeftHandReader(text, part, tune).read();
        } catch (ArithmeticException e) {
            // Fractions are exact and stop where they no longer could be.
            throw refusal(
                    "The durations of the left hand in part %s do not add up in exact fractions.".formatted(part),
                    "Maybe the divisions are wrong; export the tune again.");
        }
    }

    private List<List<Event>> read() throws DiagnosedException {
        LeanScore lean = LeanScoreParser.parse(text);
        ScorePartwise score = ScoreUnmarshaller.unmarshal(lean);
        List<PartContent> parts = parts(score, lean, 1);
        int index = find(parts);
        int staff = parts.get(index).notes().mapToInt(WrittenNote::staff).max().orElse(1);
        PartContent part =
                staff == 1 ? parts.get(index) : parts(score, lean, staff).get(index);
        OddValue bad = part.bad();
        if (bad != null) {
            throw new DiagnosedException(bad.refusal());
        }
        List<List<Event>> voices = voices(part, index, staff);
        if (voices.isEmpty()) {
            throw refusal(
                    "Part %s has no notes for the left hand besides the melody.".formatted(part.id()),
                    new PartNames(parts).list(),
                    OURS);
        }
        return voices;
    }

    private static List<PartContent> parts(ScorePartwise score, LeanScore lean, int staff) {
        PartReader.Gathered gathered = new PartReader.Gathered(lean.bad(), new RoadMap(), new TempoMarks());
        return new PartsReader(score, lean, gathered).read(staff);
    }

    private int find(List<PartContent> parts) throws DiagnosedException {
        try {
            return new PartNames(parts).find(called);
        } catch (DiagnosedException e) {
            List<Diagnostic> all = new ArrayList<>();
            for (Diagnostic each : e.diagnostics()) {
                List<String> advice = new ArrayList<>(each.advice());
                advice.add(OURS);
                all.add(new Diagnostic(each.severity(), each.code(), each.place(), each.text(), advice));
            }
            throw new DiagnosedException(all);
        }
    }

    private List<List<Event>> voices(PartContent part, int index, int staff) throws DiagnosedException {
        Set<Integer> melody = new HashSet<>();
        tune.events().forEach(event -> melody.addAll(event.noteIndices()));
        List<Fraction> lengths = tune.measures().stream().map(Measure::length).toList();
        int common = Math.min(lengths.size(), part.measures().size());
        List<String> names = part.notes()
                .filter(note -> note.staff() == staff)
                .map(WrittenNote::voice)
                .distinct()
                .toList();
        List<List<Event>> voices = new ArrayList<>();
        for (String name : names) {
            MelodyLine line = new MelodyLine(index, name, staff, staff, true);
            List<Event> events = new EventBuilder(line, lengths, tune.playOrder())
                    .build(part.measures().subList(0, common));
            CommonTick.check(events, lengths);
            boolean sounds = events.stream().anyMatch(event -> !event.isRest());
            if (sounds
                    && events.stream()
                            .flatMap(event -> event.noteIndices().stream())
                            .noneMatch(melody::contains)) {
                voices.add(events);
            }
        }
        return voices;
    }

    private static DiagnosedException refusal(String text, String... advice) {
        return new DiagnosedException(Diagnostic.error(DiagnosticCode.LEFT_HAND, Place.FILE, text, advice));
    }
}
