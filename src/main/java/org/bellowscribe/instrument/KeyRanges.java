package org.bellowscribe.instrument;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.Mode;
import org.bellowscribe.theory.Pitch;
import org.bellowscribe.theory.PitchClass;
import org.jspecify.annotations.Nullable;

/** Finds the keys and modes that an instrument can play. */
public final class KeyRanges {

    private static final List<Integer> MAJOR_SCALE = List.of(0, 2, 4, 5, 7, 9, 11);
    private static final int FEWEST_FIFTHS = -5;
    private static final int MOST_FIFTHS = 6;

    private final Instrument instrument;
    private final NavigableSet<Pitch> sounding = new TreeSet<>();

    private KeyRanges(Instrument instrument) {
        this.instrument = instrument;
        instrument.buttons().stream()
                .flatMap(button -> Stream.of(button.push(), button.pull()))
                .filter(Objects::nonNull)
                .forEach(sounding::add);
    }

    /**
     * Returns the keys of which the instrument plays at least one octave from tonic to tonic. The key that the left hand
     * supports best comes first, then the one with more octaves, then the one with fewer sharps or flats, then by mode.
     *
     * @param modes the modes to try, each with the signatures of five flats to six sharps
     */
    public static List<KeyRange> of(Instrument instrument, List<Mode> modes) {
        KeyRanges ranges = new KeyRanges(instrument);
        List<KeyRange> found = new ArrayList<>();
        for (int fifths = FEWEST_FIFTHS; fifths <= MOST_FIFTHS; fifths++) {
            for (Mode mode : modes) {
                KeyRange range = ranges.range(new Key(fifths, mode));
                if (range != null) {
                    found.add(range);
                }
            }
        }
        found.sort(Comparator.comparingInt(KeyRange::support)
                .thenComparingInt(KeyRange::octaves)
                .reversed()
                .thenComparingInt(range -> Math.abs(range.key().fifths()))
                .thenComparingInt(range -> range.key().fifths())
                .thenComparing(range -> range.key().mode()));
        return List.copyOf(found);
    }

    private @Nullable KeyRange range(Key key) {
        List<Pitch> best = List.of();
        List<Pitch> run = new ArrayList<>();
        for (int midiNumber = 0; midiNumber < 128; midiNumber++) {
            Pitch pitch = new Pitch(midiNumber);
            if (!inScale(pitch.pitchClass(), key)) {
                continue;
            }
            if (sounding.contains(pitch)) {
                run.add(pitch);
                best = run.size() > best.size() ? List.copyOf(run) : best;
            } else {
                run.clear();
            }
        }
        int octaves = octaves(best, key.tonic());
        return octaves < 1 ? null : range(key, best, octaves);
    }

    private KeyRange range(Key key, List<Pitch> run, int octaves) {
        return new KeyRange(
                key,
                run.get(0),
                run.get(run.size() - 1),
                octaves,
                degree(key, key.tonic()),
                degree(key, fifth(key, -1)),
                degree(key, fifth(key, 1)));
    }

    /** Returns the fourth (-1) or fifth (1) degree of the scale, which locrian and lydian have diminished or augmented. */
    private static PitchClass fifth(Key key, int fifths) {
        PitchClass perfect = key.tonic().plus(7 * fifths);
        return inScale(perfect, key) ? perfect : perfect.plus(-fifths);
    }

    private DegreeBasses degree(Key key, PitchClass root) {
        Third third = inScale(root.plus(4), key) ? Third.MAJOR : Third.MINOR;
        return DegreeBasses.of(instrument, root, third);
    }

    private static boolean inScale(PitchClass note, Key key) {
        return MAJOR_SCALE.contains(note.above(new Key(key.fifths(), Mode.MAJOR).tonic()));
    }

    private static int octaves(List<Pitch> run, PitchClass tonic) {
        long tonics =
                run.stream().filter(pitch -> pitch.pitchClass().equals(tonic)).count();
        return (int) tonics - 1;
    }
}
