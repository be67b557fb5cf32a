package org.bellowscribe.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.OpeningPart;
import org.bellowscribe.annotation.mark.HandPlace;
import org.bellowscribe.annotation.mark.OpeningAtRepeat;
import org.bellowscribe.annotation.mark.Reversals;
import org.bellowscribe.annotation.style.Phrase;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.annotation.style.Wordings;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.TimeSignature;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Step;

/**
 * A decided tune in words. Everything is told that a sheet can show, whatever marks a sheet has: who listens cannot look
 * anything up.
 *
 * @param heading what to know before the first note, a sentence each
 * @param lines one line for each note group and rest, in the order of the score
 */
public record TuneInWords(List<String> heading, List<WordLine> lines) {

    /** Copies the lists. */
    public TuneInWords {
        heading = List.copyOf(heading);
        lines = List.copyOf(lines);
    }

    /**
     * Puts a tune into words.
     *
     * @param style the style whose language is spoken
     */
    public static TuneInWords of(DecidedTune decided, Style style) {
        Arrangement arrangement = Arrangement.of(decided, style);
        return new TuneInWords(heading(decided, arrangement), lines(decided.onSheet(), arrangement));
    }

    /** Returns the listing: the heading, then a line for each line, an empty line before each measure. */
    public String text() {
        StringBuilder text = new StringBuilder();
        heading.forEach(line -> text.append(line).append('\n'));
        int measure = -1;
        for (WordLine line : lines) {
            text.append(line.measure() == measure ? "" : "\n").append(line).append('\n');
            measure = line.measure();
        }
        return text.toString();
    }

    private static List<String> heading(DecidedTune decided, Arrangement arrangement) {
        Wordings<Phrase> phrases = arrangement.style().spoken();
        SpokenNotes notes = new SpokenNotes(phrases);
        Tune sheet = decided.onSheet();
        List<String> heading = new ArrayList<>();
        heading.add(phrases.say(Phrase.TITLE, "title", sheet.title()));
        heading.add(phrases.say(Phrase.INSTRUMENT, "name", decided.instrument().name()));
        heading.add(
                phrases.say(Phrase.KEY, "key", notes.key(sheet.measures().get(0).key())) + ", "
                        + time(sheet.measures().get(0).time(), phrases));
        if (arrangement.above() != 0) {
            String key = notes.key(decided.tune().measures().get(0).key());
            heading.add(phrases.say(
                    Phrase.SOUNDING, Map.of("key", key, "semitones", "%+d".formatted(arrangement.above()))));
        }
        heading.add(
                phrases.say(Phrase.TEMPO, "quarters", Math.round(sheet.tempo().quartersPerMinute())));
        heading.add(phrases.say(Phrase.ORDER, "measures", new SpokenPlaces(sheet, phrases).order()));
        if (!arrangement.notes().isEmpty()) {
            heading.add(opening(Phrase.START, Reversals.firstMove(arrangement), arrangement));
        }
        heading.add(phrases.say(Phrase.LASTING));
        return heading;
    }

    private static List<WordLine> lines(Tune sheet, Arrangement arrangement) {
        Wordings<Phrase> phrases = arrangement.style().spoken();
        SpokenPlaces places = new SpokenPlaces(sheet, phrases);
        SpokenStep spoken = new SpokenStep(arrangement, sheet);
        Set<Integer> hands = events(new HandPlace(), arrangement);
        Set<Integer> again = events(new OpeningAtRepeat(), arrangement);
        List<WordLine> lines = new ArrayList<>();
        TimeSignature time = sheet.measures().get(0).time();
        for (Step step : arrangement.solution().steps()) {
            Measure measure = sheet.measureOf(step.event());
            int event = step.event().index();
            List<String> pieces = new ArrayList<>();
            if (!measure.time().equals(time)) {
                time = measure.time();
                pieces.add(time(time, phrases));
            }
            if (again.contains(event)) {
                pieces.add(opening(Phrase.AGAIN, step, arrangement));
            }
            if (hands.contains(event)) {
                pieces.add(phrases.say(Phrase.HAND, "button", step.handOn()));
            }
            pieces.addAll(spoken.pieces(step));
            lines.add(new WordLine(event, measure.index(), places.of(step.event()), String.join(", ", pieces)));
        }
        return lines;
    }

    private static String time(TimeSignature time, Wordings<Phrase> phrases) {
        return phrases.say(Phrase.TIME, Map.of("beats", time.beats(), "type", time.beatType()));
    }

    private static String opening(Phrase phrase, Step step, Arrangement arrangement) {
        OpeningPart part = OpeningPart.nearest(
                step.openingBefore(), arrangement.instrument().bellows());
        Wordings<Phrase> phrases = arrangement.style().spoken();
        Phrase open = part == OpeningPart.CLOSED ? Phrase.OPEN_NOT : Phrase.valueOf("OPEN_" + part.name());
        return phrases.say(phrase, "opening", phrases.say(open));
    }

    private static Set<Integer> events(Annotator annotator, Arrangement arrangement) {
        return annotator.marks(arrangement).stream().map(Mark::event).collect(Collectors.toSet());
    }
}
