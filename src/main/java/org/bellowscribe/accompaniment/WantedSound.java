package org.bellowscribe.accompaniment;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.PitchClass;

/**
 * A moment at which the pattern of the metre, or a written left hand, wants a sound.
 *
 * @param event 0-based index of the event during which it falls
 * @param offset time from the start of that event
 * @param duration how long it sounds; never beyond the end of the event, so that nothing sounds through a reversal
 * @param kind bass or chord
 * @param tone which note of the harmony a bass is to sound; {@code ROOT} for a chord
 * @param firstBeat true on the first beat of a measure
 * @param harmonies what may be meant: exactly one where the score gives a chord symbol, else several
 * @param melody what the melody has at that moment; empty if nobody asks for a sound that goes with it
 */
public record WantedSound(
        int event,
        Fraction offset,
        Fraction duration,
        LeftHandKind kind,
        ChordTone tone,
        boolean firstBeat,
        List<HarmonyOption> harmonies,
        Set<PitchClass> melody) {

    /** Copies the harmonies and sorts the melody. */
    public WantedSound {
        harmonies = List.copyOf(harmonies);
        melody = Collections.unmodifiableSet(new TreeSet<>(melody));
    }

    /** Creates a chord, or a bass on the root. */
    public WantedSound(
            int event,
            Fraction offset,
            Fraction duration,
            LeftHandKind kind,
            boolean firstBeat,
            List<HarmonyOption> harmonies) {
        this(event, offset, duration, kind, ChordTone.ROOT, firstBeat, harmonies, Set.of());
    }

    /** Returns the same sound some semitones higher, lower if negative. */
    public WantedSound plus(int semitones) {
        List<HarmonyOption> moved = harmonies.stream()
                .map(harmony -> new HarmonyOption(harmony.chord().plus(semitones), harmony.misfit()))
                .toList();
        Set<PitchClass> over = melody.stream().map(note -> note.plus(semitones)).collect(Collectors.toSet());
        return new WantedSound(event, offset, duration, kind, tone, firstBeat, moved, over);
    }
}
