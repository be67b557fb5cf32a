package org.bellowscribe.instrument;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.bellowscribe.theory.PitchClass;

/**
 * Where the left hand sounds a degree of a key. Lists of directions are in the order push, pull; empty if it does not
 * sound.
 *
 * @param root root of the degree
 * @param third third of its triad in the scale, never {@code NONE}
 * @param bass directions with a bass on the root
 * @param chord directions with a chord on the root, with the third of the scale or without third
 * @param bassUnderRelative for a minor triad the directions in which its bass sounds together with the chord a minor
 *     third higher, which makes a minor seventh chord; empty for a major triad
 */
public record DegreeBasses(
        PitchClass root,
        Third third,
        List<BellowsDirection> bass,
        List<BellowsDirection> chord,
        List<BellowsDirection> bassUnderRelative) {

    /** Copies the lists. */
    public DegreeBasses {
        bass = List.copyOf(bass);
        chord = List.copyOf(chord);
        bassUnderRelative = List.copyOf(bassUnderRelative);
    }

    /**
     * Finds where an instrument sounds a degree.
     *
     * @param third third of the triad in the scale
     */
    public static DegreeBasses of(Instrument instrument, PitchClass root, Third third) {
        List<BellowsDirection> bass = directions(instrument, LeftHandSound.bass(root));
        List<BellowsDirection> chord =
                directions(instrument, LeftHandSound.chord(root, third), LeftHandSound.chord(root, Third.NONE));
        List<BellowsDirection> relative = third == Third.MINOR
                ? directions(
                        instrument,
                        LeftHandSound.chord(root.plus(3), Third.MAJOR),
                        LeftHandSound.chord(root.plus(3), Third.NONE))
                : List.of();
        return new DegreeBasses(
                root,
                third,
                bass,
                chord,
                relative.stream().filter(bass::contains).toList());
    }

    /** Returns how well the degree is supported: 2 with its chord, 1 with its bass only, 0 with neither. */
    public int support() {
        if (!chord.isEmpty()) {
            return 2;
        }
        return bass.isEmpty() ? 0 : 1;
    }

    /** Returns words such as {@code G push, g push pull}: the trade's letters with the directions that have them. */
    public String label() {
        String capital = LeftHandSound.bass(root).label();
        String small = LeftHandSound.chord(root, third).label();
        String relative = capital + "+" + root.plus(3).toString().toLowerCase(Locale.ROOT);
        String label = List.of(words(capital, bass), words(small, chord), words(relative, bassUnderRelative)).stream()
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(", "));
        return label.isEmpty() ? "-" : label;
    }

    private static String words(String letters, List<BellowsDirection> directions) {
        return directions.isEmpty()
                ? ""
                : letters + " "
                        + directions.stream().map(BellowsDirection::label).collect(Collectors.joining(" "));
    }

    private static List<BellowsDirection> directions(Instrument instrument, LeftHandSound... sounds) {
        return Arrays.stream(BellowsDirection.values())
                .filter(direction -> instrument.leftHand().stream()
                        .anyMatch(button -> Arrays.asList(sounds).contains(button.sound(direction))))
                .toList();
    }
}
