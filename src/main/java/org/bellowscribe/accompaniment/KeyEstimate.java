package org.bellowscribe.accompaniment;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.Mode;
import org.bellowscribe.theory.Pitch;
import org.bellowscribe.theory.PitchClass;

/**
 * The key in which the harmony of a stretch of a tune is sought. A mode other than major is believed, because somebody
 * chose it; so is a key on whose tonic the stretch ends. Many scores call every signature major, and some have lost their
 * signature: then the melody decides by {@link KeyProfile} and by its last note, if both of its halves say the same.
 */
final class KeyEstimate {

    /** The modes of folk tunes (common practice, no source). */
    private static final List<Mode> MODES = List.of(Mode.MAJOR, Mode.MINOR, Mode.DORIAN, Mode.MIXOLYDIAN);

    // Tunes end on their tonic: of those whose score names another mode than major, nine of ten in the shared scores.
    private static final double LAST_NOTE = 0.1;
    // So much better must a key suit on whose tonic the stretch does not end, or one of another signature.
    private static final double TRUST = 0.2;
    // From the tonic of the signature's major key: the note that one flat more lowers, and the one that a sharp raises.
    private static final int LEADING_NOTE = 11;
    private static final int FOURTH = 5;

    private final List<HarmonySpan> spans;
    private final List<MelodyTones> tones;
    private final Tune tune;

    private KeyEstimate(Tune tune, List<HarmonySpan> spans, List<MelodyTones> tones) {
        this.tune = tune;
        this.spans = spans;
        this.tones = tones;
    }

    /** Returns a key for each measure; measures of one signature and mode that follow one another have one key. */
    static List<Key> of(Tune tune, List<HarmonySpan> spans, List<MelodyTones> tones) {
        KeyEstimate estimate = new KeyEstimate(tune, spans, tones);
        List<Key> keys = new ArrayList<>();
        int from = 0;
        for (int m = 1; m <= tune.measures().size(); m++) {
            if (m == tune.measures().size() || !estimate.written(m).equals(estimate.written(from))) {
                Key best = estimate.best(from, m);
                for (int each = from; each < m; each++) {
                    keys.add(best);
                }
                from = m;
            }
        }
        return keys;
    }

    private Key written(int measure) {
        return tune.measures().get(measure).key();
    }

    private Key best(int from, int to) {
        Key written = written(from);
        Set<PitchClass> last = last(from, to);
        if (written.mode() != Mode.MAJOR || last.contains(written.tonic())) {
            return written;
        }
        Melody melody = new Melody(heard(from, to), heard(from, (from + to) / 2), heard((from + to) / 2, to), last);
        Key best = written;
        double most = 0;
        for (Key other : others(written.fifths(), melody)) {
            double better = melody.better(other, written);
            if (better > most) {
                best = other;
                most = better;
            }
        }
        return best;
    }

    // What sounds last in a stretch as it is played.
    private Set<PitchClass> last(int from, int to) {
        Set<PitchClass> last = new TreeSet<>();
        for (int index : tune.eventOrder()) {
            Event event = tune.events().get(index);
            if (!event.isRest() && event.measure() >= from && event.measure() < to) {
                last.clear();
                event.pitches().stream().map(Pitch::pitchClass).forEach(last::add);
            }
        }
        return last;
    }

    private double[] heard(int from, int to) {
        List<MelodyTones> part = new ArrayList<>();
        for (int i = 0; i < spans.size(); i++) {
            int measure = spans.get(i).measure();
            if (measure >= from && measure < to) {
                part.add(tones.get(i));
            }
        }
        return KeyProfile.sum(part);
    }

    // The modes of the signature, and major and minor of a neighboring one whose own note is heard more than the
    // written.
    private static List<Key> others(int fifths, Melody melody) {
        List<Key> others = new ArrayList<>();
        MODES.forEach(mode -> others.add(new Key(fifths, mode)));
        PitchClass home = new Key(fifths, Mode.MAJOR).tonic();
        for (Mode mode : List.of(Mode.MAJOR, Mode.MINOR)) {
            if (melody.hears(home.plus(LEADING_NOTE - 1), home.plus(LEADING_NOTE))) {
                others.add(new Key(fifths - 1, mode));
            }
            if (melody.hears(home.plus(FOURTH + 1), home.plus(FOURTH))) {
                others.add(new Key(fifths + 1, mode));
            }
        }
        return others;
    }

    /** How much each pitch class is heard, in all and in either half, and what is heard last. */
    private record Melody(double[] whole, double[] first, double[] second, Set<PitchClass> last) {

        boolean hears(PitchClass altered, PitchClass written) {
            return whole[altered.semitone()] > whole[written.semitone()];
        }

        /** Returns by how much another key suits better than what must be asked for; 0 or less if it is no better. */
        double better(Key other, Key written) {
            double least = Math.min(gain(first, other, written), gain(second, other, written));
            boolean sure = other.fifths() == written.fifths() && last.contains(other.tonic());
            return least <= 0 ? 0 : gain(whole, other, written) - (sure ? 0 : TRUST);
        }

        private double gain(double[] heard, Key other, Key written) {
            double end = last.contains(other.tonic()) ? LAST_NOTE : 0;
            return KeyProfile.correlation(heard, other) + end - KeyProfile.correlation(heard, written);
        }
    }
}
