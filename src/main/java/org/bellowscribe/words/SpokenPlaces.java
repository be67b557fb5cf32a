package org.bellowscribe.words;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bellowscribe.annotation.style.Phrase;
import org.bellowscribe.annotation.style.Wordings;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.Whereabouts;
import org.bellowscribe.theory.Fraction;

/** Measures and beats, spoken. Beats are those of the time signature: a measure of 6/8 has six. */
final class SpokenPlaces {

    private static final Map<Fraction, Phrase> PARTS = Map.of(
            Fraction.of(1, 2), Phrase.BEAT_HALF,
            Fraction.of(1, 4), Phrase.BEAT_QUARTER,
            Fraction.of(3, 4), Phrase.BEAT_THREE_QUARTERS,
            Fraction.of(1, 3), Phrase.BEAT_THIRD,
            Fraction.of(2, 3), Phrase.BEAT_TWO_THIRDS);

    private final Tune tune;
    private final Wordings<Phrase> phrases;
    private final List<String> numbers;

    SpokenPlaces(Tune tune, Wordings<Phrase> phrases) {
        this.tune = tune;
        this.phrases = phrases;
        numbers = new Whereabouts(tune).measures();
    }

    /** Returns where an event begins. */
    String of(Event event) {
        Measure measure = tune.measureOf(event);
        return phrases.say(
                Phrase.PLACE, Map.of("measure", numbers.get(measure.index()), "beat", beat(measure, event.onset())));
    }

    /**
     * Returns something that the left hand sounds after the note has begun, with its place.
     *
     * @param offset time from the start of the event, more than 0
     */
    String later(Event event, Fraction offset, String sounds) {
        Measure measure = tune.measureOf(event);
        Fraction time = event.onset().plus(offset);
        while (time.compareTo(measure.length()) >= 0 && measure.index() + 1 < numbers.size()) {
            time = time.minus(measure.length());
            measure = tune.measures().get(measure.index() + 1);
        }
        String beat = beat(measure, time);
        return measure.index() == event.measure()
                ? phrases.say(Phrase.LATER, Map.of("beat", beat, "sounds", sounds))
                : phrases.say(
                        Phrase.LATER_MEASURE,
                        Map.of("measure", numbers.get(measure.index()), "beat", beat, "sounds", sounds));
    }

    /** Returns the measures in the order in which they sound, in runs. */
    String order() {
        List<String> places = tune.measures().stream()
                .map(measure -> String.valueOf(measure.index()))
                .toList();
        return Stream.of(tune.playOrder().sections(places).split(", "))
                .map(this::run)
                .collect(Collectors.joining(", "));
    }

    private String run(String places) {
        List<String> ends = Stream.of(places.split("-"))
                .map(place -> numbers.get(Integer.parseInt(place)))
                .toList();
        return ends.size() == 1
                ? ends.get(0)
                : phrases.say(Phrase.FROM_TO, Map.of("first", ends.get(0), "last", ends.get(1)));
    }

    private String beat(Measure measure, Fraction onset) {
        Fraction beats = measure.beatOffset()
                .plus(onset)
                .times(Fraction.of(measure.time().beatType(), 4));
        long whole = (long) Math.floor(beats.toDouble());
        Fraction part = beats.minus(Fraction.of(whole, 1));
        String beat = String.valueOf(whole + 1);
        if (!part.isPositive()) {
            return beat;
        }
        Phrase phrase = PARTS.get(part);
        return phrase == null
                ? phrases.say(Phrase.BEAT_PART, Map.of("beat", beat, "part", part))
                : phrases.say(phrase, "beat", beat);
    }
}
